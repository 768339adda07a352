package org.fallrule.check.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.EASEMENT;
import static org.fallrule.site.Role.LOT;
import static org.fallrule.site.Role.OUTFALL;
import static org.fallrule.site.Role.PIPE;
import static org.fallrule.site.Role.SEPTIC;

import java.util.List;
import org.fallrule.check.Need;
import org.fallrule.check.PlanInFeet;
import org.junit.jupiter.api.Test;

class OutsideTest {
    private static final String PIPE_OUT_OF_EASEMENT = """
            subject: pipe
            area: easement
            inside_at_most: 0 ft""";
    private static final String TEN_FEET_INSIDE = PIPE_OUT_OF_EASEMENT.replace("0 ft", "10 ft");
    private static final String OUTFALL_OUT_OF_EASEMENT = PIPE_OUT_OF_EASEMENT.replace("pipe", "outfall");

    /** Ten feet wide, between y = 0 and y = 10. */
    private static final String STRIP = "POLYGON ((-50 0, 50 0, 50 10, -50 10, -50 0))";

    private static List<String> check(PlanInFeet plan, String terms) {
        return plan.check(new Outside(), terms);
    }

    private static PlanInFeet strip() {
        return plan().with(EASEMENT, "E-1", STRIP);
    }

    private static PlanInFeet pipe(String wkt) {
        return strip().with(PIPE, "P-1", "LINESTRING (" + wkt + ")", "diameter = 4 in");
    }

    @Test
    void aPipeOutsideMeets() {
        assertThat(check(pipe("-20 12, 20 12"), PIPE_OUT_OF_EASEMENT)).containsExactly("meets P-1 to E-1: 0.00 ft");
        assertThat(check(pipe("200 200, 220 200"), PIPE_OUT_OF_EASEMENT)).containsExactly("meets P-1 to E-1: 0.00 ft");
    }

    @Test
    void aPipeThatCrossesFailsByItsLengthInside() {
        assertThat(check(pipe("0 -20, 0 20"), PIPE_OUT_OF_EASEMENT)).containsExactly("fails P-1 to E-1: 10.00 ft");
    }

    @Test
    void aPipeThatCrossesTwiceCountsBothLengths() {
        assertThat(check(pipe("0 -20, 0 20, 20 20, 20 -20"), PIPE_OUT_OF_EASEMENT))
                .containsExactly("fails P-1 to E-1: 20.00 ft");
    }

    @Test
    void aLengthBelowExactlyAtAndAboveTheLimit() {
        assertThat(check(pipe("0 -20, 0 9"), TEN_FEET_INSIDE)).containsExactly("meets P-1 to E-1: 9.00 ft");
        assertThat(check(pipe("0 -20, 0 10"), TEN_FEET_INSIDE)).containsExactly("meets P-1 to E-1: 10.00 ft");
        assertThat(check(pipe("0 -20, 0 20"), TEN_FEET_INSIDE)).containsExactly("meets P-1 to E-1: 10.00 ft");
        assertThat(check(pipe("0 9, 11 9"), TEN_FEET_INSIDE)).containsExactly("fails P-1 to E-1: 11.00 ft");
    }

    @Test
    void aPipeAlongTheEdgeOrTouchingItIsOutside() {
        assertThat(check(pipe("-20 10, 20 10"), PIPE_OUT_OF_EASEMENT)).containsExactly("meets P-1 to E-1: 0.00 ft");
        assertThat(check(pipe("0 10, 0 30"), PIPE_OUT_OF_EASEMENT)).containsExactly("meets P-1 to E-1: 0.00 ft");
        assertThat(check(pipe("-20 9.9999, 20 9.9999"), PIPE_OUT_OF_EASEMENT))
                .containsExactly("meets P-1 to E-1: 0.00 ft");
    }

    @Test
    void aPipeWhollyInsideFailsByAllOfIt() {
        assertThat(check(pipe("-20 5, 20 5"), PIPE_OUT_OF_EASEMENT)).containsExactly("fails P-1 to E-1: 40.00 ft");
    }

    @Test
    void theMapShowsThePartInside() {
        assertThat(pipe("0 -20, 0 20").observe(new Outside(), PIPE_OUT_OF_EASEMENT))
                .singleElement()
                .satisfies(seen -> assertThat(seen.where().orElseThrow().getLength())
                        .isCloseTo(10 * 0.3048, org.assertj.core.api.Assertions.within(1e-9)));
    }

    @Test
    void anOutfallFailsByItsDistanceFromTheEdge() {
        assertThat(check(strip().with(OUTFALL, "OF-1", "POINT (0 7)"), OUTFALL_OUT_OF_EASEMENT))
                .containsExactly("fails OF-1 to E-1: 3.00 ft");
        assertThat(check(strip().with(OUTFALL, "OF-1", "POINT (0 10)"), OUTFALL_OUT_OF_EASEMENT))
                .containsExactly("meets OF-1 to E-1: 0.00 ft");
        assertThat(check(strip().with(OUTFALL, "OF-1", "POINT (0 13)"), OUTFALL_OUT_OF_EASEMENT))
                .containsExactly("meets OF-1 to E-1: 0.00 ft");
    }

