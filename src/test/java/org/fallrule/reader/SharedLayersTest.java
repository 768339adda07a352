package org.fallrule.reader;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.fallrule.SiteOnDisk;
import org.fallrule.document.Fault;
import org.fallrule.document.UnusableInput;
import org.fallrule.measure.Length;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Layer;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What sites take from the layers that a sites.yaml beside them names. A ten-thousandth of a degree is some 30 ft here. */
class SharedLayersTest {
    @TempDir
    Path place;

    private SiteOnDisk stack;
    private SiteOnDisk plan;

    private static String square(double lon, double lat, double side) {
        return "[[[%1$s, %2$s], [%3$s, %2$s], [%3$s, %4$s], [%1$s, %4$s], [%1$s, %2$s]]]"
                .formatted(lon, lat, lon + side, lat + side);
    }

    private static String line(String id, double lon, double lat, double lon2, double lat2) {
        return SiteOnDisk.feature(
                "'id': '" + id + "', 'kind': 'gas', 'depth': 24",
                "LineString",
                "[[%s, %s], [%s, %s]]".formatted(lon, lat, lon2, lat2));
    }

    @BeforeEach
    void aPlanWithABuildingAmongFourLotsOfTheCounty() {
        stack = SiteOnDisk.in(place, "stack")
                .with("sites.yaml", """
                        near: 40 ft
                        county: saltmeadow
                        units: {depth: in}
                        shared: {lot: lots.geojson, utility: {file: marks.geojson}}
                        """)
                .layer(
                        "lots.geojson",
                        SiteOnDisk.feature("'id': 'far'", "Polygon", square(-76.06, 35.3, 0.001)),
                        SiteOnDisk.feature("'id': 'west'", "Polygon", square(-76.051, 35.3, 0.001)),
                        SiteOnDisk.feature("'id': 'here'", "Polygon", square(-76.05, 35.3, 0.001)))
                .layer(
                        "marks.geojson",
                        line("G-far", -76.06, 35.3, -76.0599, 35.3),
                        line("G-2", -76.0497, 35.2995, -76.0497, 35.302),
                        line("G-1", -76.0495, 35.2995, -76.0495, 35.302),
                        // its box comes near, the line itself does not
                        line("G-round", -76.060, 35.3, -76.0499, 35.33));
        plan = SiteOnDisk.in(stack.path(), "plan-1")
                .layer(
                        "building.geojson",
                        SiteOnDisk.feature("'id': 'B'", "Polygon", square(-76.0498, 35.3004, 0.0002)));
    }

    private Site site() {
        return SiteReader.read(plan.path());
    }

    private static List<String> ids(Site site, Role role) {
        return site.features(role).stream().map(Feature::id).toList();
    }

    private static List<String> problems(Site site) {
        return site.problems().stream().map(Fault::toString).toList();
    }

    @Test
    void aSiteTakesWhatLiesNearInTheOrderOfTheFile() {
        Site site = site();

        assertThat(ids(site, Role.UTILITY)).containsExactly("G-2", "G-1");
        assertThat(ids(site, Role.LOT)).containsExactly("here");
    }

    @Test
    void howNearIsSaidInTheFile() {
        stack.replacing("sites.yaml", "near: 40 ft", "near: 200 ft");
        assertThat(ids(site(), Role.LOT)).containsExactly("west", "here");

        stack.replacing("sites.yaml", "near: 200 ft\n", "");
        assertThat(ids(site(), Role.LOT)).as("300 ft by default").containsExactly("west", "here");
    }

