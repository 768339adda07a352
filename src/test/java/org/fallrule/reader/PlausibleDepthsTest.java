package org.fallrule.reader;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.UTILITY;

import java.util.ArrayList;
import java.util.List;
import org.fallrule.document.Fault;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.junit.jupiter.api.Test;

class PlausibleDepthsTest {
    private final List<Fault> problems = new ArrayList<>();

    private Feature asked(String depth) {
        List<Feature> drawn = plan().with(UTILITY, "U-1", "LINESTRING (0 0, 9 0)", "kind = gas", "depth = " + depth)
                .site()
                .features(UTILITY);
        return PlausibleDepths.asked(UTILITY, drawn, problems).get(0);
    }

    @Test
    void aDepthThatLooksLikeAnElevationIsAskedAboutAndNotUsed() {
        Feature gas = asked("587.4 ft");

        assertThat(gas.get(Attribute.DEPTH)).isEmpty();
        assertThat(gas.get(Attribute.KIND)).contains("gas");
        assertThat(problems)
                .singleElement()
                .satisfies(
                        fault -> assertThat(fault.says())
                                .isEqualTo(
                                        "depth: 587.40 ft is deeper than utilities lie on a lot, and is not used; if the column holds"
                                                + " elevations say fields: {top: COLUMN}, if it is in another unit say units: {depth: …}"));
    }

    @Test
    void aDeepSewerIsBelieved() {
        assertThat(asked("50 ft").get(Attribute.DEPTH)).isPresent();
        assertThat(problems).isEmpty();
    }
}
