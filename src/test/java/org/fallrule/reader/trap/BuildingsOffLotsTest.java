package org.fallrule.reader.trap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.check.PlanInFeet.plan;

import java.util.Map;
import org.fallrule.check.PlanInFeet;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BuildingsOffLotsTest {
    private static final PlanInFeet LOTS = plan().with(Role.LOT, "L-1", "POLYGON ((0 0, 60 0, 60 100, 0 100, 0 0))")
            .with(Role.LOT, "L-2", "POLYGON ((60 0, 120 0, 120 100, 60 100, 60 0))");

    private static PlanInFeet house(double from, double to) {
        return LOTS.with(
                Role.BUILDING,
                "B-1",
                String.format(
                        java.util.Locale.ROOT, "POLYGON ((%1$f 20, %2$f 20, %2$f 60, %1$f 60, %1$f 20))", from, to));
    }

    @Test
    void aLotLineThroughTheHouseIsTold() {
        assertThat(Read.says(new BuildingsOffLots(), house(24, 64.2)))
                .containsExactly("building.geojson: B-1: reaches 4.20 ft across the line of lot L-1: are the two layers"
                        + " shifted against each other (another foot, NAD 83 taken for WGS 84, lines traced from a"
                        + " photograph)?");
    }

    @Test
    void whereTheLayersAreInTwoKindsOfFeetThatIsTheCause() {
        assertThat(Read.says(new BuildingsOffLots(), house(24, 64.2), Map.of(Role.BUILDING, Read.INTERNATIONAL)))
                .singleElement()
                .asString()
                .endsWith("is one of the two layers in the wrong foot, US survey or international?");
    }

    @ParameterizedTest(name = "a house from {0} to {1} ft: {2}")
    @CsvSource({
        "10, 50, well inside",
        "20, 60, on the line",
        "20, 60.4, by less than half a foot",
        "10, 110, over both lots"
    })
    void aHouseOnItsLotOrOfARowIsSilent(double from, double to, String why) {
        assertThat(Read.says(new BuildingsOffLots(), house(from, to))).isEmpty();
    }

    @Test
    void noHouseOnAnyLotIsTold() {
        assertThat(Read.says(new BuildingsOffLots(), house(200, 240)))
                .containsExactly(
                        "building.shp: none of its buildings stands on a lot: are the two layers shifted against each"
                                + " other (another foot, NAD 83 taken for WGS 84, lines traced from a photograph), or is the"
                                + " building of this lot missing?");
    }

    @Test
    void aNeighboursHouseBeyondTheLotsIsSilentWhereAnotherStandsOnOne() {
        assertThat(Read.says(
                        new BuildingsOffLots(),
                        house(10, 50).with(Role.BUILDING, "B-2", "POLYGON ((200 0, 240 0, 240 40, 200 0))")))
                .isEmpty();
        assertThat(Read.says(
                        new BuildingsOffLots(), plan().with(Role.BUILDING, "B-1", "POLYGON ((0 0, 9 0, 9 9, 0 0))")))
                .isEmpty();
    }
}
