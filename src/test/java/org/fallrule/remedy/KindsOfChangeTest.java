package org.fallrule.remedy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.assertj.core.data.Offset;
import org.fallrule.check.PlanInFeet;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Length;
import org.fallrule.site.Attribute;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;

/**
 * Each kind of change by itself: the least that is found passes, and one step less does not. The lots are invented; limits are
 * those of saltmeadow.
 */
class KindsOfChangeTest {
    private static PlanInFeet pipe(PlanInFeet plan, String id, String wkt, String... attributes) {
        return plan.without(Role.PIPE, id).with(Role.PIPE, id, wkt, attributes);
    }

    private static PlanInFeet inverts(PlanInFeet plan, String id, String wkt, String up, String down) {
        return pipe(
                plan,
                id,
                wkt,
                "diameter = 4 in",
                "material = pvc_sch40",
                "invert_up = " + up + " ft",
                "invert_down = " + down + " ft");
    }

    /** The least change of a kind that is so told, checked by the whole book to pass its rule, and one step less not to. */
    static LeastChange.Candidate least(PlanInFeet plan, Remedy kind, String rule, Predicate<String> told) {
        List<LeastChange.Candidate> all = Drains.candidates(plan, kind, rule);
        LeastChange.Candidate found = all.stream()
                .filter(each -> told.test(each.least().change().says()))
                .findFirst()
                .orElseThrow(() -> new AssertionError(
                        all.stream().map(each -> each.least().change().says()).toList()));
        int steps = found.least().steps();
        Optional<Change> less = steps > 1 ? found.series().at().apply(steps - 1) : Optional.empty();
        assertThat(Drains.meets(plan, rule, found.least().change())).isTrue();
        assertThat(less.filter(change -> Drains.meets(plan, rule, change))).isEmpty();
        return found;
    }

    private static String says(LeastChange.Candidate candidate) {
        return candidate.least().change().says();
    }

    @Test
    void aBellyIsLaidStraight() {
        PlanInFeet sagging =
                inverts(Drains.plain(), "P-1", "LINESTRING Z (0 0 98, 25 0 97.4, 50 0 97.5)", "98", "97.5");

        assertThat(says(least(sagging, new StraightPipe(), "continuous-fall", any -> true)))
                .isEqualTo("lay pipe P-1 straight between its ends");
    }

    @Test
    void anEvenGradeThatComesOutExactlyAtTheLeastSlopePasses() {
        PlanInFeet uneven = inverts(
                inverts(Drains.plain(), "P-1", "LINESTRING (0 0, 50 0)", "98", "97.9"),
                "P-2",
                "LINESTRING (50 0, 100 0)",
                "97.9",
                "97");

        assertThat(says(least(uneven, new EvenGrade(), "pipe-least-slope", any -> true)))
                .isEqualTo("lay the line from inlet CB-1 to outfall OF-1 at one even slope of 1.00 %, its ends as they"
                        + " are");
    }

    @Test
    void anEvenGradeThatIsTooFlatIsNotOffered() {
        PlanInFeet flat = inverts(
                inverts(Drains.plain(), "P-1", "LINESTRING (0 0, 50 0)", "98", "97.9"),
                "P-2",
                "LINESTRING (50 0, 100 0)",
                "97.9",
                "97.01");

        assertThat(Drains.candidates(flat, new EvenGrade(), "pipe-least-slope")).isEmpty();
    }

    /** Ground that falls to a low place 8 ft east of the basin. */
    private static PlanInFeet besideItsLowPlace() {
        return Drains.plain().spots("-60 -60 101, 160 -60 101, 160 60 101, -60 60 101, 8 0 100");
    }

    @Test
    void anInletIsMovedToWhereTheWaterGathers() {
        LeastChange.Candidate found =
                least(besideItsLowPlace(), new LowerInlet(), "basin-at-low-point", says -> says.startsWith("move"));

        assertThat(says(found)).startsWith("move inlet CB-1 ").endsWith(" to the east, its grate at the ground there");
    }

    @Test
    void aGrateAboveTheLowPlaceIsSetLower() {
        PlanInFeet proud = Drains.plain()
                .without(Role.INLET, "CB-1")
                .with(Role.INLET, "CB-1", "POINT (0 0)", "kind = basin", "rim = 100.5 ft", "invert = 98 ft")
                .spots("-60 -60 101, 160 -60 101, 160 60 101, -60 60 101, 0 0 100");

        assertThat(says(least(proud, new LowerInlet(), "basin-at-low-point", says -> says.startsWith("set"))))
                .isEqualTo("set the grate of inlet CB-1 0.42 ft lower");
    }

