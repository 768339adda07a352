package org.fallrule.check.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.INLET;
import static org.fallrule.site.Role.SOIL;

import java.util.List;
import org.fallrule.check.PlanInFeet;
import org.fallrule.check.Raining;
import org.junit.jupiter.api.Test;

/** A sump 12 by 12 in and 6 in deep: the soil takes 6 in over its floor, at 1 in/h in six hours. */
class SumpDrainsTest {
    private static final String[] BASIN = {
        "kind = basin", "sump = 6 in", "box_length = 12 in", "box_width = 12 in", "weep_hole_area = 0.02 sq ft"
    };
    private static final String WITHIN_72_H = "at_most: 72 h\nrates: rawls";

    private static PlanInFeet basin(String soil, String... basin) {
        return plan().with(INLET, "CB-1", "POINT (0 0)", basin)
                .with(SOIL, "SL-1", "POLYGON ((-10 -10, 10 -10, 10 10, -10 10, -10 -10))", soil);
    }

    private static List<String> check(PlanInFeet plan, String terms) {
        return plan.check(new SumpDrains(), terms);
    }

    @Test
    void aRateTestedOnTheSpotCounts() {
        assertThat(check(basin("infiltration = 1 in/h", BASIN), WITHIN_72_H)).containsExactly("meets CB-1: 6.0 h");
    }

    @Test
    void aTimeOfExactlyWhatIsAllowedMeets() {
        assertThat(check(basin("infiltration = 0.0833333333 in/h", BASIN), WITHIN_72_H))
                .containsExactly("meets CB-1: 72.0 h");
    }

    @Test
    void clayTakesFarLonger() {
        // Rawls, Brakensiek and Saxton 1982 (from memory): clay 0.02 in/h, 300 h
        assertThat(check(basin("texture = clay", BASIN), WITHIN_72_H)).containsExactly("fails CB-1: 300.0 h");
    }

    @Test
    void theUsualSoilOfTheCountyCountsWhereThePlanGivesNone() {
        // sand, 8.27 in/h: 6 in in 44 min
        PlanInFeet plan = plan().in(Raining.SIX_INCHES_AN_HOUR).with(INLET, "CB-1", "POINT (0 0)", BASIN);
        assertThat(check(plan, "at_most: 60 min\nrates: rawls")).containsExactly("meets CB-1: 43.5 min");
    }

    @Test
    void aSumpWithoutHolesNeverDrains() {
        assertThat(check(
                        basin(
                                "texture = sand",
                                "kind = basin",
                                "sump = 6 in",
                                "box_length = 12 in",
                                "box_width = 12 in",
                                "weep_hole_area = 0 sq ft"),
                        WITHIN_72_H))
                .containsExactly("fails CB-1");
    }

    @Test
    void aBasinWithoutASumpHoldsNoWater() {
        assertThat(check(basin("texture = clay", "kind = basin", "sump = 0 in"), WITHIN_72_H))
                .containsExactly("meets CB-1: 0.0 h; it has no sump");
    }

    @Test
    void whatIsMissingIsNamed() {
        assertThat(check(plan().with(INLET, "CB-1", "POINT (0 0)", BASIN), WITHIN_72_H))
                .containsExactly(
                        "cannot_tell CB-1; lacks how fast the soil at inlet CB-1 takes water (give a soil layer"
                                + " with infiltration or texture)");
        assertThat(check(plan().with(INLET, "CB-1", "POINT (0 0)", "kind = basin", "sump = 6 in"), WITHIN_72_H))
                .singleElement()
                .asString()
                .startsWith(
                        "cannot_tell CB-1; lacks inside length of the basin in plan, of inlet CB-1; lacks inside width");
    }

    @Test
    void commonPracticeASumpInSandFilledByAHoseIsEmptyInAboutTenMinutes() {
        // Common practice, no source. The soil layer gives a rate of clean sand and stone around the basin, 30 in/h.
        assertThat(check(basin("infiltration = 30 in/h", BASIN), "at_most: 15 min\nrates: rawls"))
                .containsExactly("meets CB-1: 12.0 min");
    }
}
