package org.fallrule.bench;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.rulebook.RuleLibrary;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The shipped books read and laid over each other: baseline and county, and with a firm's own. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
public class RuleBooksBenchmark {
    private static final LocalDate DAY = LocalDate.of(2026, 6, 1);

    @Param({"", "stonebrook"})
    public String house = "";

    private final RuleLibrary library = new RuleLibrary(Path.of("rules"), "rules");

    @Benchmark
    public RuleBook load() {
        return library.load("larkmoor", Optional.of(house).filter(name -> !name.isEmpty()), DAY);
    }
}