    @Test
    void aPipeIsLedAroundTheRootsOfATree() {
        PlanInFeet rooted = Drains.plain().with(Role.TREE, "T-1", "POINT (25 7)", "trunk_diameter = 8 in");

        assertThat(says(least(rooted, new PipeAside(), "root-zone", says -> says.startsWith("lead"))))
                .isEqualTo("lead the middle half of pipe P-1 1.00 ft farther to the south");
    }

    @Test
    void aPipeExactlyAtTheEdgeOfTheRootsNeedsNoChange() {
        PlanInFeet rooted = Drains.plain().with(Role.TREE, "T-1", "POINT (25 8)", "trunk_diameter = 8 in");

        assertThat(Drains.findings(rooted, "root-zone")).containsOnly(Outcome.MEETS);
    }

    @Test
    void aPipeWithHolesAmongRootsIsMadeWithoutThem() {
        PlanInFeet holes = pipe(
                        Drains.plain(),
                        "P-1",
                        "LINESTRING (0 0, 50 0)",
                        "diameter = 4 in",
                        "material = pvc_sch40",
                        "perforated = true",
                        "invert_up = 98 ft",
                        "invert_down = 97.5 ft")
                .with(Role.TREE, "T-1", "POINT (25 7)", "trunk_diameter = 8 in");

        assertThat(says(least(holes, new OtherPipe(), "root-zone-perforated", any -> true)))
                .isEqualTo("pipe without holes for pipe P-1");
    }

    /** Ground that runs down to the outfall, so that the last of the pipe, of thin polyethylene, lies bare. */
    private static PlanInFeet runningOut(double from) {
        return pipe(
                        Drains.plain(),
                        "P-2",
                        "LINESTRING (50 0, 100 0)",
                        "diameter = 4 in",
                        "material = hdpe_single_wall",
                        "invert_up = 97.5 ft",
                        "invert_down = 97 ft")
                .spots(
                        "-60 -60 100, -60 60 100, %1$s -60 100, %1$s 60 100, 101 -60 97, 101 60 97, 150 -60 97, 150 60 97"
                                .formatted(from))
                .absent(Role.WALK)
                .absent(Role.DRIVE)
                .absent(Role.STREET)
                .absent(Role.BUILDING);
    }

    @Test
    void theLastStretchBeforeTheOutfallIsMadeOfRigidPipe() {
        LeastChange.Candidate found = least(runningOut(93), new RigidEnd(), "pipe-cover", any -> true);

        assertThat(says(found)).matches("rigid pipe, SDR 35 PVC, for the last \\d\\.\\d0 ft of pipe P-2");
        assertThat(found.least().change().drawnAnew(Drains.plain().site()))
                .filteredOn(each -> each.id().equals("P-2~2"))
                .singleElement()
                .matches(part -> part.get(Attribute.MATERIAL).equals(Optional.of("pvc_sdr35")));
    }

    @Test
    void whereMoreThanTheLastStretchLiesBareRigidPipeIsNotEnough() {
        assertThat(Drains.candidates(runningOut(60), new RigidEnd(), "pipe-cover"))
                .isEmpty();
    }

    @Test
    void theStoneApronIsAsLongAsItsMethodAsks() {
        Remedied remedied = Drains.ofSample("harrow-14", "outfall-holds-against-erosion");
        Length laid = remedied.change()
                .orElseThrow()
                .site()
                .features(Role.OUTFALL)
                .get(0)
                .get(Attribute.APRON_LENGTH)
                .orElseThrow();

        assertThat(remedied.says())
                .isEqualTo("stone apron 1.50 ft wide at the pipe and 6.70 ft long below outfall OF-1");
        assertThat(laid.metres()).isCloseTo(Length.feet(6.7).metres(), Offset.offset(1e-9));
    }

    @Test
    void partsOfAPipeLieWhereThePipeLay() {
        LeastChange.Candidate found = least(runningOut(93), new RigidEnd(), "pipe-cover", any -> true);
        double length = found.least().change().site().features(Role.PIPE).stream()
                .filter(pipe -> pipe.id().startsWith("P-2"))
                .mapToDouble(pipe -> pipe.geometry().getLength())
                .sum();

        assertThat(length).isCloseTo(Length.feet(50).metres(), Offset.offset(1e-9));
    }
}
