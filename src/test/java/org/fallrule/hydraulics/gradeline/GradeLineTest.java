package org.fallrule.hydraulics.gradeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.hydraulics.UsUnits.cfs;
import static org.fallrule.hydraulics.UsUnits.pipe;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.hydraulics.pipe.CriticalDepth;
import org.fallrule.hydraulics.pipe.NormalDepth;
import org.fallrule.hydraulics.pipe.NormalFlow;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Flow;
import org.fallrule.measure.Length;
import org.fallrule.measure.Slope;
import org.fallrule.measure.Unit;
import org.fallrule.method.Answer;
import org.fallrule.method.Given;
import org.fallrule.method.Method;
import org.fallrule.method.MethodContract;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** No complete worked example of a grade line could be read; parts of it are held against print, the whole against arithmetic. */
@SuppressWarnings("NullAway") // what is missing fails the test
class GradeLineTest implements MethodContract {
    private static final LocalLosses BOXES = LocalLosses.betweenBoxes(0.5);

    @Override
    public Method method() {
        return GradeLine.METHOD;
    }

    @Override
    public double ours(Given given) {
        PipeGrade grade = drowned(given.length("bore").in(Unit.INCH), given.number("n"), 10, 1)
                .pipe("P");
        return grade.losses().friction().metres() / grade.losses().exit().metres();
    }

    /** UFC 3-230-17FA appendix B (read): H = (1 + Ke + 29 n^2 L / R^1.33) V^2/2g in feet; 29 is rounded from 29.16. */
    @ParameterizedTest
    @CsvSource({"12, 0.012, 2, 100", "6, 0.011, 0.8, 40", "4, 0.024, 0.1, 60"})
    void aDrownedPipeLosesWhatTheCulvertFormulaSays(double inches, double n, double cfs, double feet) {
        GradeLine line = drowned(inches, n, cfs, feet);
        double head = line.pipe("P").losses().exit().in(Unit.FOOT);
        double formula = (1 + 0.5 + 29 * n * n * feet / Math.pow(inches / 48, 1.33)) * head;

        assertThat(level(line, "A") - 20).isCloseTo(formula, within(0.02 * formula));
    }

    /** A level pipe P from A to OUT, water outside at 20 ft, inverts at 10 ft. */
    private static GradeLine drowned(double inches, double n, double cfs, double feet) {
        return solve(
                List.of(node("A", 30), node("OUT", 30)),
                List.of(drain("P", "A", "OUT", inches, n, feet, 10, 10)),
                Map.of("P", cfs(cfs)),
                Map.of("OUT", Elevation.feet(20)));
    }

    private static DrainNode node(String id, double rimFeet) {
        return new DrainNode(id, Optional.of(Elevation.feet(rimFeet)), new Flow(0));
    }

    private static DrainPipe drain(
            String id, String from, String to, double inches, double n, double feet, double up, double down) {
        return new DrainPipe(
                id, from, to, pipe(inches, n), Length.feet(feet), Elevation.feet(up), Elevation.feet(down), BOXES);
    }

    private static GradeLine solve(
            List<DrainNode> nodes, List<DrainPipe> pipes, Map<String, Flow> flows, Map<String, Elevation> tailwater) {
        return GradeLine.of(DrainTree.of(nodes, pipes).value().orElseThrow(), flows, tailwater);
    }

    /** One pipe P of 6 in, n 0.012, 60 ft, from A with its rim at 13 ft to OUT, the lower invert at 10 ft. */
    private static GradeLine single(double upFeet, double cfs, Optional<Double> tailwaterFeet) {
        return solve(
                List.of(node("A", 13), node("OUT", 13)),
                List.of(drain("P", "A", "OUT", 6, 0.012, 60, upFeet, 10)),
                Map.of("P", cfs(cfs)),
                tailwaterFeet.map(feet -> Map.of("OUT", Elevation.feet(feet))).orElse(Map.of()));
    }

    private static double level(GradeLine line, String node) {
        return line.node(node).level().value().orElseThrow().metres() / Unit.FOOT.toSi();
    }

    private static double normalFeet(double slope, double cfs) {
        NormalFlow.Open open = (NormalFlow.Open) NormalDepth.of(pipe(6, 0.012), new Slope(slope), cfs(cfs));
        return open.depth().in(Unit.FOOT);
    }

    private static double criticalFeet(double cfs) {
        return CriticalDepth.of(Length.feet(0.5), cfs(cfs))
                .value()
                .orElseThrow()
                .in(Unit.FOOT);
    }

