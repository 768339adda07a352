package org.fallrule.check.pipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.OUTFALL;
import static org.fallrule.site.Role.PIPE;

import java.util.List;
import org.fallrule.check.PlanInFeet;
import org.junit.jupiter.api.Test;

/** No reduction in the direction of flow: International Plumbing Code 1101.5, read. */
class DiameterDownstreamTest {
    private static final String NEVER = "narrower_at_most: 0 in";

    private static List<String> check(String upper, String lower, String terms) {
        return drain(upper, lower).check(new DiameterDownstream(), terms);
    }

    private static PlanInFeet drain(String upper, String lower) {
        return plan().with(OUTFALL, "OF-1", "POINT (100 0)")
                .with(PIPE, "P-1", "LINESTRING (0 0, 50 0)", upper)
                .with(PIPE, "P-2", "LINESTRING (50 0, 100 0)", lower);
    }

    @Test
    void aDrainThatGrowsNarrowerFails() {
        assertThat(check("diameter = 6 in", "diameter = 4 in", NEVER)).containsExactly("fails P-2 to P-1: 2.0 in");
    }

    @Test
    void aDrainThatKeepsItsSizeMeets() {
        assertThat(check("diameter = 4 in", "diameter = 101.6 mm", NEVER)).containsExactly("meets P-2 to P-1: 0.0 in");
    }

    @Test
    void aDrainThatGrowsWiderMeets() {
        assertThat(check("diameter = 4 in", "diameter = 6 in", NEVER)).containsExactly("meets P-2 to P-1: 0.0 in");
    }

    @Test
    void narrowerByExactlyWhatIsAllowedMeets() {
        assertThat(check("diameter = 6 in", "diameter = 5 in", "narrower_at_most: 1 in"))
                .containsExactly("meets P-2 to P-1: 1.0 in");
    }

    @Test
    void everyPipeThatComesInCounts() {
        PlanInFeet branched = drain("diameter = 4 in", "diameter = 4 in")
                .with(PIPE, "P-3", "LINESTRING (50 40, 50 0)", "diameter = 6 in");
        assertThat(branched.check(new DiameterDownstream(), NEVER))
                .containsExactly("meets P-2 to P-1: 0.0 in", "fails P-2 to P-3: 2.0 in");
    }

    @Test
    void aPipeAloneHasNothingToCompareWith() {
        PlanInFeet alone = plan().with(OUTFALL, "OF-1", "POINT (50 0)").with(PIPE, "P-1", "LINESTRING (0 0, 50 0)");
        assertThat(alone.check(new DiameterDownstream(), NEVER)).isEmpty();
    }

    @Test
    void withoutADiameterItCannotBeTold() {
        assertThat(check("diameter = 4 in", "material = abs", NEVER))
                .containsExactly("cannot_tell P-2 to P-1; lacks the diameter of pipe P-2");
        assertThat(check("material = abs", "material = abs", NEVER))
                .containsExactly(
                        "cannot_tell P-2 to P-1; lacks the diameter of pipe P-1; lacks the diameter of pipe P-2");
    }
}
