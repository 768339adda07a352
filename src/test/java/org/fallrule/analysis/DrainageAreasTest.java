package org.fallrule.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.DRAINAGE_AREA;
import static org.fallrule.site.Role.INLET;

import java.util.List;
import org.fallrule.check.PlanInFeet;
import org.fallrule.document.Fault;
import org.fallrule.site.Feature;
import org.junit.jupiter.api.Test;

class DrainageAreasTest {
    private static final String AROUND_ONE = "POLYGON ((0 0, 10 0, 10 10, 0 10, 0 0))";
    private static final String AROUND_BOTH = "POLYGON ((0 0, 30 0, 30 10, 0 10, 0 0))";
    private static final String BESIDE = "POLYGON ((50 50, 60 50, 60 60, 50 60, 50 50))";

    private static PlanInFeet area(String wkt, String... attributes) {
        return plan().with(INLET, "CB-1", "POINT (5 5)")
                .with(INLET, "CB-2", "POINT (25 5)")
                .with(DRAINAGE_AREA, "DA-1", wkt, attributes);
    }

    private static List<String> drainedTo(PlanInFeet plan) {
        DrainageAreas areas = new DrainageAreas(plan.site());
        return plan.site().features(INLET).stream()
                .filter(inlet -> !areas.of(inlet).isEmpty())
                .map(Feature::id)
                .toList();
    }

    private static List<String> problems(PlanInFeet plan) {
        return plan.analysis().problems().stream().map(Fault::toString).toList();
    }

    @Test
    void anAreaDrainsToTheOneInletThatStandsInIt() {
        assertThat(drainedTo(area(AROUND_ONE))).containsExactly("CB-1");
        assertThat(problems(area(AROUND_ONE))).isEmpty();
    }

    @Test
    void anAreaDrainsToTheInletThatItNamesWhereverThatStands() {
        PlanInFeet named = area(AROUND_BOTH, "drains_to = CB-2");

        assertThat(drainedTo(named)).containsExactly("CB-2");
        assertThat(problems(named)).isEmpty();
        assertThat(drainedTo(area(BESIDE, "drains_to = CB-1"))).containsExactly("CB-1");
    }

    @Test
    void anAreaThatNamesAnInletThatThereIsNotIsTold() {
        PlanInFeet named = area(AROUND_ONE, "drains_to = CB-9");

        assertThat(drainedTo(named)).isEmpty();
        assertThat(problems(named))
                .containsExactly(
                        "drainage_area.geojson: DA-1: drainage area DA-1 drains to CB-9, which is no inlet of the"
                                + " plan; it counts for none: name its inlet in the column drains_to");
    }

    @Test
    void anAreaWithoutAnInletIsTold() {
        assertThat(drainedTo(area(BESIDE))).isEmpty();
        assertThat(problems(area(BESIDE)))
                .containsExactly(
                        "drainage_area.geojson: DA-1: drainage area DA-1 holds no inlet; it counts for none: name"
                                + " its inlet in the column drains_to");
    }

    @Test
    void anAreaAroundSeveralInletsIsTold() {
        assertThat(drainedTo(area(AROUND_BOTH))).isEmpty();
        assertThat(problems(area(AROUND_BOTH)))
                .containsExactly(
                        "drainage_area.geojson: DA-1: drainage area DA-1 holds the inlets CB-1, CB-2; it counts"
                                + " for none: name its inlet in the column drains_to");
    }
}
