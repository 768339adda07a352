package org.fallrule.report.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;

import java.util.List;
import org.fallrule.check.PlanInFeet;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;

/** Worked out by hand on level ground at 10 ft with a hump at x = 40. */
class DrainTextTest {
    private static final PlanInFeet PIPE = plan().with(
                    Role.PIPE,
                    "P-1",
                    "LINESTRING (0 0, 100 0)",
                    "diameter = 4 in",
                    "outside_diameter = 4 in",
                    "invert_up = 7 ft",
                    "invert_down = 6 ft")
            .with(Role.INLET, "CB-1", "POINT (0 0)", "kind = basin")
            .with(Role.OUTFALL, "OF-1", "POINT (100 0)", "kind = daylight");
    private static final String HUMP = "-9 -9 10, 109 -9 10, 109 9 10, -9 9 10, 0 0 10, 100 0 10, 40 0 12";

    private static List<String> rows(PlanInFeet plan) {
        return DrainText.lines(plan.analysis());
    }

    @Test
    void eachPipeHasItsEndsItsGreatestCoverAndItsCrossings() {
        // cover = ground - invert - 4 in; at 0+40 12 - 6.6 - 0.333
        assertThat(rows(PIPE.spots(HUMP)
                        .with(Role.UTILITY, "G-1", "LINESTRING (20 -5, 20 5)", "kind = gas", "top = 8 ft")
                        .with(Role.UTILITY, "E-1", "LINESTRING (60 -5, 60 5)", "kind = electric")))
                .containsExactly(
                        "  pipe       station   invert   ground  cover  in feet; ? not known; x crosses",
                        "  P-1         0+00.0     7.00    10.00   2.67  inlet CB-1",
                        "              0+20.0     6.80    11.00   3.87  x gas G-1 top 8.00",
                        "              0+40.0     6.60    12.00   5.07  greatest cover",
                        "              0+60.0     6.40    11.33   4.60  x electric E-1 depth not known",
                        "              1+00.0     6.00    10.00   3.67  outfall OF-1");
    }

    @Test
    void whatIsNotKnownIsNotGuessed() {
        PlanInFeet bare = plan().with(Role.PIPE, "P-1", "LINESTRING (0 0, 100 0)", "invert_up = 7 ft");

        assertThat(rows(bare))
                .containsExactly(
                        "  pipe       station   invert   ground  cover  in feet; ? not known; x crosses",
                        "  P-1         0+00.0     7.00        ?      ?  joint",
                        "              1+00.0        ?        ?      ?  joint");
    }

    @Test
    void longAndWideNamesStayWithinEightyColumns() {
        PlanInFeet wide = plan().with(Role.PIPE, "\u4e00".repeat(50), "LINESTRING (0 0, 100 0)", "invert_up = 7 ft")
                .with(Role.INLET, "W".repeat(99), "POINT (0 0)")
                .with(Role.UTILITY, "U".repeat(99), "LINESTRING (60 -5, 60 5)");

        assertThat(rows(wide))
                .allSatisfy(line -> assertThat(Wrapped.columns(line)).isLessThanOrEqualTo(80));
    }

    @Test
    void aPlanWithoutPipesHasNoRows() {
        assertThat(rows(plan())).isEmpty();
    }
}
