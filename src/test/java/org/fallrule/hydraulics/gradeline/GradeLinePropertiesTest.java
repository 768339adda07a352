package org.fallrule.hydraulics.gradeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.fallrule.hydraulics.pipe.Roughness;
import org.fallrule.hydraulics.pipe.RoundPipe;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Flow;
import org.fallrule.measure.Length;
import org.junit.jupiter.api.Test;

/** What holds for any drain. */
@SuppressWarnings("NullAway") // what is missing fails the test
class GradeLinePropertiesTest {

    private record Drain(DrainTree tree, Map<String, Elevation> tailwater) {
        GradeLine line(Map<String, Flow> flows) {
            return GradeLine.of(tree, flows, tailwater);
        }
    }

    /** A random tree: each pipe flows to a node made before it; some rise, some are too small, some inlets are dry. */
    private static Drain random(long seed, int pipes, double flowScale) {
        Random random = new Random(seed);
        List<DrainNode> nodes = new ArrayList<>(List.of(new DrainNode("0", Optional.empty(), new Flow(0))));
        List<DrainPipe> drains = new ArrayList<>();
        double[] floor = new double[pipes + 1];
        for (int i = 1; i <= pipes; i++) {
            int to = random.nextInt(Math.max(0, i - 4), i);
            double length = random.nextDouble(1, 30);
            double bore = random.nextDouble(0.05, 0.4);
            double down = floor[to] + random.nextDouble(0, 0.2);
            double up = down + length * random.nextDouble(-0.005, 0.05);
            floor[i] = up;
            double inflow = random.nextInt(5) == 0 ? 0 : random.nextDouble(0, 0.01) * flowScale;
            nodes.add(new DrainNode("" + i, Optional.of(new Elevation(up + 1)), new Flow(inflow)));
            LocalLosses losses = random.nextBoolean()
                    ? LocalLosses.betweenBoxes(random.nextDouble()).withBends(random.nextDouble(0, 90))
                    : new LocalLosses(random.nextDouble(), 0, random.nextDouble());
            drains.add(new DrainPipe(
                    "P" + i,
                    "" + i,
                    "" + to,
                    new RoundPipe(new Length(bore), new Roughness(random.nextDouble(0.009, 0.025))),
                    new Length(length),
                    new Elevation(up),
                    new Elevation(down),
                    losses));
        }
        Map<String, Elevation> tailwater =
                random.nextBoolean() ? Map.of() : Map.of("0", new Elevation(random.nextDouble(-1, 2)));
        return new Drain(DrainTree.of(nodes, drains).value().orElseThrow(), tailwater);
    }

    @Property(tries = 300)
    void theGradeLineNeverFallsGoingUpstream(@ForAll long seed, @ForAll @IntRange(min = 1, max = 40) int pipes) {
        Drain drain = random(seed, pipes, 1);
        GradeLine line = drain.line(drain.tree().flows());

        for (DrainPipe pipe : drain.tree().fromOutfallUp()) {
            PipeGrade grade = line.pipe(pipe.id());
            Optional<Elevation> above = line.node(pipe.from()).level().value();
            Optional<Elevation> below = line.node(pipe.to()).level().value();
            assertThat(grade.losses().friction().metres()).isGreaterThanOrEqualTo(-1e-9);
            assertThat(grade.losses().exit().metres()).isGreaterThanOrEqualTo(-1e-9);
            if (above.isPresent() && below.isPresent()) {
                assertThat(above.get().metres())
                        .isGreaterThanOrEqualTo(below.get().metres() - 1e-9);
            }
            if (grade.flow().cubicMetresPerSecond() > 0) {
                assertThat(above).isPresent();
                assertThat(above.get().metres())
                        .isGreaterThanOrEqualTo(grade.up().metres() - 1e-9)
                        .isGreaterThan(pipe.invertUp().metres());
            }
        }
    }

