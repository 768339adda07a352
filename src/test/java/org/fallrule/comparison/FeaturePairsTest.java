package org.fallrule.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.fallrule.check.PlanInFeet;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;

/** Which features of two states are the same thing. Places in feet. */
class FeaturePairsTest {
    private static FeaturePairs pairs(PlanInFeet before, PlanInFeet after) {
        return FeaturePairs.of(before.site(), after.site());
    }

    private static PlanInFeet basin(PlanInFeet plan, String id, String place) {
        return plan.with(Role.INLET, id, "POINT (" + place + ")", "kind = basin");
    }

    private static List<String> words(FeaturePairs pairs) {
        return pairs.pairs().stream()
                .map(pair -> pair.before().id() + " is " + pair.after().id())
                .toList();
    }

    private static List<String> ids(List<Feature> features) {
        return features.stream().map(Feature::id).toList();
    }

    @Test
    void aNameHoldsHoweverFarTheThingHasMoved() {
        FeaturePairs pairs = pairs(basin(PlanInFeet.plan(), "CB-1", "0 0"), basin(PlanInFeet.plan(), "CB-1", "90 40"));

        assertThat(words(pairs)).containsExactly("CB-1 is CB-1");
        assertThat(pairs.pairs().get(0).isRenamed()).isFalse();
    }

    @Test
    void anotherNameInTheSamePlaceIsTheSameThingAndSaidToBeRenamed() {
        FeaturePairs pairs =
                pairs(basin(PlanInFeet.plan(), "CB-1", "0 0"), basin(PlanInFeet.plan(), "INLET 7", "0.9 0"));

        assertThat(words(pairs)).containsExactly("CB-1 is INLET 7");
        assertThat(pairs.pairs().get(0).isRenamed()).isTrue();
    }

    @Test
    void fartherThanAFootItIsAnother() {
        FeaturePairs pairs =
                pairs(basin(PlanInFeet.plan(), "CB-1", "0 0"), basin(PlanInFeet.plan(), "INLET 7", "1.1 0"));

        assertThat(ids(pairs.removed())).containsExactly("CB-1");
        assertThat(ids(pairs.added())).containsExactly("INLET 7");
    }

    @Test
    void whatCouldBeTwoThingsStaysUnpaired() {
        PlanInFeet after = basin(basin(PlanInFeet.plan(), "A", "0.5 0"), "B", "-0.5 0");

        FeaturePairs pairs = pairs(basin(PlanInFeet.plan(), "CB-1", "0 0"), after);

        assertThat(pairs.pairs()).isEmpty();
        assertThat(ids(pairs.added())).containsExactly("A", "B");
    }

    @Test
    void anotherKindInTheSamePlaceIsAnotherThing() {
        PlanInFeet after = PlanInFeet.plan().with(Role.INLET, "X", "POINT (0 0)", "kind = downspout");

        assertThat(pairs(basin(PlanInFeet.plan(), "CB-1", "0 0"), after).pairs())
                .isEmpty();
    }

    @Test
    void thingsWithoutNamesArePairedByPlaceSinceTheirNumbersShift() {
        PlanInFeet before = basin(basin(PlanInFeet.plan(), "#1", "0 0"), "#2", "50 0");
        PlanInFeet after = basin(basin(basin(PlanInFeet.plan(), "#1", "20 0"), "#2", "0 0"), "#3", "50 0");

        FeaturePairs pairs = pairs(before, after);

        assertThat(words(pairs)).containsExactlyInAnyOrder("#1 is #2", "#2 is #3");
        assertThat(pairs.pairs()).noneMatch(FeaturePair::isRenamed);
        assertThat(ids(pairs.added())).containsExactly("#1");
    }

    @Test
    void aPipeDrawnTheOtherWayRoundUnderAnotherNameIsTheSame() {
        PlanInFeet before = PlanInFeet.plan().with(Role.PIPE, "P-1", "LINESTRING (0 0, 40 0)");
        PlanInFeet after = PlanInFeet.plan().with(Role.PIPE, "9", "LINESTRING (40 0, 0 0)");

        assertThat(words(pairs(before, after))).containsExactly("P-1 is 9");
    }
}
