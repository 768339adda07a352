package org.fallrule.remedy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.fallrule.check.PlanInFeet;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;

/** One kind of change after the other, each on a drain in which nothing else is wrong. Limits are those of saltmeadow. */
class RemediesTest {
    private static PlanInFeet replaced(String id, String wkt, String... attributes) {
        return Drains.plain().without(Role.PIPE, id).with(Role.PIPE, id, wkt, attributes);
    }

    /** P-1 falls 0.4 ft over 50 ft, 0.8 %, where 1 % is asked. */
    private static PlanInFeet flat() {
        return replaced(
                "P-1",
                "LINESTRING (0 0, 50 0)",
                "diameter = 4 in",
                "material = pvc_sch40",
                "invert_up = 97.9 ft",
                "invert_down = 97.5 ft");
    }

    @Test
    void aPipeTooFlatIsRaisedAtItsUpperEnd() {
        Remedied remedied = Drains.remedy(flat(), "pipe-least-slope", "continuous-fall");

        assertThat(remedied.says()).isEqualTo("raise the upper end of pipe P-1 by 0.10 ft, at inlet CB-1");
        assertThat(remedied.proved()).isTrue();
    }

    @Test
    void aDropAtTheStructureIsUsedBeforeAnythingIsRaised() {
        PlanInFeet dropped = flat().without(Role.PIPE, "P-2")
                .with(
                        Role.PIPE,
                        "P-2",
                        "LINESTRING (50 0, 100 0)",
                        "diameter = 4 in",
                        "material = pvc_sch40",
                        "invert_up = 97.3 ft",
                        "invert_down = 96.8 ft");

        assertThat(Drains.remedy(dropped, "pipe-least-slope", "continuous-fall").says())
                .isEqualTo("lower the lower end of pipe P-1 by 0.10 ft, at cleanout CO-1");
    }

    @Test
    void anOutfallTooNearIsEndedEarlierWithItsFall() {
        PlanInFeet near = Drains.plain()
                .with(
                        Role.WALK,
                        "W-1",
                        "POLYGON ((103.5 -50, 108 -50, 108 50, 103.5 50, 103.5 -50))",
                        "access = public");
        Remedied remedied = Drains.remedy(near, "outfall-walk-setback", "pipe-least-slope");

        assertThat(remedied.says())
                .isEqualTo("end pipe P-2 2.50 ft earlier, at station 0+47.5: fall left 0.48 ft, slope 1.00 %");
        assertThat(remedied.proved()).isTrue();
    }

    @Test
    void whereTheGroundRisesBehindTheOutfallTheFallThatIsLeftIsNamed() {
        PlanInFeet rising = Drains.plain()
                .with(
                        Role.WALK,
                        "W-1",
                        "POLYGON ((103.5 -10, 108 -10, 108 10, 103.5 10, 103.5 -10))",
                        "access = public")
                .spots("-60 -60 113, 110 -60 96.5, 110 60 96.5, -60 60 113");
        Remedied remedied = Drains.remedy(
                rising, "outfall-walk-setback", "pipe-least-slope", "outfall-inside-lot", "pipe-never-uphill");

        assertThat(remedied.says())
                .isEqualTo("end pipe P-2 2.50 ft earlier, at station 0+47.5: fall left 0.26 ft,"
                        + " slope 0.54 %; that passes this rule, but then 0.26 ft over 47.50 ft of pipe P-2 is 0.54 %, at least"
                        + " 1.00 % asked");
        assertThat(remedied.kind()).isEqualTo(Remedied.Kind.TRADE_OFF);
    }

    @Test
    void whereCoverIsToBeHadOnlyByAnOutfallInTheGroundThatIsTold() {
        PlanInFeet shallow = Drains.plain()
                .spots("-60 -60 98.4, 110 -60 97, 110 60 97, -60 60 98.4")
                .absent(Role.WALK)
                .absent(Role.DRIVE)
                .absent(Role.STREET)
                .absent(Role.BUILDING);
        Remedied remedied = Drains.remedies(shallow, "pipe-cover").stream()
                .filter(each -> each.finding()
                        .observation()
                        .subject()
                        .orElseThrow()
                        .id()
                        .equals("P-2"))
                .findFirst()
                .orElseThrow();

        assertThat(remedied.kind()).isEqualTo(Remedied.Kind.TRADE_OFF);
        assertThat(remedied.says()).startsWith("lower ").matches(".*but then outfall OF-1 lies .* below the ground");
    }