    /** A line of 25 miles that is straight on the grid bows 70 ft to the north of its ends in latitude. */
    @Test
    void aLongLineIsFoundInItsMiddleToo() {
        StringBuilder line = new StringBuilder();
        for (int feet = 1_934_000; feet <= 2_066_000; feet += 6_000) {
            line.append(line.isEmpty() ? "[[" : ", [").append(feet).append(", 600000]");
        }
        stack.with("sites.yaml", "near: 10 ft\nshared: {utility: {file: marks.geojson, crs: EPSG:2264}}\n")
                .layer(
                        "marks.geojson",
                        SiteOnDisk.feature(
                                "'id': 'G-long', 'kind': 'gas'",
                                "LineString",
                                line.append(']').toString()));
        String corners = "[[[1999980, 599960], [2000020, 599960], [2000020, 599995], [1999980, 599995],"
                + " [1999980, 599960]]]";
        plan.with("site.yaml", "crs: EPSG:2264\nlayers: {building: building.geojson}\n")
                .layer("building.geojson", SiteOnDisk.feature("'id': 'B'", "Polygon", corners));

        assertThat(ids(site(), Role.UTILITY)).containsExactly("G-long");
    }

    @Test
    void moreColumnsThanCanBeToldApartAreRefused() {
        String[] lots = new String[8];
        for (int lot = 0; lot < lots.length; lot++) {
            StringBuilder columns = new StringBuilder("'id': 'L-" + lot + "'");
            for (int column = 0; column < 9_000; column++) {
                columns.append(", 'c").append(9_000 * lot + column).append("': 1");
            }
            lots[lot] = SiteOnDisk.feature(columns.toString(), "Polygon", square(-76.05, 35.3, 0.001));
        }
        stack.layer("lots.geojson", lots);

        assertThatThrownBy(this::site)
                .isInstanceOf(UnusableInput.class)
                .hasMessageStartingWith(
                        "../lots.geojson: feature 8: brings the layer to more than 65535 different columns, which no layer");
    }

    @Test
    void featuresKeepTheirFileAndTheUnitsOfTheSharedFile() {
        Feature gas = site().features(Role.UTILITY).get(0);

        assertThat(gas.origin()).hasToString("../marks.geojson: feature 2");
        assertThat(gas.get(Attribute.DEPTH).orElseThrow()).isEqualTo(Length.inches(24));
    }

    @Test
    void theLotThatHoldsTheBuildingIsThePlansOwnAndThatIsTold() {
        stack.replacing("sites.yaml", "near: 40 ft", "near: 200 ft");
        Site site = site();

        assertThat(site.ownLot().map(Feature::id)).contains("here");
        assertThat(problems(site))
                .contains(
                        "../lots.geojson: feature 3: is taken as the site's own lot, since it alone holds every building"
                                + " of the plan");
    }

    @Test
    void noLotIsTakenWhereTheBuildingsStandOnTwo() {
        stack.replacing("sites.yaml", "near: 40 ft", "near: 200 ft");
        plan.layer(
                "building.geojson",
                SiteOnDisk.feature("'id': 'B'", "Polygon", square(-76.0498, 35.3004, 0.0002)),
                SiteOnDisk.feature("'id': 'C'", "Polygon", square(-76.0508, 35.3004, 0.0002)));

        assertThat(site().ownLot()).isEmpty();
    }

    @Test
    void aLayerOfTheSitesOwnCountsAloneAndThatIsTold() {
        plan.layer("lot.geojson", SiteOnDisk.feature("'id': 'drawn'", "Polygon", square(-76.05, 35.3, 0.001)));
        Site site = site();

        assertThat(ids(site, Role.LOT)).containsExactly("drawn");
        assertThat(problems(site)).contains("../lots.geojson: is not used, since the plan has a lot layer of its own");
    }

    @Test
    void sharedUtilitiesAreAddedToTheSitesOwn() {
        plan.layer("utility.geojson", line("own", -76.0499, 35.3001, -76.0492, 35.3001));

        assertThat(ids(site(), Role.UTILITY)).containsExactly("own", "G-2", "G-1");
        assertThat(site().layer(Role.UTILITY))
                .isInstanceOfSatisfying(
                        Layer.Supplied.class,
                        layer -> assertThat(layer.files()).containsExactly("utility.geojson", "../marks.geojson"));
    }

