package org.fallrule.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.check.PlanInFeet.plan;
import static org.fallrule.site.Role.OUTFALL;
import static org.fallrule.site.Role.PIPE;

import java.util.Optional;
import org.fallrule.measure.Elevation;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;

class PipeProfileTest {

    /** A pipe of 100 ft, drawn from its outfall, that falls from 100 ft to 98 ft. */
    private static Optional<PipeProfile> profile(String... attributes) {
        return PipeProfile.of(plan().with(OUTFALL, "OF-1", "POINT (60 40)")
                .with(PIPE, "P-1", "LINESTRING Z (60 40 98, 60 0 99, 0 0 100)", attributes)
                .analysis()
                .network()
                .runs()
                .get(0));
    }

    private static double feet(Elevation elevation) {
        return elevation.metres() / 0.3048;
    }

    @Test
    void stationsRunWithTheFlow() {
        PipeProfile profile = profile("diameter = 4 in").orElseThrow();

        assertThat(profile.length().metres()).isCloseTo(30.48, within(1e-9));
        assertThat(profile.placeAt(0)).isEqualTo(new Coordinate(0, 0));
        assertThat(profile.placeAt(60 * 0.3048).distance(new Coordinate(60 * 0.3048, 0)))
                .isLessThan(1e-9);
        assertThat(profile.stationOf(new Coordinate(60 * 0.3048, 10 * 0.3048))).isCloseTo(70 * 0.3048, within(1e-9));
    }

    @Test
    void thePipeIsStraightBetweenTheInvertsAtItsEnds() {
        PipeProfile profile = profile("diameter = 4 in").orElseThrow();

        assertThat(feet(profile.invertAt(0))).isCloseTo(100, within(1e-9));
        assertThat(feet(profile.invertAt(50 * 0.3048))).isCloseTo(99, within(1e-9));
        assertThat(feet(profile.invertAt(100 * 0.3048))).isCloseTo(98, within(1e-9));
    }

    @Test
    void topAndBottomAreThoseOfTheOutside() {
        PipeProfile profile =
                profile("diameter = 4 in", "outside_diameter = 5 in").orElseThrow();

        assertThat(feet(profile.bottomAt(0))).isCloseTo(100 - 0.5 / 12, within(1e-9));
        assertThat(feet(profile.topAt(0))).isCloseTo(100 + 4.5 / 12, within(1e-9));
    }

    @Test
    void withOnlyAnOutsideDiameterTheWallIsNotCounted() {
        PipeProfile profile = profile("outside_diameter = 6 in").orElseThrow();

        assertThat(feet(profile.bottomAt(0))).isCloseTo(100, within(1e-9));
        assertThat(feet(profile.topAt(0))).isCloseTo(100.5, within(1e-9));
    }

    @Test
    void withoutADiameterThereIsNoProfile() {
        assertThat(profile()).isEmpty();
    }
}