    @Test
    void ofSeveralAreasEachThatIsEnteredIsTold() {
        PlanInFeet plan = pipe("0 -20, 0 40")
                .with(EASEMENT, "E-2", "POLYGON ((-9 20, 9 20, 9 25, -9 25, -9 20))")
                .with(EASEMENT, "E-3", "POLYGON ((20 20, 29 20, 29 25, 20 25, 20 20))");

        assertThat(check(plan, PIPE_OUT_OF_EASEMENT))
                .containsExactly("fails P-1 to E-1: 10.00 ft", "fails P-1 to E-2: 5.00 ft");
    }

    @Test
    void ofSeveralAreasThatItStaysOutOfTheNearestIsNamed() {
        PlanInFeet plan = pipe("0 12, 0 15").with(EASEMENT, "E-2", "POLYGON ((-9 16, 9 16, 9 25, -9 25, -9 16))");

        assertThat(check(plan, PIPE_OUT_OF_EASEMENT)).containsExactly("meets P-1 to E-2: 0.00 ft");
    }

    @Test
    void nearerToTheEdgeThanTheSurveyIsAccurateItIsBorderline() {
        assertThat(check(pipe("-20 10.05, 20 10.05").surveyedTo(0.1, 0), PIPE_OUT_OF_EASEMENT))
                .containsExactly("borderline P-1 to E-1: 0.00 ft");
        assertThat(check(pipe("-20 9.95, 20 9.95").surveyedTo(0.1, 0), PIPE_OUT_OF_EASEMENT))
                .containsExactly("borderline P-1 to E-1: 40.00 ft");
        assertThat(check(pipe("-20 10.15, 20 10.15").surveyedTo(0.1, 0), PIPE_OUT_OF_EASEMENT))
                .containsExactly("meets P-1 to E-1: 0.00 ft");
        assertThat(check(pipe("0 -20, 0 20").surveyedTo(0.1, 0), PIPE_OUT_OF_EASEMENT))
                .containsExactly("fails P-1 to E-1: 10.00 ft");
    }

    @Test
    void anAreaThatMayNotBeMeantLeavesItOpenOnlyWhereItIsEntered() {
        String neighbour = """
                subject: pipe
                area: lot
                area_where: own = false
                inside_at_most: 0 ft""";
        PlanInFeet plan = plan().with(LOT, "L-2", STRIP);

        assertThat(check(plan.with(PIPE, "P-1", "LINESTRING (0 -20, 0 20)"), neighbour))
                .containsExactly("cannot_tell P-1 to L-2: 10.00 ft; lacks own of lot L-2");
        assertThat(check(plan.with(PIPE, "P-1", "LINESTRING (0 12, 0 20)"), neighbour))
                .containsExactly("meets P-1 to L-2: 0.00 ft");
    }

    @Test
    void aLimitThatThePlanLeavesOpenIsNamed() {
        PlanInFeet plan = strip().with(PIPE, "P-1", "LINESTRING (0 -20, 0 20)");

        assertThat(check(plan, PIPE_OUT_OF_EASEMENT.replace("0 ft", "0 ft when diameter_in > 3")))
                .containsExactly("cannot_tell P-1 to E-1; lacks diameter of pipe P-1, on which the limit depends");
    }

    @Test
    void whereNoAreaIsOfTheKindThereIsNothingToTell() {
        assertThat(check(plan().with(SEPTIC, "S-1", "POINT (0 0)").with(PIPE, "P-1", "LINESTRING (0 0, 9 9)"), """
                subject: pipe
                area: septic
                inside_at_most: 0 ft"""))
                .isEmpty();
    }

    @Test
    void itNeedsBothLayers() {
        assertThat(new Outside().needs(PlanInFeet.terms(new Outside(), PIPE_OUT_OF_EASEMENT)))
                .containsExactly(new Need.OfLayer(PIPE), new Need.OfLayer(EASEMENT));
    }

    @Test
    void anOutfallWellOutsideIsClearHoweverItWasSurveyed() {
        PlanInFeet outfall = strip().with(OUTFALL, "OF-1", "POINT (0 12)").surveyedTo(1, 0);

        assertThat(check(outfall, OUTFALL_OUT_OF_EASEMENT)).containsExactly("meets OF-1 to E-1: 0.00 ft");
        assertThat(check(strip().with(OUTFALL, "OF-1", "POINT (0 10.5)").surveyedTo(1, 0), OUTFALL_OUT_OF_EASEMENT))
                .containsExactly("borderline OF-1 to E-1: 0.00 ft");
    }
}