    @Test
    void aLayerWithNothingNearIsSuppliedAndOneThatDoesNotReachHereIsNot() {
        stack.layer("marks.geojson", line("W", -76.07, 35.3, -76.0699, 35.3), line("E", -76.03, 35.31, -76.0299, 35.3));
        assertThat(site().layer(Role.UTILITY)).isInstanceOf(Layer.Supplied.class);
        assertThat(site().features(Role.UTILITY)).isEmpty();

        stack.layer("marks.geojson", line("W", -76.07, 35.3, -76.0699, 35.3));
        assertThat(site().layer(Role.UTILITY)).isInstanceOf(Layer.NotSupplied.class);
        assertThat(problems(site())).contains("../marks.geojson: does not reach to this plan and says nothing of it");
    }

    @Test
    void somethingNearOutweighsThePlansWordThatThereIsNone() {
        plan.with("site.yaml", "absent: [utility]");
        Site site = site();

        assertThat(ids(site, Role.UTILITY)).containsExactly("G-2", "G-1");
        assertThat(problems(site))
                .anyMatch(each ->
                        each.contains("states that there is no utility, but ../marks.geojson: feature 2 lies near"));
    }

    @Test
    void countyAndAbsentRolesHoldForSitesThatSayNothing() {
        stack.replacing("sites.yaml", "county:", "absent: [well, septic]\ncounty:");
        plan.layer("septic.geojson", SiteOnDisk.feature("'id': 'S'", "Point", "[-76.0494, 35.3004]"));
        Site site = site();

        assertThat(site.county()).contains("saltmeadow");
        assertThat(site.layer(Role.WELL))
                .isInstanceOfSatisfying(
                        Layer.StatedAbsent.class,
                        layer -> assertThat(layer.by().file()).isEqualTo("../sites.yaml"));
        assertThat(ids(site, Role.SEPTIC)).containsExactly("S");
    }

    @Test
    void aFaultOfTheSharedFileOrLayerIsToldWithItsPlace() {
        stack.replacing("sites.yaml", "near: 40 ft", "near: -4 ft");
        assertThatThrownBy(this::site)
                .isInstanceOf(UnusableInput.class)
                .hasMessageContaining("../sites.yaml:1")
                .hasMessageContaining("negative");

        stack.replacing("sites.yaml", "near: -4 ft", "close: 4 ft");
        assertThatThrownBy(this::site).hasMessageContaining("unknown key close");

        stack.replacing("sites.yaml", "close: 4 ft", "near: 4 ft").without("marks.geojson");
        assertThatThrownBy(this::site).hasMessageContaining("there is no file marks.geojson");
    }

    @Test
    void pointsAmongSharedUtilitiesAreRefused() {
        stack.layer("marks.geojson", SiteOnDisk.feature("'id': 'M'", "Point", "[-76.0494, 35.3004]"));

        assertThatThrownBy(this::site)
                .isInstanceOf(UnusableInput.class)
                .hasMessageContaining("../marks.geojson: feature 1: is a point");
    }

    /** Held against looking at every feature. */
    @Test
    void whatIsTakenOfManyIsWhatLookingAtEachWouldGive() {
        Random random = new Random(20260601);
        String[] lines = new String[2000];
        StringBuilder wanted = new StringBuilder();
        for (int i = 0; i < lines.length; i++) {
            double lon = -76.0497 + (random.nextDouble() - 0.5) * 0.004;
            double lat = 35.3005 + (random.nextDouble() - 0.5) * 0.004;
            lines[i] = line("U" + i, lon, lat, lon + 0.0001, lat);
            // the box of the building, and 40 ft on each side in degrees of the length that the reader gives them
            double north = 40 * 0.3048 / 110_500;
            double east = north / Math.cos(Math.toRadians(35.3006));
            boolean near = lon + 0.0001 >= -76.0498 - east
                    && lon <= -76.0496 + east
                    && lat >= 35.3004 - north
                    && lat <= 35.3006 + north;
            wanted.append(near ? "U" + i + " " : "");
        }
        stack.layer("marks.geojson", lines);

        assertThat(String.join(" ", ids(site(), Role.UTILITY)) + " ").isEqualTo(wanted.toString());
    }
}
