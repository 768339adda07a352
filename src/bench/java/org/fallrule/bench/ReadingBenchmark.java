package org.fallrule.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
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

/** Reads a site whose ground is given by spots or by a raster. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 4, time = 2)
public class ReadingBenchmark {
    @Param({"spots 50000", "spots 100000", "spots 200000", "raster 1000", "raster 2000", "raster 4000"})
    public String ground = "";

    private Path site = Path.of("");

    @Setup
    public void make() throws IOException {
        int count = Integer.parseInt(ground.substring(ground.indexOf(' ') + 1));
        MadeSites sites = MadeSites.inFolder();
        // The raster's cells are so small that nearly all of the one in the middle lie around the plan.
        site = ground.startsWith("spots") ? sites.spots(count, 0.5) : sites.raster(count, 0.1);
    }

    @Benchmark
    public Site read() {
        return SiteReader.read(site);
    }
}
