package org.fallrule.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.CLEANOUT;
import static org.fallrule.site.Role.INLET;
import static org.fallrule.site.Role.OUTFALL;
import static org.fallrule.site.Role.PIPE;
import static org.fallrule.site.Role.PROPOSED_GROUND;

import java.util.List;
import org.fallrule.check.PlanInFeet;
import org.fallrule.document.Fault;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;

class NetworkBuilderTest {

    private static PipeNetwork network(PlanInFeet plan) {
        return plan.analysis().network();
    }

    private static List<String> problems(PlanInFeet plan) {
        return network(plan).problems().stream().map(Fault::says).toList();
    }

    /** The ids of the pipes from an inlet down to an outfall. */
    private static List<String> way(PlanInFeet plan, String inlet) {
        PipeNetwork network = network(plan);
        Feature from = plan.site().features(Role.INLET).stream()
                .filter(each -> each.id().equals(inlet))
                .findFirst()
                .orElseThrow();
        return network.downstreamOf(network.junctionOf(from).orElseThrow()).stream()
                .map(PipeRun::id)
                .toList();
    }

    private static PipeRun run(PlanInFeet plan, String id) {
        return network(plan).runs().stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** An inlet, two pipes with so many feet between their ends, and an outfall. */
    private static PlanInFeet twoPipes(String gap) {
        return plan().with(INLET, "I-1", "POINT (0 0)")
                .with(OUTFALL, "OF-1", "POINT (100 0)")
                .with(PIPE, "P-1", "LINESTRING (0 0, 50 0)")
                .with(PIPE, "P-2", "LINESTRING (50 " + gap + ", 100 0)");
    }

    @Test
    void endsLessThanHalfAFootApartMeet() {
        assertThat(way(twoPipes("0.49"), "I-1")).containsExactly("P-1", "P-2");
    }

    @Test
    void endsExactlyHalfAFootApartMeet() {
        assertThat(way(twoPipes("0.5"), "I-1")).containsExactly("P-1", "P-2");
        assertThat(problems(twoPipes("0.5"))).isEmpty();
    }

    @Test
    void endsMoreThanHalfAFootApartDoNotMeet() {
        assertThat(way(twoPipes("0.51"), "I-1")).containsExactly("P-1");
        assertThat(problems(twoPipes("0.51")))
                .containsExactly(
                        "pipe P-1 does not lead to an outfall; end a pipe of its line on one, or within 0.5 ft of the next pipe's end");
    }

    @Test
    void aVertexThatIsDrawnTwiceIsNoBend() {
        PlanInFeet plan = plan().with(OUTFALL, "OF-1", "POINT (40 0)")
                .with(PIPE, "P-1", "LINESTRING Z (0 0 9, 20 0 8.5, 20 0 8.5, 40 0 8, 40 0 7)");
        PipeRun run = run(plan, "P-1");

        assertThat(run.axis().getNumPoints()).isEqualTo(3);
        assertThat(run.invertDown()).contains(Elevation.feet(7));
        assertThat(run.length().metres()).isCloseTo(Length.feet(40).metres(), within(1e-9));
    }

    @Test
    void endsAtOnePlaceMeet() {
        assertThat(way(twoPipes("0"), "I-1")).containsExactly("P-1", "P-2");
    }

    @Test
    void anEndNearTwoStructuresBelongsToTheNearerOne() {
        PlanInFeet plan = plan().with(OUTFALL, "OF-1", "POINT (100.4 0)")
                .with(OUTFALL, "OF-2", "POINT (99.9 0.2)")
                .with(PIPE, "P-1", "LINESTRING (0 0, 100 0)");

        assertThat(network(plan).outfallOf(run(plan, "P-1")).orElseThrow().id()).isEqualTo("OF-2");
    }

    @Test
    void aPipeDrawnFromItsOutfallIsTurned() {
        PlanInFeet plan = plan().with(OUTFALL, "OF-1", "POINT (0 0)")
                .with(PIPE, "P-1", "LINESTRING Z (0 0 98, 50 0 99, 50 50 100)");
        PipeRun run = run(plan, "P-1");

        assertThat(run.down().isOutfall()).isTrue();
        assertThat(run.invertUp()).contains(Elevation.feet(100));
        assertThat(run.invertDown()).contains(Elevation.feet(98));
    }

    @Test
    void aLineOfPipesDrawnEitherWayRunsToItsOutfall() {
        PlanInFeet plan = plan().with(INLET, "I-1", "POINT (0 0)")
                .with(OUTFALL, "OF-1", "POINT (90 0)")
                .with(PIPE, "P-1", "LINESTRING (30 0, 0 0)")
                .with(PIPE, "P-2", "LINESTRING (30 0, 60 0)")
                .with(PIPE, "P-3", "LINESTRING (90 0, 60 0)");

        assertThat(way(plan, "I-1")).containsExactly("P-1", "P-2", "P-3");
    }

    @Test
    void betweenTwoOutfallsAPipeLeadsToTheNearerOne() {
        PlanInFeet plan = plan().with(INLET, "I-1", "POINT (40 0)")
                .with(OUTFALL, "OF-1", "POINT (0 0)")
                .with(OUTFALL, "OF-2", "POINT (100 0)")
                .with(PIPE, "P-1", "LINESTRING (40 0, 100 0)")
                .with(PIPE, "P-2", "LINESTRING (40 0, 0 0)");

        assertThat(way(plan, "I-1")).containsExactly("P-2");
        assertThat(run(plan, "P-1").down().structure(OUTFALL).orElseThrow().id())
                .isEqualTo("OF-2");
    }

    @Test
    void aLoopIsLeftOnItsShorterSide() {
        PlanInFeet plan = plan().with(INLET, "I-1", "POINT (0 0)")
                .with(OUTFALL, "OF-1", "POINT (50 0)")
                .with(PIPE, "P-1", "LINESTRING (0 0, 0 40, 40 40, 40 0)")
                .with(PIPE, "P-2", "LINESTRING (0 0, 40 0)")
                .with(PIPE, "P-3", "LINESTRING (40 0, 50 0)");

        assertThat(way(plan, "I-1")).containsExactly("P-2", "P-3");
    }

    /** Each of three junctions in a ring has its own pipe to an outfall 10 ft away; no side of the ring may be walked. */
    @Test
    void aRingOfJunctionsAllEquallyFarFromAnOutfallIsNotWalkedRound() {
        PlanInFeet plan = plan().with(INLET, "I-1", "POINT (0 0)")
                .with(PIPE, "R-1", "LINESTRING (0 0, 30 0)")
                .with(PIPE, "R-2", "LINESTRING (30 0, 15 20)")
                .with(PIPE, "R-3", "LINESTRING (15 20, 0 0)")
                .with(OUTFALL, "OF-1", "POINT (-10 0)")
                .with(OUTFALL, "OF-2", "POINT (40 0)")
                .with(OUTFALL, "OF-3", "POINT (15 30)")
                .with(PIPE, "P-1", "LINESTRING (0 0, -10 0)")
                .with(PIPE, "P-2", "LINESTRING (30 0, 40 0)")
                .with(PIPE, "P-3", "LINESTRING (15 20, 15 30)");

        assertThat(way(plan, "I-1")).containsExactly("P-1");
    }

    @Test
    void aLoopWithoutAnOutfallIsAProblemOfEachPipeAndIsWalkedOnce() {
        PlanInFeet plan = plan().with(INLET, "I-1", "POINT (0 0)")
                .with(PIPE, "P-1", "LINESTRING (0 0, 30 0)")
                .with(PIPE, "P-2", "LINESTRING (30 0, 15 20)")
                .with(PIPE, "P-3", "LINESTRING (15 20, 0 0)");

        assertThat(way(plan, "I-1")).containsExactly("P-1", "P-2", "P-3");
        assertThat(problems(plan))
                .filteredOn(says -> says.contains("does not lead to an outfall"))
                .hasSize(3);
        assertThat(problems(plan)).filteredOn(says -> says.contains("ring")).hasSize(1);
    }

    @Test
    void aPipeWithoutLengthDoesNotStandInTheWay() {
        PlanInFeet plan = plan().with(INLET, "I-1", "POINT (0 0)")
                .with(OUTFALL, "OF-1", "POINT (50 0)")
                .with(PIPE, "P-0", "LINESTRING (0 0, 0 0)")
                .with(PIPE, "P-1", "LINESTRING (0 0, 50 0)");

        assertThat(way(plan, "I-1")).containsExactly("P-1");
        assertThat(run(plan, "P-0").slope()).isEmpty();
    }

    /** Splitting the longer pipe is the designer's to do: where the two meet no invert is given. */
    @Test
    void aPipeThatEndsMidwayOnAnotherIsNotJoinedToIt() {
        PlanInFeet plan = plan().with(INLET, "I-1", "POINT (50 30)")
                .with(OUTFALL, "OF-1", "POINT (100 0)")
                .with(PIPE, "P-1", "LINESTRING (0 0, 100 0)")
                .with(PIPE, "P-2", "LINESTRING (50 30, 50 0)");

        assertThat(problems(plan))
                .containsExactly(
                        "pipe P-2 does not lead to an outfall; end a pipe of its line on one, or within 0.5 ft of the next pipe's end");
    }

    @Test
    void structuresThatNoPipeReachesAreToldButForCleanouts() {
        PlanInFeet plan = twoPipes("0")
                .with(INLET, "I-9", "POINT (50 9)")
                .with(OUTFALL, "OF-9", "POINT (60 9)")
                .with(CLEANOUT, "C-9", "POINT (70 9)");

        assertThat(problems(plan))
                .containsExactly(
                        "outfall OF-9 no pipe ends on it; bring a pipe's end within 0.5 ft of it",
                        "inlet I-9 no pipe ends on it; bring a pipe's end within 0.5 ft of it");
    }

    @Test
    void aPlanWithoutPipesIsAnEmptyNetwork() {
        assertThat(network(plan()).runs()).isEmpty();
        assertThat(network(plan()).problems()).isEmpty();
    }

    @Test
    void theWayToDaylightIsCountedFromTheEndOfEachPipe() {
        PlanInFeet plan = twoPipes("0");
        PipeNetwork network = network(plan);

        assertThat(network.lengthToDaylight(run(plan, "P-1")))
                .contains(Length.feet(50).metres());
        assertThat(network.lengthToDaylight(run(plan, "P-2"))).contains(0.0);
    }

    @Test
    void aPopUpIsNoDaylight() {
        PlanInFeet plan = plan().with(OUTFALL, "OF-1", "POINT (50 0)", "kind = pop_up")
                .with(PIPE, "P-1", "LINESTRING (0 0, 50 0)");

        assertThat(network(plan).lengthToDaylight(run(plan, "P-1"))).isEmpty();
    }

    @Test
    void slopeIsFallOverPlanLength() {
        PlanInFeet plan = plan().with(OUTFALL, "OF-1", "POINT (0 0)")
                .with(PIPE, "P-1", "LINESTRING Z (30 40 101, 0 0 100)")
                .with(PIPE, "P-2", "LINESTRING (60 40, 30 40)");

        assertThat(run(plan, "P-1").slope().orElseThrow().ratio()).isCloseTo(0.02, within(1e-12));
        assertThat(run(plan, "P-2").slope()).isEmpty();
    }

    @Test
    void aJunctionKnowsThePipesThatEndThereAndTheOneThatTakesTheWaterOn() {
        PlanInFeet plan = twoPipes("0")
                .with(PIPE, "P-3", "LINESTRING (50 50, 50 0)")
                .with(PIPE, "P-4", "LINESTRING (50 0, 60 20, 100 0)");
        PipeNetwork network = network(plan);

        assertThat(network.into(run(plan, "P-2").up())).extracting(PipeRun::id).containsExactly("P-1", "P-3");
        assertThat(network.into(run(plan, "P-1").up())).isEmpty();
        assertThat(network.isTaken(run(plan, "P-2"))).isTrue();
        assertThat(network.isTaken(run(plan, "P-4"))).isFalse();
        assertThat(network.runOf(run(plan, "P-3").pipe()).map(PipeRun::id)).contains("P-3");
    }

    @Test
    void pipesThatShareAJunctionJoin() {
        PlanInFeet plan = twoPipes("0").with(PIPE, "P-3", "LINESTRING (0 0, 0 50)");

        assertThat(run(plan, "P-1").joins(run(plan, "P-2"))).isTrue();
        assertThat(run(plan, "P-3").joins(run(plan, "P-2"))).isFalse();
    }

    // ways down

    @Test
    void aRingOfPipesIsToldWithThePipesNamed() {
        PlanInFeet plan = plan().with(INLET, "I-1", "POINT (0 0)")
                .with(OUTFALL, "OF-1", "POINT (50 0)")
                .with(PIPE, "P-1", "LINESTRING (0 0, 0 40, 40 40, 40 0)")
                .with(PIPE, "P-2", "LINESTRING (0 0, 40 0)")
                .with(PIPE, "P-3", "LINESTRING (40 0, 50 0)");

        assertThat(problems(plan))
                .containsExactly(
                        "pipes P-2 and P-1 form a ring, in which the water has no single way down; take a pipe out,"
                                + " or mend the ends that should not meet");
    }

    @Test
    void thePipesOfARingAreNamedAsOneWalksThem() {
        PlanInFeet plan = plan().with(OUTFALL, "OF-1", "POINT (-50 0)")
                .with(PIPE, "P-0", "LINESTRING (0 0, -50 0)")
                .with(PIPE, "P-3", "LINESTRING (40 40, 0 40)")
                .with(PIPE, "P-1", "LINESTRING (0 0, 40 0)")
                .with(PIPE, "P-2", "LINESTRING (40 0, 40 40)")
                .with(PIPE, "P-4", "LINESTRING (0 40, 0 0)");

        assertThat(problems(plan))
                .filteredOn(says -> says.contains("form a ring"))
                .singleElement()
                .asString()
                .startsWith("pipes P-4, P-1, P-2 and P-3 form a ring");
    }

    @Test
    void twoRingsThatShareAPipeAreBothTold() {
        PlanInFeet plan = plan().with(OUTFALL, "OF-1", "POINT (50 0)")
                .with(PIPE, "P-1", "LINESTRING (0 0, 50 0)")
                .with(PIPE, "P-2", "LINESTRING (0 0, 20 20, 50 0)")
                .with(PIPE, "P-3", "LINESTRING (0 0, 20 -20, 50 0)");

        assertThat(problems(plan))
                .filteredOn(says -> says.contains("form a ring"))
                .extracting(says -> says.substring(0, 17))
                .containsExactly("pipes P-2 and P-1", "pipes P-3 and P-1");
    }

    @Test
    void aPipeThatEndsWhereItBeginsIsTold() {
        PlanInFeet plan = twoPipes("0").with(PIPE, "P-9", "LINESTRING (50 0, 60 10, 40 10, 50 0)");

        assertThat(problems(plan))
                .containsExactly("pipe P-9 ends where it begins; draw it from its inlet to its outfall");
    }

    @Test
    void aPipeShorterThanTheSnapIsNoRing() {
        assertThat(problems(twoPipes("0").with(PIPE, "P-9", "LINESTRING (50 0, 50.4 0)")))
                .isEmpty();
        assertThat(problems(twoPipes("0").with(PIPE, "P-9", "LINESTRING (50 0, 50.2 0.4, 50.4 0)")))
                .isEmpty();
        assertThat(problems(twoPipes("0").with(PIPE, "P-9", "LINESTRING (50 0, 51 1, 52 0, 50.1 0)")))
                .hasSize(1);
    }

    @Test
    void aJunctionWithTwoWaysDownIsToldWithThePipesNamed() {
        PlanInFeet plan = plan().with(INLET, "I-1", "POINT (40 0)")
                .with(OUTFALL, "OF-1", "POINT (0 0)")
                .with(OUTFALL, "OF-2", "POINT (100 0)")
                .with(PIPE, "P-1", "LINESTRING (40 0, 100 0)")
                .with(PIPE, "P-2", "LINESTRING (40 0, 0 0)");

        assertThat(problems(plan))
                .containsExactly("pipes P-1 and P-2 all lead down from inlet I-1; the water is taken down P-2, the"
                        + " shortest way; take the others out, or mend the ends that should not meet");
    }

    @Test
    void pipesThatComeTogetherAreNoProblem() {
        assertThat(problems(twoPipes("0").with(PIPE, "P-3", "LINESTRING (50 0, 50 50)")))
                .isEmpty();
    }

    @Test
    void pipesDrawnAgainstTheFlowAndUphillRunsAreNoProblem() {
        PlanInFeet plan = plan().with(OUTFALL, "OF-1", "POINT (0 0)")
                .with(PIPE, "P-1", "LINESTRING Z (0 0 101, 50 0 100)")
                .with(PIPE, "P-2", "LINESTRING Z (50 0 100, 90 0 102)");

        assertThat(problems(plan)).isEmpty();
        assertThat(run(plan, "P-1").fall().orElseThrow().metres())
                .isCloseTo(Length.feet(-1).metres(), within(1e-9));
    }

    // inverts from depths

    /** Level ground at 100 ft. */
    private static PlanInFeet buried(String... attributes) {
        return plan().spots("-50 -50 100, 150 -50 100, 150 50 100, -50 50 100")
                .with(OUTFALL, "OF-1", "POINT (100 0)")
                .with(PIPE, "P-1", "LINESTRING (100 0, 0 0)", attributes);
    }

    private static double feet(Elevation level) {
        return level.metres() / 0.3048;
    }

    @Test
    void theInvertIsTheGroundLessTheDepthOfThatEnd() {
        PipeRun run = run(buried("depth_up = 18 in", "depth_down = 30 in"), "P-1");

        assertThat(feet(run.invertUp().orElseThrow())).isCloseTo(98.5, within(1e-9));
        assertThat(feet(run.invertDown().orElseThrow())).isCloseTo(97.5, within(1e-9));
    }

    @Test
    void theProposedGroundIsWhatADepthIsMeasuredFrom() {
        PlanInFeet plan = buried("depth_up = 18 in")
                .with(PROPOSED_GROUND, "G-1", "POINT Z (-20 -20 102)")
                .with(PROPOSED_GROUND, "G-2", "POINT Z (20 -20 102)")
                .with(PROPOSED_GROUND, "G-3", "POINT Z (0 20 102)");

        assertThat(feet(run(plan, "P-1").invertUp().orElseThrow())).isCloseTo(100.5, within(1e-9));
    }

    @Test
    void aGivenInvertComesBeforeADepth() {
        PipeRun run = run(buried("invert_up = 99 ft", "depth_up = 18 in", "depth_down = 30 in"), "P-1");

        assertThat(run.invertUp()).contains(Elevation.feet(99));
    }

    @Test
    void theZOfAnEndComesBeforeADepth() {
        PlanInFeet plan = buried().with(PIPE, "P-2", "LINESTRING Z (0 0 98, 0 40 99)", "depth_up = 18 in");

        assertThat(run(plan, "P-2").invertUp()).contains(Elevation.feet(99));
    }

    @Test
    void theInvertOfAStructureComesBeforeADepth() {
        PlanInFeet plan =
                buried("depth_up = 18 in", "depth_down = 30 in").with(INLET, "I-1", "POINT (0 0)", "invert = 99 ft");

        assertThat(run(plan, "P-1").invertUp()).contains(Elevation.feet(99));
        assertThat(feet(run(plan, "P-1").invertDown().orElseThrow())).isCloseTo(97.5, within(1e-9));
    }

    @Test
    void aDepthBelowGroundThatIsNotKnownGivesNoInvert() {
        PlanInFeet plan = plan().with(PIPE, "P-1", "LINESTRING (0 0, 100 0)", "depth_up = 18 in", "depth_down = 30 in");

        assertThat(run(plan, "P-1").invertUp()).isEmpty();
        assertThat(run(plan, "P-1").invertDown()).isEmpty();
    }

    // rims and inverts

    private static PlanInFeet underRim(String rim, String... ofPipe) {
        return plan().with(INLET, "I-1", "POINT (0 0)", "rim = " + rim)
                .with(OUTFALL, "OF-1", "POINT (100 0)")
                .with(PIPE, "P-1", "LINESTRING (0 0, 100 0)", ofPipe);
    }

    @Test
    void anInvertBelowOrAtTheRimIsNoProblem() {
        assertThat(problems(underRim("611.9 ft", "invert_up = 611.8 ft"))).isEmpty();
        assertThat(problems(underRim("611.9 ft", "invert_up = 611.9 ft"))).isEmpty();
    }

    @Test
    void aPipeInvertAboveTheRimOfItsStructureIsToldWithBoth() {
        assertThat(problems(underRim("611.9 ft", "invert_up = 612.4 ft")))
                .containsExactly(
                        "pipe P-1: its upper invert, 612.40 ft, lies above the rim of inlet I-1, 611.90 ft: are"
                                + " units or columns mixed up?");
    }

    @Test
    void theLowerInvertIsHeldAgainstTheRimWhereItEnds() {
        PlanInFeet plan = twoPipes("0")
                .with(CLEANOUT, "C-1", "POINT (50 0)", "rim = 98 ft")
                .with(PIPE, "P-3", "LINESTRING Z (50 50 100, 50 0 99)");

        assertThat(problems(plan))
                .containsExactly(
                        "pipe P-3: its lower invert, 99.00 ft, lies above the rim of cleanout C-1, 98.00 ft: are"
                                + " units or columns mixed up?");
    }

    @Test
    void anInletsRimBelowItsInvertIsToldOnce() {
        PlanInFeet plan = plan().with(INLET, "I-1", "POINT (0 0)", "rim = 611.9 ft", "invert = 612.4 ft")
                .with(OUTFALL, "OF-1", "POINT (100 0)")
                .with(PIPE, "P-1", "LINESTRING (0 0, 100 0)");

        assertThat(problems(plan))
                .containsExactly(
                        "inlet I-1: its invert, 612.40 ft, lies above its rim 611.90 ft: are units or columns mixed up?");
    }

    // drops at structures

    @Test
    void theDropAtAStructureIsTheInvertInLessTheInvertOut() {
        PlanInFeet plan = plan().with(INLET, "I-1", "POINT (50 0)")
                .with(OUTFALL, "OF-1", "POINT (100 0)")
                .with(PIPE, "P-1", "LINESTRING Z (50 0 99, 0 0 100)")
                .with(PIPE, "P-2", "LINESTRING Z (50 0 98.5, 100 0 98)");

        assertThat(network(plan).drops()).singleElement().satisfies(drop -> {
            assertThat(drop.at().structure(INLET).orElseThrow().id()).isEqualTo("I-1");
            assertThat(drop.in().id()).isEqualTo("P-1");
            assertThat(drop.out().id()).isEqualTo("P-2");
            assertThat(drop.height().metres()).isCloseTo(Length.feet(0.5).metres(), within(1e-9));
        });
    }

    @Test
    void whereAnInvertIsMissingThereIsNoDrop() {
        assertThat(network(twoPipes("0").with(CLEANOUT, "C-1", "POINT (50 0)")).drops())
                .isEmpty();
    }

    @Test
    void anAbandonedPipeCarriesNothing() {
        PlanInFeet plan = plan().with(INLET, "I-1", "POINT (0 0)")
                .with(OUTFALL, "OF-1", "POINT (100 0)")
                .with(OUTFALL, "OF-2", "POINT (0 30)", "status = abandoned")
                .with(PIPE, "P-1", "LINESTRING (0 0, 100 0)")
                .with(PIPE, "P-2", "LINESTRING (0 0, 0 30)", "status = abandoned");

        assertThat(way(plan, "I-1")).containsExactly("P-1");
        assertThat(network(plan).runs()).extracting(PipeRun::id).containsExactly("P-1");
        assertThat(problems(plan)).isEmpty();
    }
}