    /** Made by arithmetic for this test, not published: V 3.0558 and 2.8648 ft/s, heads 0.1450 and 0.1274 ft. */
    @Test
    void twoFullPipesAndTheirBoxes() {
        GradeLine line = solve(
                List.of(node("UP", 102), node("BOX", 100.5), node("OUT", 100)),
                List.of(
                        drain("P2", "UP", "BOX", 4, 0.012, 40, 98.80, 98.60),
                        drain("P1", "BOX", "OUT", 6, 0.012, 60, 98.60, 98.50)),
                Map.of("P1", cfs(0.60), "P2", cfs(0.25)),
                Map.of("OUT", Elevation.feet(99)));

        assertThat(level(line, "BOX")).isCloseTo(99.802, within(0.001));
        assertThat(level(line, "UP")).isCloseTo(100.581, within(0.002));
        PipeGrade lower = line.pipe("P1");
        assertThat(lower.state()).isEqualTo(PipeState.FULL);
        assertThat(lower.losses().exit().in(Unit.FOOT)).isCloseTo(0.1450, within(0.0003));
        assertThat(lower.losses().friction().in(Unit.FOOT)).isCloseTo(0.5846, within(0.0005));
        assertThat(lower.losses().entrance().in(Unit.FOOT)).isCloseTo(0.0725, within(0.0002));
        assertThat(lower.velocityDown().in(Unit.FOOT_PER_SECOND)).isCloseTo(3.0558, within(0.0005));
        assertThat(line.node("BOX").surcharged()).isTrue();
        assertThat(line.node("BOX").overflows()).isFalse();
        assertThat(line.node("BOX").freeboard().value().orElseThrow().in(Unit.FOOT))
                .isCloseTo(0.698, within(0.001));
    }

    @Test
    void aSteepPipeRunsRapidFromCriticalDepthAtItsInletToNormalDepthAtItsEnd() {
        GradeLine line = single(12, 0.3, Optional.empty());
        PipeGrade pipe = line.pipe("P");

        assertThat(pipe.state()).isEqualTo(PipeState.RAPID);
        assertThat(pipe.depthUp().in(Unit.FOOT)).isCloseTo(criticalFeet(0.3), within(1e-9));
        assertThat(pipe.depthDown().in(Unit.FOOT)).isCloseTo(normalFeet(2.0 / 60, 0.3), within(1e-9));
        double head = Math.pow(pipe.velocityUp().in(Unit.FOOT_PER_SECOND), 2) / 64.35;
        assertThat(level(line, "A")).isCloseTo(12 + criticalFeet(0.3) + 1.5 * head, within(1e-4));
        assertThat(line.node("OUT").level().why()).contains("free");
    }

    @Test
    void aMildPipeNearsNormalDepthUpstream() {
        PipeGrade pipe = single(10.18, 0.15, Optional.empty()).pipe("P");

        assertThat(pipe.state()).isEqualTo(PipeState.TRANQUIL);
        assertThat(pipe.depthDown().in(Unit.FOOT)).isCloseTo(criticalFeet(0.15), within(1e-9));
        assertThat(pipe.depthUp().in(Unit.FOOT)).isCloseTo(normalFeet(0.003, 0.15), within(0.005));
    }

    @Test
    void waterOutsideBacksUpAMildPipeAndNotASteepOne() {
        assertThat(level(single(10.18, 0.15, Optional.of(10.4)), "A"))
                .isGreaterThan(level(single(10.18, 0.15, Optional.empty()), "A") + 0.01);
        assertThat(level(single(12, 0.15, Optional.of(10.4)), "A"))
                .isCloseTo(level(single(12, 0.15, Optional.empty()), "A"), within(1e-9));
    }

    @Test
    void aSteepPipeDrownedToItsInletIsNoLongerRapid() {
        GradeLine line = single(12, 0.3, Optional.of(12.9));

        assertThat(line.pipe("P").state()).isEqualTo(PipeState.FULL);
        assertThat(level(line, "A")).isGreaterThan(12.9);
    }

    @Test
    void aPipeDrownedAtItsEndOnlyHasAFreeSurfaceAbove() {
        GradeLine line = single(12, 0.3, Optional.of(11.0));

        assertThat(line.pipe("P").state()).isEqualTo(PipeState.PARTLY_FULL);
        assertThat(line.pipe("P").depthUp().in(Unit.FOOT)).isCloseTo(criticalFeet(0.3), within(1e-9));
        assertThat(single(11.2, 0.3, Optional.of(11.0)).pipe("P").state()).isEqualTo(PipeState.PARTLY_FULL);
    }

