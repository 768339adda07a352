package org.fallrule.bench;

import java.io.IOException;
import java.util.concurrent.TimeUnit;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.network.PipeRun;
import org.fallrule.reader.SiteReader;
import org.fallrule.site.Site;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;

/** The design storm in a branching drain: from the plan as read to the flow, the running and the grade line of every pipe. */
@SuppressWarnings("NullAway.Init") // the setup makes what the benchmark uses
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 3)
@Measurement(iterations = 4, time = 3)
public class WaterBenchmark {
    /** Twice a square each. */
    @Param({"200", "800", "3200"})
    public int pipes;

    private Site site;

    @Setup
    public void make() throws IOException {
        site = SiteReader.read(MadeSites.inFolder().drain(pipes));
        SiteAnalysis analysis = SiteAnalysis.of(site);
        if (analysis.network().runs().size() != pipes
                || !analysis.network().runs().stream()
                        .allMatch(run -> analysis.water().grade(run).value().isPresent())) {
            throw new IllegalStateException("a pipe of the made drain has no grade line: "
                    + analysis.water().grade(analysis.network().runs().get(0)).why()
                    + analysis.network().problems());
        }
    }

    @Benchmark
    public void flowsAndGradeLine(Blackhole used) {
        SiteAnalysis analysis = SiteAnalysis.of(site);
        for (PipeRun run : analysis.network().runs()) {
            used.consume(analysis.water().in(run).velocity());
            used.consume(analysis.water().grade(run));
            used.consume(analysis.water().level(run.up()));
            used.consume(analysis.water().cutAbove(run.up()));
        }
    }
}