    /** To the error of the direct step: half a percent of the diameter, 2 mm in the widest pipe here, in each of both lines. */
    @Property(tries = 100)
    void higherTailwaterNeverLowersTheLine(@ForAll long seed, @ForAll @IntRange(min = 1, max = 20) int pipes) {
        Drain drain = random(seed, pipes, 0.05);
        Map<String, Elevation> high = Map.of("0", new Elevation(0.9));
        Map<String, Elevation> higher = Map.of("0", new Elevation(1.1));
        GradeLine one = GradeLine.of(drain.tree(), drain.tree().flows(), high);
        GradeLine other = GradeLine.of(drain.tree(), drain.tree().flows(), higher);

        one.nodes()
                .forEach((id, node) -> node.level()
                        .value()
                        .ifPresent(level -> assertThat(other.node(id)
                                        .level()
                                        .value()
                                        .orElseThrow()
                                        .metres())
                                .isGreaterThanOrEqualTo(level.metres() - 4e-3)));
    }

    private static Flow flow(Map<String, Flow> flows, DrainPipe pipe) {
        return flows.getOrDefault(pipe.id(), new Flow(Double.MAX_VALUE));
    }

    @Property(tries = 200)
    void whatEntersAJunctionLeavesIt(@ForAll long seed, @ForAll @IntRange(min = 1, max = 60) int pipes) {
        DrainTree tree = random(seed, pipes, 1).tree();
        Map<String, Flow> flows = tree.flows();
        Map<String, Double> entering = new HashMap<>();
        tree.nodes().forEach((id, node) -> entering.put(id, node.inflow().cubicMetresPerSecond()));
        tree.fromOutfallUp()
                .forEach(pipe -> entering.merge(pipe.to(), flow(flows, pipe).cubicMetresPerSecond(), Double::sum));

        for (DrainPipe pipe : tree.fromOutfallUp()) {
            assertThat(flow(flows, pipe).cubicMetresPerSecond()).isCloseTo(entering.get(pipe.from()), within(1e-12));
        }
        double all = tree.nodes().values().stream()
                .mapToDouble(node -> node.inflow().cubicMetresPerSecond())
                .sum();
        assertThat(entering.get("0")).isCloseTo(all, within(1e-12));
    }

    @Property(tries = 50)
    void aDrainRaisedAsAWholeHasTheSameDepths(@ForAll long seed) {
        Drain drain = random(seed, 10, 1);
        double lift = 123.25;
        List<DrainPipe> raised = drain.tree().fromOutfallUp().stream()
                .map(pipe -> new DrainPipe(
                        pipe.id(),
                        pipe.from(),
                        pipe.to(),
                        pipe.pipe(),
                        pipe.length(),
                        new Elevation(pipe.invertUp().metres() + lift),
                        new Elevation(pipe.invertDown().metres() + lift),
                        pipe.losses()))
                .toList();
        DrainTree tree = DrainTree.of(List.copyOf(drain.tree().nodes().values()), raised)
                .value()
                .orElseThrow();
        Map<String, Elevation> tailwater = new HashMap<>();
        drain.tailwater().forEach((id, level) -> tailwater.put(id, new Elevation(level.metres() + lift)));
        GradeLine one = drain.line(drain.tree().flows());
        GradeLine other = GradeLine.of(tree, tree.flows(), tailwater);

        one.pipes()
                .forEach((id, grade) -> assertThat(other.pipe(id).depthUp().metres())
                        .isCloseTo(grade.depthUp().metres(), within(1e-6)));
    }

    /** A coarse guard against work that grows faster than the drain; it takes a few milliseconds. */
    @Test
    void twoHundredPipesAreQuick() {
        Drain drain = random(42, 200, 1);
        Map<String, Flow> flows = drain.tree().flows();
        long best = Long.MAX_VALUE;
        for (int i = 0; i < 20; i++) {
            long start = System.nanoTime();
            GradeLine line = drain.line(flows);
            best = Math.min(best, System.nanoTime() - start);
            assertThat(line.pipes()).hasSize(200);
        }
        assertThat(best / 1e6).isLessThan(50);
    }
}
