package org.fallrule.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.PIPE;

import java.util.Optional;
import org.fallrule.measure.Length;
import org.junit.jupiter.api.Test;

class OutsideDiameterTest {

    private static Optional<OutsideDiameter> of(String... attributes) {
        return OutsideDiameter.of(plan().with(PIPE, "P-1", "LINESTRING (0 0, 9 0)", attributes)
                .site()
                .features(PIPE)
                .get(0));
    }

    private static Optional<OutsideDiameter> inches(double value, OutsideDiameter.Source known) {
        return Optional.of(new OutsideDiameter(Length.inches(value), known));
    }

    @Test
    void aStatedOutsideDiameterCounts() {
        assertThat(of("outside_diameter = 4.3 in", "diameter = 4 in", "material = pvc_sdr35"))
                .isEqualTo(inches(4.3, OutsideDiameter.Source.STATED));
    }

    /** ASTM D3034 table 1, ASTM D1785 table 1 and ASTM D2729 table 1; the figures from memory. */
    @Test
    void aStandardGivesItForTheNominalSize() {
        assertThat(of("diameter = 4 in", "material = pvc_sdr35"))
                .isEqualTo(inches(4.215, OutsideDiameter.Source.STANDARD));
        assertThat(of("diameter = 6 in", "material = pvc_sdr35"))
                .isEqualTo(inches(6.275, OutsideDiameter.Source.STANDARD));
        assertThat(of("diameter = 3 in", "material = pvc_sch40"))
                .isEqualTo(inches(3.5, OutsideDiameter.Source.STANDARD));
        assertThat(of("diameter = 4 in", "material = abs")).isEqualTo(inches(4.5, OutsideDiameter.Source.STANDARD));
        assertThat(of("diameter = 3 in", "material = pvc_thin_wall"))
                .isEqualTo(inches(3.25, OutsideDiameter.Source.STANDARD));
    }

    @Test
    void corrugatedPipeAndOddSizesHaveNoMoreThanTheNominalSize() {
        assertThat(of("diameter = 4 in", "material = hdpe_single_wall"))
                .isEqualTo(inches(4, OutsideDiameter.Source.NOMINAL));
        assertThat(of("diameter = 5 in", "material = pvc_sdr35")).isEqualTo(inches(5, OutsideDiameter.Source.NOMINAL));
        assertThat(of("diameter = 4 in")).isEqualTo(inches(4, OutsideDiameter.Source.NOMINAL));
    }

    @Test
    void withoutAnyDiameterItIsNotKnown() {
        assertThat(of("material = pvc_sdr35")).isEmpty();
    }
}