    @ParameterizedTest // of a full, a rapid, a backed up and a freely falling pipe
    @CsvSource({"10.18, 0.8, 11", "12, 0.3, 9", "10.18, 0.15, 10.4", "10.18, 0.15, 9"})
    void whatTheEnergyLineLosesIsWhatTheLevelsDiffer(double upFeet, double cfs, double tailwaterFeet) {
        GradeLine line = single(upFeet, cfs, Optional.of(tailwaterFeet));
        double below = Math.max(tailwaterFeet, 10 + criticalFeet(cfs));
        PipeGrade.Losses losses = line.pipe("P").losses();

        assertThat(level(line, "A") - below)
                .isCloseTo(
                        losses.exit().in(Unit.FOOT)
                                + losses.friction().in(Unit.FOOT)
                                + losses.bend().in(Unit.FOOT)
                                + losses.entrance().in(Unit.FOOT),
                        within(1e-6));
    }

    @Test
    void whereNoSpeedIsLostAtTheEndTheEnergyLineMeetsTheWaterThere() {
        DrainPipe pipe = new DrainPipe(
                "P",
                "A",
                "OUT",
                pipe(6, 0.012),
                Length.feet(60),
                Elevation.feet(10.18),
                Elevation.feet(10),
                LocalLosses.throughStructure(0.15));
        PipeGrade grade = solve(
                        List.of(node("A", 13), node("OUT", 13)),
                        List.of(pipe),
                        Map.of("P", cfs(0.15)),
                        Map.of("OUT", Elevation.feet(10.4)))
                .pipe("P");
        double head = Math.pow(grade.velocityDown().in(Unit.FOOT_PER_SECOND), 2) / (2 * 32.174);

        assertThat(grade.depthDown().in(Unit.FOOT) + head).isCloseTo(0.4, within(1e-5));
        assertThat(grade.depthDown().in(Unit.FOOT)).isBetween(criticalFeet(0.15), 0.4);
    }

    @Test
    void moreThanItsCapacityStandsHalfwayBetweenCriticalDepthAndCrownAtAFreeOutfall() {
        GradeLine line = single(10.18, 0.8, Optional.empty());
        PipeGrade pipe = line.pipe("P");

        assertThat(pipe.state()).isEqualTo(PipeState.FULL);
        assertThat(pipe.depthDown().in(Unit.FOOT)).isCloseTo((criticalFeet(0.8) + 0.5) / 2, within(1e-9));
        assertThat(line.node("A").surcharged()).isTrue();
    }

    @Test
    void waterAboveARimComesOut() {
        NodeLevel inlet = single(10.18, 1.4, Optional.empty()).node("A");

        assertThat(inlet.overflows()).isTrue();
        assertThat(inlet.freeboard().value().orElseThrow().metres()).isNegative();
    }

    @Test
    void aRisingPipeFillsBeforeTheWaterGoesThrough() {
        GradeLine line = single(9.7, 0.05, Optional.empty());

        assertThat(level(line, "A")).isGreaterThan(10 + criticalFeet(0.05));
        assertThat(line.pipe("P").depthUp().in(Unit.FOOT)).isGreaterThan(0.3 + criticalFeet(0.05));
    }

    @Test
    void aLevelPipeHasALineToo() {
        PipeGrade pipe = single(10, 0.05, Optional.empty()).pipe("P");

        assertThat(pipe.state()).isEqualTo(PipeState.TRANQUIL);
        assertThat(pipe.up().metres()).isGreaterThan(pipe.down().metres());
    }

    @Test
    void withoutFlowTheWaterStandsLevelOrNotAtAll() {
        GradeLine dry = single(10.5, 0, Optional.empty());
        GradeLine pool = single(10.5, 0, Optional.of(10.7));
        GradeLine below = single(10.5, 0, Optional.of(10.3));

        assertThat(dry.node("A").level().why()).contains("no water stands");
        assertThat(dry.node("A").freeboard().value()).isEmpty();
        assertThat(dry.pipe("P").state()).isEqualTo(PipeState.NO_FLOW);
        assertThat(level(pool, "A")).isCloseTo(10.7, within(1e-9));
        assertThat(below.node("A").level().value()).isEmpty();
        assertThat(pool.pipe("P").depthDown().in(Unit.FOOT)).isCloseTo(0.7, within(1e-9));
        assertThat(pool.pipe("P").depthUp().in(Unit.FOOT)).isCloseTo(0.2, within(1e-9));
        assertThat(pool.pipe("P").down().in(Unit.ELEVATION_FOOT)).isCloseTo(10.7, within(1e-9));
        assertThat(below.pipe("P").depthDown().in(Unit.FOOT)).isCloseTo(0.3, within(1e-9));
        assertThat(below.pipe("P").depthUp().metres()).isZero();
    }

