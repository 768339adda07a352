package org.fallrule.check.statement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.PIPE;
import static org.fallrule.site.Role.SEPTIC;
import static org.fallrule.site.Role.UTILITY;

import java.util.List;
import org.fallrule.check.Need;
import org.fallrule.check.PlanInFeet;
import org.junit.jupiter.api.Test;

class StatedTest {
    private static final String SEPTIC_SHOWN = "of: septic";
    private static final String SIZE_AND_MATERIAL = "of: pipe\nshows: diameter, material";

    private static List<String> check(PlanInFeet plan, String terms) {
        return plan.check(new Stated(), terms);
    }

    private static PlanInFeet pipe(String... attributes) {
        return plan().with(PIPE, "P-1", "LINESTRING (0 0, 40 0)", attributes);
    }

    @Test
    void aLayerThatIsSuppliedIsShown() {
        assertThat(check(plan().with(SEPTIC, "S-1", "POINT (0 0)"), SEPTIC_SHOWN))
                .containsExactly("meets; the plan shows the septic layer");
    }

    @Test
    void absenceThatIsStatedIsShownToo() {
        assertThat(check(plan().absent(SEPTIC), SEPTIC_SHOWN))
                .containsExactly("meets; the plan states that there is no septic (site.yaml:7)");
    }

    @Test
    void silenceIsNotAbsence() {
        assertThat(check(plan(), SEPTIC_SHOWN)).containsExactly("fails; lacks the septic layer");
    }

    @Test
    void anEmptyLayerShowsNothing() {
        assertThat(check(plan().empty(SEPTIC), SEPTIC_SHOWN))
                .containsExactly("fails; lacks the septic layer, which is empty");
    }

    @Test
    void whatIsToldOfEachFeatureMeets() {
        assertThat(check(pipe("diameter = 4 in", "material = pvc_sdr35"), SIZE_AND_MATERIAL))
                .containsExactly("meets P-1");
    }

    @Test
    void whatIsNotToldFailsByName() {
        assertThat(check(pipe("diameter = 4 in"), SIZE_AND_MATERIAL))
                .containsExactly("fails P-1; lacks material of pipe P-1");
        assertThat(check(pipe(), SIZE_AND_MATERIAL)).containsExactly("fails P-1; lacks diameter, material of pipe P-1");
    }

    @Test
    void unknownTellsNothing() {
        assertThat(check(pipe("diameter = 4 in", "material = unknown"), SIZE_AND_MATERIAL))
                .containsExactly("fails P-1; lacks material of pipe P-1");
    }

    @Test
    void ofFeaturesOfAnotherKindNothingIsAsked() {
        PlanInFeet plan = plan().with(UTILITY, "U-1", "LINESTRING (0 0, 9 0)", "kind = gas")
                .with(UTILITY, "U-2", "LINESTRING (0 1, 9 1)", "kind = sanitary")
                .with(UTILITY, "U-3", "LINESTRING (0 2, 9 2)");

        assertThat(check(plan, "of: utility\nof_where: kind = 'gas'\nshows: depth"))
                .containsExactly("fails U-1; lacks depth of gas U-1", "cannot_tell U-3; lacks kind of utility U-3");
    }

    @Test
    void toTellMoreOfALayerTheLayerIsNeeded() {
        Stated stated = new Stated();

        assertThat(stated.needs(PlanInFeet.terms(stated, SIZE_AND_MATERIAL))).containsExactly(new Need.OfLayer(PIPE));
        assertThat(stated.needs(PlanInFeet.terms(stated, SEPTIC_SHOWN))).isEmpty();
    }
}
