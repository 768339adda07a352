package org.fallrule.bench;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.fallrule.analysis.LongSection;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.analysis.Stretch;
import org.fallrule.network.PipeProfile;
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

/** The ground made from spots, and the cover of every pipe under it in long section. */
@SuppressWarnings("NullAway.Init") // the setup makes what the benchmarks use
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 4, time = 2)
public class ProfileBenchmark {
    @Param({"50000", "100000", "200000"})
    public int spots;

    private Site site;
    private SiteAnalysis analysis;

    @Setup
    public void make() throws IOException {
        site = SiteReader.read(MadeSites.inFolder().spots(spots, 0.5));
        analysis = SiteAnalysis.of(site);
    }

    @Benchmark
    public SiteAnalysis ground() {
        return SiteAnalysis.of(site);
    }

    @Benchmark
    public List<Stretch> longSectionAndCover() {
        List<Stretch> cover = new ArrayList<>();
        for (PipeRun run : analysis.network().runs()) {
            PipeProfile.of(run)
                    .ifPresent(profile -> cover.addAll(new LongSection(analysis, run, profile).pieces(profile::topAt)));
        }
        return cover;
    }
}