    @Test
    void waterThatStandsJustAtARimDoesNotComeOut() {
        Answer<Elevation> level = Answer.of(Elevation.feet(13));

        assertThat(new NodeLevel("A", level, Answer.of(new Length(0)), true).overflows())
                .isFalse();
    }

    @Test
    void everyPlaceAndPipeOfTheDrainIsListed() {
        GradeLine line = single(10.6, 0.1, Optional.empty());

        assertThat(line.nodes()).containsOnlyKeys("A", "OUT");
        assertThat(line.pipes()).containsOnlyKeys("P");
    }

    @Test
    void anInletWhoseRimIsNotKnownHasALevelButNoFreeboard() {
        GradeLine line = solve(
                List.of(new DrainNode("A", Optional.empty(), new Flow(0)), node("OUT", 13)),
                List.of(drain("P", "A", "OUT", 6, 0.012, 60, 10.6, 10)),
                Map.of("P", cfs(0.1)),
                Map.of());

        assertThat(line.node("A").level().value()).isPresent();
        assertThat(line.node("A").freeboard().why()).contains("rim of A is not known");
        assertThat(line.node("A").overflows()).isFalse();
    }

    @Test
    void aFreeFallIntoABoxLeavesThePipeAboveUnmoved() {
        List<DrainNode> nodes = List.of(node("TOP", 20), node("BOX", 16), node("OUT", 12));
        Map<String, Flow> flows = Map.of("P1", cfs(0.2), "P2", cfs(0.2));
        double far = level(
                solve(
                        nodes,
                        List.of(
                                drain("P2", "TOP", "BOX", 6, 0.012, 60, 14.6, 14),
                                drain("P1", "BOX", "OUT", 6, 0.012, 60, 10.6, 10)),
                        flows,
                        Map.of()),
                "TOP");

        assertThat(far - 14).isCloseTo(level(single(10.6, 0.2, Optional.empty()), "A") - 10, within(1e-9));
    }

    @Test
    void aStructuresLossAsAWholeIsTakenOnTheLeavingPipe() {
        LocalLosses losses = LocalLosses.throughStructure(0.15);
        DrainPipe pipe = new DrainPipe(
                "P", "A", "OUT", pipe(6, 0.012), Length.feet(60), Elevation.feet(10), Elevation.feet(10), losses);
        GradeLine line = solve(
                List.of(node("A", 13), node("OUT", 13)),
                List.of(pipe),
                Map.of("P", cfs(0.6)),
                Map.of("OUT", Elevation.feet(12)));
        PipeGrade grade = line.pipe("P");
        double head = 0.1450;

        assertThat(grade.losses().exit().in(Unit.FOOT)).isCloseTo(0, within(1e-9));
        assertThat(level(line, "A")).isCloseTo(12 + 0.5846 + 0.15 * head, within(0.001));
    }

    @Test
    void whatIsNotInTheDrainIsNotAnswered() {
        GradeLine line = single(10.6, 0.1, Optional.empty());

        assertThatThrownBy(() -> line.node("Z")).hasMessage("the drain has no Z, only [A, OUT]");
        assertThatThrownBy(() -> line.pipe("Q")).hasMessage("the drain has no Q, only [P]");
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "45, 0.1485", "90, 0.297", "-90, 0.297"})
    void aBendLosesByItsDegrees(double degrees, double part) {
        assertThat(BOXES.withBends(degrees).bend()).isCloseTo(part, within(1e-12));
    }

    @Test
    void lossesAndFlowsBelowZeroAreRefused() {
        assertThatThrownBy(() -> new LocalLosses(-0.1, 0, 0)).hasMessageContaining("zero or more");
        assertThatThrownBy(() -> new LocalLosses(1.1, 0, 0)).hasMessageContaining("at most 1");
        assertThatThrownBy(() -> single(10.6, -0.1, Optional.empty())).hasMessageContaining("below zero");
        assertThatThrownBy(() -> new DrainNode("A", Optional.empty(), new Flow(-1)))
                .hasMessageContaining("node A");
        assertThatThrownBy(() -> drain("P", "A", "B", 6, 0.012, 0, 10, 10)).hasMessageContaining("pipe P");
    }
}
