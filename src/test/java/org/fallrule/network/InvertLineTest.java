package org.fallrule.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.OUTFALL;
import static org.fallrule.site.Role.PIPE;

import java.util.Optional;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Unit;
import org.junit.jupiter.api.Test;

class InvertLineTest {

    private static Optional<InvertLine> line(String wkt) {
        return InvertLine.of(plan().with(OUTFALL, "OF-1", "POINT (60 0)")
                .with(PIPE, "P-1", wkt)
                .analysis()
                .network()
                .runs()
                .get(0));
    }

    private static double feet(Elevation level) {
        return level.in(Unit.ELEVATION_FOOT);
    }

    @Test
    void theInvertIsStraightBetweenTheEndsOfAPipeWhoseSizeIsNotKnown() {
        InvertLine line = line("LINESTRING Z (0 0 100, 60 0 97)").orElseThrow();

        assertThat(feet(line.at(0))).isCloseTo(100, within(1e-9));
        assertThat(feet(line.at(20 * 0.3048))).isCloseTo(99, within(1e-9));
        assertThat(feet(line.at(60 * 0.3048))).isCloseTo(97, within(1e-9));
    }

    @Test
    void aPipeWithoutLengthHasTheInvertOfItsUpperEnd() {
        assertThat(feet(line("LINESTRING Z (60 0 98, 60 0 97)").orElseThrow().at(0)))
                .isCloseTo(98, within(1e-9));
    }

    @Test
    void withoutAnInvertThereIsNoLine() {
        assertThat(line("LINESTRING (0 0, 60 0)")).isEmpty();
    }
}
