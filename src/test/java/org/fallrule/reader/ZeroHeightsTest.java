package org.fallrule.reader;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.fallrule.check.PlanInFeet;
import org.fallrule.document.Fault;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;

class ZeroHeightsTest {
    private final List<Fault> problems = new ArrayList<>();

    private List<Feature> used(Role role, PlanInFeet plan) {
        Map<Role, List<Feature>> features = new EnumMap<>(Role.class);
        for (Role each : List.of(Role.SPOT, role)) {
            features.put(each, plan.site().features(each));
        }
        return ZeroHeights.unused(features, problems).getOrDefault(role, List.of());
    }

    @Test
    void anInvertOfZeroInAPlanThatLiesElsewhereIsToldAndNotUsed() {
        List<Feature> inlets = used(
                Role.INLET,
                plan().spots("0 0 640, 9 0 640")
                        .with(Role.INLET, "CB-1", "POINT (0 0)", "invert = 0 ft", "rim = 640 ft"));

        assertThat(inlets.get(0).attributes().has(Attribute.INVERT)).isFalse();
        assertThat(inlets.get(0).attributes().has(Attribute.RIM)).isTrue();
        assertThat(problems)
                .extracting(Fault::toString)
                .containsExactly(
                        "inlet.geojson: CB-1: its invert is 0 ft where the plan lies elsewhere, and seems to stand for"
                                + " none; it is not used: leave it empty where it is not known");
    }

    @Test
    void aPipeInTwoDimensionsThatWasSavedInThreeHasNoZ() {
        List<Feature> pipes = used(
                Role.PIPE, plan().spots("0 0 640, 9 0 640").with(Role.PIPE, "P-1", "LINESTRING Z (0 0 0, 60 0 0)"));

        assertThat(pipes.get(0).geometry().getCoordinate().getZ()).isNaN();
        assertThat(problems).hasSize(1);
    }

    @Test
    void whereThePlanLiesNearZeroItMayBeAHeight() {
        assertThat(used(
                                Role.INLET,
                                plan().spots("0 0 3, 9 0 3").with(Role.INLET, "CB-1", "POINT (0 0)", "invert = 0 ft"))
                        .get(0)
                        .attributes()
                        .has(Attribute.INVERT))
                .isTrue();
        assertThat(problems).isEmpty();
    }
}
