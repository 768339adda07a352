package org.fallrule.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.SPOT;

import org.junit.jupiter.api.Test;

class SiteAnalysisTest {

    @Test
    void threeSpotsWithHeightsMakeAGround() {
        assertThat(plan().spots("0 0 9, 9 0 9, 0 9 9").analysis().ground()).isPresent();
    }

    @Test
    void aSpotWithoutAHeightDoesNotCount() {
        assertThat(plan().spots("0 0 9, 9 0 9")
                        .with(SPOT, "S-9", "POINT (0 9)")
                        .analysis()
                        .ground())
                .isEmpty();
    }

    @Test
    void withoutSpotsThereIsNoGround() {
        assertThat(plan().analysis().ground()).isEmpty();
    }
}
