package org.fallrule.reader;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.site.Attribute;
import org.fallrule.site.Attributes;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

/** Lot lines in metres. */
class LotLinesTest {
    private final List<Fault> faults = new ArrayList<>();
    private final List<Fault> problems = new ArrayList<>();

    private static Feature line(String id, boolean own, String wkt) {
        try {
            Attributes said = Attributes.none().with(Attribute.ID, id).with(Attribute.OWN, own);
            Place origin = Place.of("parcels.shp").feature("feature " + id);
            return new Feature(Role.LOT, id, new WKTReader().read(wkt), said, origin);
        } catch (ParseException wrong) {
            throw new IllegalArgumentException(wrong);
        }
    }

    private List<Feature> joined(Feature... drawn) {
        return LotLines.joined(
                Role.LOT,
                List.of(drawn),
                at -> String.format(Locale.ROOT, "x %.1f, y %.1f", at.x, at.y),
                faults,
                problems);
    }

    private List<String> says(List<Fault> told) {
        return told.stream().map(Fault::toString).toList();
    }

    @Test
    void linesThatMeetBoundLotsAndTheOneWithAllItsLinesMarkedIsOwn() {
        List<Feature> lots = joined(
                line("1", true, "LINESTRING (0 0, 20 0)"),
                line("2", true, "LINESTRING (20 0, 20 30)"),
                line("3", true, "MULTILINESTRING ((20 30, 0 30), (0 30, 0 0))"),
                line("4", false, "LINESTRING (20 0, 40 0, 40 30, 20 30)"));

        assertThat(lots).extracting(Feature::id).containsExactly("lot 1", "lot 2");
        assertThat(lots).extracting(lot -> lot.geometry().getArea()).containsExactly(600.0, 600.0);
        assertThat(lots).extracting(lot -> lot.get(Attribute.OWN).orElse(false)).containsExactly(true, false);
        assertThat(faults).isEmpty();
        assertThat(problems).isEmpty();
    }

    /** As when each lot was taken apart into its lines. */
    @Test
    void aNeighboursLineOnTheOwnLotsLineTakesNothingFromIt() {
        List<Feature> lots = joined(
                line("1", true, "LINESTRING (0 0, 20 0, 20 30, 0 30, 0 0)"),
                line("2", false, "LINESTRING (20 0, 40 0, 40 30, 20 30, 20 0)"));

        assertThat(lots).extracting(lot -> lot.get(Attribute.OWN).orElse(false)).containsExactly(true, false);
    }

    @Test
    void aClosedLineIsALotByItsOwnName() {
        List<Feature> lots = joined(line("14", true, "LINESTRING (0 0, 20 0, 20 30, 0 30, 0 0)"));

        assertThat(lots).singleElement().satisfies(lot -> {
            assertThat(lot.id()).isEqualTo("14");
            assertThat(lot.geometry().getGeometryType()).isEqualTo("Polygon");
        });
    }

    @Test
    void linesThatCrossEachOtherBoundLotsBetweenTheCrossings() {
        List<Feature> lots = joined(
                line("1", true, "LINESTRING (-5 0, 25 0)"),
                line("2", true, "LINESTRING (-5 30, 25 30)"),
                line("3", true, "LINESTRING (0 -5, 0 35)"),
                line("4", true, "LINESTRING (20 -5, 20 35)"));

        assertThat(lots)
                .singleElement()
                .satisfies(lot -> assertThat(lot.geometry().getArea()).isEqualTo(600));
    }

    @Test
    void aGapIsToldWithItsPlaceAndSizeAndBoundsNoLot() {
        List<Feature> lots = joined(
                line("1", true, "LINESTRING (0 0, 20 0, 20 30, 0 30, 0 0)"),
                line("2", false, "LINESTRING (20 0, 40 0, 40 30, 20.3048 30)"));

        assertThat(lots).hasSize(1);
        assertThat(says(problems))
                .containsExactly(
                        "parcels.shp: a lot line ends at x 20.3, y 30.0, 1 ft short of the next line, and bounds no lot"
                                + " there; join the two");
    }

    @Test
    void aGapBetweenTwoEndsIsToldOnce() {
        joined(
                line("1", true, "LINESTRING (0 0, 20 0, 20 30, 0 30, 0 0)"),
                line("2", false, "LINESTRING (20 0, 40 0, 40 14)"),
                line("3", false, "LINESTRING (40 15, 40 30, 20 30)"));

        assertThat(problems).hasSize(1);
    }

    @Test
    void whatRoundingLeavesIsNoGap() {
        List<Feature> lots = joined(
                line("1", true, "LINESTRING (0 0, 20 0, 20 30)"),
                line("2", true, "LINESTRING (20.003 30, 0 30, 0 0.004)"));

        assertThat(lots)
                .singleElement()
                .satisfies(lot -> assertThat(lot.geometry().getArea()).isCloseTo(600, within(0.2)));
        assertThat(problems).isEmpty();
    }

    @Test
    void aLineThatRunsOnOffTheMapIsNoGap() {
        joined(
                line("1", true, "LINESTRING (0 0, 20 0, 20 30, 0 30, 0 0)"),
                line("2", false, "LINESTRING (20 0, 60 0)"),
                line("3", false, "LINESTRING (20 30, 60 30)"));

        assertThat(problems).isEmpty();
    }

    @Test
    void linesThatBoundNothingAreAFaultThatNamesTheGap() {
        joined(line("1", true, "LINESTRING (0 0, 20 0, 20 30, 0 30, 0 1)"));

        assertThat(says(faults))
                .containsExactly(
                        "parcels.shp: its 1 lot lines bound no lot; join the ends of the lines where they should meet, or draw"
                                + " the lots as polygons",
                        "parcels.shp: a lot line ends at x 0.0, y 0.0, 3.28 ft short of the next line, and bounds no lot there;"
                                + " join the two");
    }

    @Test
    void otherRolesAndPolygonsAreLeftAsTheyAre() {
        Feature drawn = line("1", true, "POLYGON ((0 0, 20 0, 20 30, 0 0))");

        assertThat(joined(drawn)).containsExactly(drawn);
    }
}
