package org.fallrule.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.fallrule.measure.Length;
import org.fallrule.terrain.flow.ContributingArea;
import org.fallrule.terrain.flow.DownhillPath;
import org.fallrule.terrain.flow.FilledGround;
import org.fallrule.terrain.flow.GroundGrid;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
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

/** Water over a square grid: hollows filled, the area that drains to a basin, the way down from a hundred places. */
@SuppressWarnings("NullAway.Init") // the setup makes what the benchmarks use
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 3)
@Measurement(iterations = 3, time = 3)
public class FlowBenchmark {
    private static final double SPACING = 0.25;

    /** Nodes on each side: a million, two and four. */
    @Param({"1000", "1414", "2000"})
    public int side;

    private GroundGrid grid;
    private FilledGround filled;

    @Setup
    public void make() {
        Envelope box = new Envelope(0, (side - 1) * SPACING, 0, (side - 1) * SPACING);
        grid = GroundGrid.of(new MadeSurface(side, SPACING), box, SPACING);
        filled = FilledGround.of(grid);
    }

    @Benchmark
    public FilledGround fill() {
        return FilledGround.of(grid);
    }

    @Benchmark
    public ContributingArea contributingArea() {
        return ContributingArea.of(filled, new Coordinate(MadePlan.BASIN_X, MadePlan.BASIN_Y), Length.feet(1));
    }

    @Benchmark
    public List<Optional<DownhillPath>> downhillPaths() {
        List<Optional<DownhillPath>> paths = new ArrayList<>();
        for (int i = 1; i <= 100; i++) {
            paths.add(DownhillPath.from(new Coordinate(i * side * SPACING / 101, 0.95 * side * SPACING), filled));
        }
        return paths;
    }
}