    @Test
    void aBasinThatFloatsIsWeighedDown() {
        Remedied remedied = Drains.remedy(
                Drains.plain()
                        .with(
                                Role.SOIL,
                                "S-1",
                                "POLYGON ((-60 -60, 160 -60, 160 60, -60 60, -60 -60))",
                                "groundwater_depth = 0 ft"),
                "basin-does-not-float");

        assertThat(remedied.says())
                .contains("lb more weight on inlet CB-1, or ")
                .endsWith("lb of concrete around it, some of which the ground water bears");
    }

    @Test
    void aLongPipeGetsACleanout() {
        PlanInFeet plan = Drains.plain()
                .without(Role.CLEANOUT, "CO-1")
                .without(Role.PIPE, "P-2")
                .without(Role.OUTFALL, "OF-1")
                .with(
                        Role.PIPE,
                        "P-2",
                        "LINESTRING (50 0, 140 0)",
                        "diameter = 4 in",
                        "invert_up = 97.5 ft",
                        "invert_down = 96.5 ft")
                .with(Role.OUTFALL, "OF-1", "POINT (140 0)")
                .empty(Role.CLEANOUT);

        assertThat(Drains.remedy(plan, "cleanout-spacing").says())
                .isEqualTo("a cleanout on pipe P-2 at station 0+00.0");
    }

    @Test
    void aNarrowerPipeIsMadeAsWideDownToTheOutfall() {
        PlanInFeet narrow = replaced(
                "P-1",
                "LINESTRING (0 0, 50 0)",
                "diameter = 6 in",
                "material = pvc_sch40",
                "invert_up = 98 ft",
                "invert_down = 97.5 ft");

        assertThat(Drains.remedy(narrow, "pipe-not-narrower", "pipe-least-slope")
                        .says())
                .isEqualTo("6 in pipe from cleanout CO-1 down to the outfall");
    }

    @Test
    void whatIsThereAlreadyIsNotChanged() {
        PlanInFeet existing = replaced(
                "P-1",
                "LINESTRING (0 0, 50 0)",
                "diameter = 4 in",
                "status = existing",
                "invert_up = 97.9 ft",
                "invert_down = 97.5 ft");

        assertThat(Drains.remedy(existing, "pipe-least-slope").kind()).isEqualTo(Remedied.Kind.NONE);
    }

    @Test
    void aPipePassesUnderAUtilityByABreakOfItsGrade() {
        PlanInFeet crossed = Drains.plain()
                .with(
                        Role.UTILITY,
                        "U-1",
                        "LINESTRING (25 -40, 25 40)",
                        "kind = water_service",
                        "diameter = 1 in",
                        "top = 98.6 ft",
                        "quality = A",
                        "vertical_accuracy = 0 ft",
                        "horizontal_accuracy = 0 ft");
        List<LeastChange.Candidate> all = Drains.candidates(crossed, new BrokenGrade(), "water-service-separation");

        assertThat(all.get(0).least().change().says()).startsWith("pass under water service U-1: lower the pipe by ");
    }

    @Test
    void oneStepLessDoesNotDo() {
        PlanInFeet near = Drains.plain()
                .with(
                        Role.WALK,
                        "W-1",
                        "POLYGON ((103.5 -50, 108 -50, 108 50, 103.5 50, 103.5 -50))",
                        "access = public");
        for (Remedy kind : List.of(new EarlierEnd(), new OutfallAside())) {
            List<LeastChange.Candidate> all = Drains.candidates(near, kind, "outfall-walk-setback");
            assertThat(all).isNotEmpty();
            for (LeastChange.Candidate candidate : all) {
                int steps = candidate.least().steps();
                assertThat(Drains.turns(
                                near, "outfall-walk-setback", candidate.least().change()))
                        .isTrue();
                boolean less = steps > 1
                        && candidate
                                .series()
                                .at()
                                .apply(steps - 1)
                                .map(change -> Drains.turns(near, "outfall-walk-setback", change))
                                .orElse(false);
                assertThat(less).isFalse();
            }
        }
        for (LeastChange.Candidate candidate : Drains.candidates(flat(), new OtherInverts(), "pipe-least-slope")) {
            assertThat(candidate.least().steps()).isEqualTo(10);
        }
    }

    @Test
    void twoThatStandInEachOthersWayPassTogether() {
        PlanInFeet plan = flat().with(
                        Role.WALK,
                        "W-1",
                        "POLYGON ((103.5 -50, 108 -50, 108 50, 103.5 50, 103.5 -50))",
                        "access = public");
        JointChange joint = Drains.joint(plan, "pipe-least-slope", "outfall-walk-setback", "continuous-fall")
                .orElseThrow();

        assertThat(joint.changes()).hasSize(2);
        assertThat(joint.passed()).hasSize(2);
    }
}
