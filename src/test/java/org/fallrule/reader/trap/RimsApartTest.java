package org.fallrule.reader.trap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;

import org.fallrule.check.PlanInFeet;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;

class RimsApartTest {
    private static PlanInFeet rims(double... rims) {
        PlanInFeet plan = plan().spots("0 0 640, 100 0 639, 200 0 638");
        for (int i = 0; i < rims.length; i++) {
            plan = plan.with(Role.INLET, "CB-" + i, "POINT (" + i * 100 + " 3)", "rim = " + rims[i] + " ft");
        }
        return plan;
    }

    @Test
    void rimsThatAreAllOffAlikeAreTold() {
        assertThat(Read.says(new RimsApart(), rims(641.1, 640.0, 639.1)))
                .containsExactly(
                        "inlet.shp: its rims all lie about 1.10 ft above the ground around them: is one of the two"
                                + " surveys on NGVD 29, the other on NAVD 88? Say datum: … for each layer");
    }

    @Test
    void rimsNearTheGroundFewRimsAndThoseOffByDifferentHeightsAreSilent() {
        assertThat(Read.says(new RimsApart(), rims(640.1, 639.0, 638.2))).isEmpty();
        assertThat(Read.says(new RimsApart(), rims(641.1, 640.0))).isEmpty();
        assertThat(Read.says(new RimsApart(), rims(641.1, 639.2, 639.1))).isEmpty();
    }

    @Test
    void whereTheGroundIsToBeChangedItIsSilent() {
        assertThat(Read.says(
                        new RimsApart(),
                        rims(641.1, 640.0, 639.1).with(Role.PROPOSED_GROUND, "G-1", "POINT Z (0 0 641)")))
                .isEmpty();
    }
}
