package org.fallrule.reader;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.fallrule.SiteOnDisk;
import org.fallrule.document.UnusableInput;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;

/** What becomes of the features of a site's layers. Coordinates are degrees in open water; 1e-5 degrees are about 3 ft. */
class LayersOfASiteTest {
    private static final String RING =
            "[[[-76.0500, 35.3000], [-76.0490, 35.3000], [-76.0490, 35.3010], [-76.0500, 35.3010], [-76.0500, 35.3000]]]";

    @TempDir
    Path place;

    private SiteOnDisk folder;

    @BeforeEach
    void aFolderWithALot() {
        folder = SiteOnDisk.in(place, "lane-1").layer("lot.geojson", lot("'id': 'L-1', 'own': true"));
    }

    private static String lot(String properties) {
        return SiteOnDisk.feature(properties, "Polygon", RING);
    }

    private static String point(String properties, String position) {
        return SiteOnDisk.feature(properties, "Point", position);
    }

    private static String line(String properties, String positions) {
        return SiteOnDisk.feature(properties, "LineString", positions);
    }

    private Site read(String siteYaml) {
        return SiteReader.read(folder.with("site.yaml", siteYaml).path());
    }

    private List<String> problems(String siteYaml) {
        return read(siteYaml).problems().stream().map(fault -> fault.toString()).toList();
    }

    private void refused(String siteYaml, String... messages) {
        assertThatThrownBy(() -> read(siteYaml))
                .isInstanceOfSatisfying(
                        UnusableInput.class,
                        e -> assertThat(e.faults())
                                .extracting(fault -> fault.toString())
                                .containsExactly(messages));
    }

    // which features belong

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "STATUS = 'ACT' | U-1, U-4",
                "STATUS <> 'ABD' | U-1, U-3, U-4",
                "STATUS IN ('ACT', 'PLN') | U-1, U-3, U-4",
                "STATUS <> 'ABD' AND YR >= 2000 | U-3, U-4",
                "YR < 2000 OR STATUS = 'PLN' | U-1, U-2, U-3",
            })
    void aConditionTellsWhichFeaturesOfAFileBelongToALayer(String where, String ids) {
        folder.layer(
                "marks.geojson",
                line("'id': 'U-1', 'STATUS': 'ACT', 'YR': 1990", "[[-76.0500, 35.3000], [-76.0499, 35.3000]]"),
                line("'id': 'U-2', 'STATUS': 'ABD', 'YR': 1990", "[[-76.0500, 35.3001], [-76.0499, 35.3001]]"),
                line("'id': 'U-3', 'STATUS': 'PLN', 'YR': 2010", "[[-76.0500, 35.3002], [-76.0499, 35.3002]]"),
                line("'id': 'U-4', 'STATUS': 'ACT', 'YR': 2000", "[[-76.0500, 35.3003], [-76.0499, 35.3003]]"));

        Site site = read("layers: {lot: lot.geojson, utility: {file: marks.geojson, fields: {status: YR}, where: \""
                + where + "\"}}");

        assertThat(site.features(Role.UTILITY)).extracting(Feature::id).containsExactly(ids.split(", "));
    }

    @Test
    void aFeatureWithNothingInTheAskedColumnIsKeptAndThatIsSaid() {
        folder.layer(
                "marks.geojson",
                line("'id': 'U-1', 'LIFE': null", "[[-76.0500, 35.3000], [-76.0499, 35.3000]]"),
                line("'id': 'U-2', 'LIFE': 'ABD'", "[[-76.0500, 35.3001], [-76.0499, 35.3001]]"));

        Site site = read("layers: {lot: lot.geojson, utility: {file: marks.geojson, where: \"LIFE <> 'ABD'\"}}");

        assertThat(site.features(Role.UTILITY)).extracting(Feature::id).containsExactly("U-1");
        assertThat(site.problems())
                .extracting(fault -> fault.toString())
                .contains(
                        "marks.geojson: feature 1: has nothing in a column that the condition LIFE <> 'ABD' asks for; it is"
                                + " kept");
    }

    @Test
    void aColumnThatIsEmptyThroughoutIsStillAColumn() {
        folder.layer(
                "marks.geojson",
                line("'id': 'U-1', 'LIFE': null, 'COVER': null", "[[-76.0500, 35.3000], [-76.0499, 35.3000]]"));

        Site site = read("layers: {lot: lot.geojson, utility: {file: marks.geojson, fields: {depth: COVER},"
                + " where: \"LIFE <> 'ABD'\"}}");

        assertThat(site.features(Role.UTILITY))
                .singleElement()
                .satisfies(utility -> assertThat(utility.get(Attribute.DEPTH)).isEmpty());
    }

    @Test
    void aConditionOnAColumnThatIsNotThereIsAFault() {
        folder.layer("marks.geojson", line("'id': 'U-1', 'LIFE': 'ACT'", "[[-76.05, 35.3], [-76.0499, 35.3]]"));

        refused(
                "layers: {lot: lot.geojson, utility: {file: marks.geojson, where: \"life = 'ACT'\"}}",
                "site.yaml:1:44: the condition life = 'ACT' names the column life, which marks.geojson does not have; it"
                        + " has id, LIFE");
    }

    @Test
    void aConditionOnAFileWithoutColumnsIsAFault() {
        folder.layer("marks.geojson", line("", "[[-76.05, 35.3], [-76.0499, 35.3]]"));

        refused(
                "layers: {lot: lot.geojson, utility: {file: marks.geojson, where: \"LIFE = 'ACT'\"}}",
                "site.yaml:1:44: the condition LIFE = 'ACT' names the column LIFE, which marks.geojson does not have; it"
                        + " has no columns");
    }

    @Test
    void aLayerWithoutFeaturesNeedsNoColumns() {
        folder.layer("marks.geojson");

        Site site = read("layers: {lot: lot.geojson, utility: {file: marks.geojson, fields: {depth: COVER}, where:"
                + " \"LIFE = 'ACT'\"}}");

        assertThat(site.layer(Role.UTILITY)).isInstanceOf(org.fallrule.site.Layer.Supplied.class);
        assertThat(site.features(Role.UTILITY)).isEmpty();
    }

    @Test
    void oneFileServesSeveralRolesAndIsNotedOnce() {
        folder.layer(
                "points.geojson",
                point("'id': 'CB-1', 'WHAT': 'CB'", "[-76.0499, 35.3005]"),
                point("'id': 'OF-1', 'WHAT': 'OUT'", "[-76.0498, 35.3005]"),
                "{\"type\": \"Feature\", \"properties\": {\"id\": \"CB-2\", \"WHAT\": \"CB\"}}");

        Site site = read("""
                layers:
                  lot: lot.geojson
                  inlet: {file: points.geojson, where: "WHAT = 'CB'"}
                  outfall: {file: points.geojson, where: "WHAT = 'OUT'"}
                """);

        assertThat(site.features(Role.INLET)).extracting(Feature::id).containsExactly("CB-1");
        assertThat(site.features(Role.OUTFALL)).extracting(Feature::id).containsExactly("OF-1");
        assertThat(site.problems())
                .extracting(fault -> fault.toString())
                .filteredOn(problem -> problem.contains("no \"geometry\" member"))
                .hasSize(1);
    }

    // geometry

    @Test
    void aFeatureWithoutGeometryIsLeftOutAndThatIsSaid() {
        folder.layer("tree.geojson", "{\"type\": \"Feature\", \"properties\": {}, \"geometry\": null}");

        assertThat(problems("layers: {lot: lot.geojson, tree: tree.geojson}"))
                .containsExactly("tree.geojson: feature 1: has no geometry and is left out");
    }

    @Test
    void aRoleWithTheWrongFormOfGeometryIsRefusedFeatureByFeature() {
        folder.layer(
                "pipe.geojson",
                point("'id': 'P-1'", "[-76.0499, 35.3005]"),
                line("'id': 'P-2'", "[[-76.0499, 35.3005], [-76.0498, 35.3005]]"),
                SiteOnDisk.feature("'id': 'P-3'", "Polygon", RING));

        refused(
                "layers: {lot: lot.geojson, pipe: pipe.geojson}",
                "pipe.geojson: feature 1: is a Point; the pipe layer wants lines",
                "pipe.geojson: feature 3: is a Polygon; the pipe layer wants lines");
    }

    @Test
    void aPolygonThatCrossesItselfIsRefusedWithThePlaceInTheFilesOwnCoordinates() {
        folder.layer(
                "building.geojson",
                SiteOnDisk.feature(
                        "'id': 'B-1'",
                        "Polygon",
                        "[[[-76.0500, 35.3000], [-76.0498, 35.3002], [-76.0498, 35.3000], [-76.0500, 35.3002],"
                                + " [-76.0500, 35.3000]]]"));

        refused(
                "layers: {lot: lot.geojson, building: building.geojson}",
                "building.geojson: feature 1: is not a sound shape: self-intersection at x -76.0499, y 35.3001; redraw its"
                        + " outline so that it does not cross or touch itself");
    }

    @Test
    void aLineThatGoesNowhereIsRefusedWithAnotherAdviceThanAnArea() {
        folder.layer("pipe.geojson", SiteOnDisk.feature("", "LineString", "[[-76.05, 35.3], [-76.05, 35.3]]"));

        refused(
                "layers: {lot: lot.geojson, pipe: pipe.geojson}",
                "pipe.geojson: feature 1: is not a sound shape: too few distinct points in geometry component at x"
                        + " -76.05, y 35.3; draw it from one place to another, or take it out");
    }

    @Test
    void theManyPointsOfAFeatureAreSeveralFeatures() {
        folder.layer(
                "inlet.geojson",
                SiteOnDisk.feature("'id': 'DS'", "MultiPoint", "[[-76.0499, 35.3005], [-76.0498, 35.3005]]"),
                SiteOnDisk.feature("'id': 'CB'", "MultiPoint", "[[-76.0497, 35.3005]]"));

        assertThat(read("layers: {lot: lot.geojson, inlet: inlet.geojson}").features(Role.INLET))
                .extracting(Feature::id)
                .containsExactly("DS.1", "DS.2", "CB");
    }

    @Test
    void aPipeInPartsThatJoinIsOnePipeWithItsInverts() {
        folder.layer(
                "pipe.geojson",
                SiteOnDisk.feature(
                        "'id': 'P-1', 'invert_up': 8, 'invert_down': 7",
                        "MultiLineString",
                        "[[[-76.0499, 35.3005], [-76.0498, 35.3005]], [[-76.0498, 35.3005], [-76.0497, 35.3006]]]"));

        Site site = read("units: {elevation: ft}\nlayers: {lot: lot.geojson, pipe: pipe.geojson}");

        assertThat(site.features(Role.PIPE)).singleElement().satisfies(pipe -> {
            assertThat(pipe.id()).isEqualTo("P-1");
            assertThat(pipe.geometry().getNumPoints()).isEqualTo(3);
            assertThat(site.frame().toLonLat(pipe.geometry().getCoordinates()[0]).x)
                    .isCloseTo(-76.0499, within(1e-9));
            assertThat(pipe.get(Attribute.INVERT_UP)).isPresent();
        });
        assertThat(site.problems()).isEmpty();
    }

    @Test
    void aPipeInPiecesWithAGapIsSeveralPipesWithoutTheInvertsOfTheWhole() {
        folder.layer(
                "pipe.geojson",
                SiteOnDisk.feature(
                        "'id': 'P-1', 'diameter': 4, 'invert_up': 8, 'invert_down': 7",
                        "MultiLineString",
                        "[[[-76.0499, 35.3005], [-76.0498, 35.3005]], [[-76.0497, 35.3005], [-76.0496, 35.3006]]]"));

        Site site = read("units: {elevation: ft, diameter: in}\nlayers: {lot: lot.geojson, pipe: pipe.geojson}");

        assertThat(site.features(Role.PIPE)).extracting(Feature::id).containsExactly("P-1.1", "P-1.2");
        assertThat(site.features(Role.PIPE)).allSatisfy(pipe -> {
            assertThat(pipe.get(Attribute.DIAMETER)).isPresent();
            assertThat(pipe.get(Attribute.INVERT_UP)).isEmpty();
            assertThat(pipe.get(Attribute.INVERT_DOWN)).isEmpty();
        });
        assertThat(site.problems())
                .extracting(fault -> fault.toString())
                .containsExactly(
                        "pipe.geojson: feature 1: is drawn in pieces that do not join, so its inverts are not used;"
                                + " close the gaps, or draw each piece as a pipe with its own inverts");
    }

    // heights

    private double z(Role role) {
        return SiteReader.read(folder.path())
                .features(role)
                .get(0)
                .geometry()
                .getCoordinate()
                .getZ();
    }

    @ParameterizedTest
    @CsvSource({"ft,3.048", "m,10", "ft_us,3.048006096012192"})
    void zIsAHeightInTheStatedUnit(String unit, double metres) {
        folder.layer("spot.geojson", point("'id': 'S-1'", "[-76.0499, 35.3005, 10]"))
                .with("site.yaml", "units: {elevation: " + unit + "}\nlayers: {lot: lot.geojson, spot: spot.geojson}");

        assertThat(z(Role.SPOT)).isCloseTo(metres, within(1e-12));
    }

    @Test
    void zWithoutAUnitIsNotUsedAndThatIsSaidOnce() {
        folder.layer(
                        "spot.geojson",
                        point("'id': 'S-1'", "[-76.0499, 35.3005, 10]"),
                        point("'id': 'S-2'", "[-76.0498, 35.3005, 11]"))
                .with("site.yaml", "layers: {lot: lot.geojson, spot: spot.geojson}");

        assertThat(z(Role.SPOT)).isNaN();
        assertThat(problems("layers: {lot: lot.geojson, spot: spot.geojson}"))
                .containsExactly(
                        "spot.geojson: its Z has no unit and is not used; say units: {elevation: …} with m, ft or"
                                + " ft_us");
    }

    @Test
    void anElevationInAColumnComesBeforeZ() {
        folder.layer("spot.geojson", point("'id': 'S-1', 'ELEV_FT': 20", "[-76.0499, 35.3005, 10]"))
                .with("site.yaml", "units: {elevation: m}\nlayers: {lot: lot.geojson, spot: spot.geojson}");

        assertThat(z(Role.SPOT)).isCloseTo(6.096, within(1e-12));
    }

    @Test
    void aSpotWithoutAnElevationIsMentioned() {
        folder.layer("spot.geojson", point("'id': 'S-1'", "[-76.0499, 35.3005]"));

        assertThat(problems("layers: {lot: lot.geojson, spot: spot.geojson}"))
                .containsExactly(
                        "spot.geojson: feature 1: has no elevation; spots without one are not used; give elevation"
                                + " in a column or as Z");
    }

    @ParameterizedTest
    @CsvSource({"point_m,M-1", "point_z,M-1", "point_zm,M-1"})
    void anElevationColumnServesEveryKindOfPointShape(String shapefile, String mark) throws IOException {
        for (String ending : List.of(".shp", ".shx", ".dbf")) {
            Files.copy(
                    Path.of("src/test/resources/org/fallrule/reader/shapefile", shapefile + ending),
                    folder.path("spot" + ending));
        }
        folder.without("lot.geojson")
                .with(
                        "site.yaml",
                        "layers: {spot: {file: spot.shp, crs: OGC:CRS84, where: \"mark = '" + mark
                                + "'\", fields: {elevation: depth}, units: {elevation: ft}}}");

        assertThat(z(Role.SPOT)).isCloseTo(-0.3048, within(1e-12));
    }

    @Test
    void featuresThatAConditionLeavesOutDoNotMoveTheFrame() {
        folder.layer(
                "parcels.geojson",
                lot("'APN': 'L-1'"),
                SiteOnDisk.feature(
                        "'APN': 'L-2'",
                        "Polygon",
                        "[[[-70, 35], [-69.9, 35], [-69.9, 35.1], [-70, 35.1], [-70, 35]]]"));

        Site site = read("layers: {lot: {file: parcels.geojson, where: \"APN = 'L-1'\"}}");

        assertThat(site.frame().toLonLat(new Coordinate(0, 0)).x).isCloseTo(-76.0495, within(1e-9));
    }

    @Test
    void twoDimensionalLinesHaveNoHeight() {
        folder.layer("pipe.geojson", line("'id': 'P-1'", "[[-76.0499, 35.3005], [-76.0498, 35.3005]]"))
                .with("site.yaml", "units: {elevation: ft}\nlayers: {lot: lot.geojson, pipe: pipe.geojson}");

        assertThat(z(Role.PIPE)).isNaN();
    }

    // the own lot

    @Test
    void theOnlyLotIsTheSitesOwnAndThatIsSaid() {
        folder.layer("lot.geojson", lot("'id': 'L-1'"));

        assertThat(read("layers: {lot: lot.geojson}").ownLot()).map(Feature::id).contains("L-1");
        assertThat(problems("layers: {lot: lot.geojson}"))
                .containsExactly("lot.geojson: feature 1: is the only lot and is taken as the site's own");
    }

    @Test
    void besideALotThatIsMarkedOwnTheOthersAreNot() {
        folder.layer("lot.geojson", lot("'id': 'L-1', 'own': 'Y'"), lot("'id': 'L-2'"));

        Site site = read("layers: {lot: lot.geojson}");

        assertThat(site.ownLot()).map(Feature::id).contains("L-1");
        assertThat(site.features(Role.LOT).get(1).get(Attribute.OWN)).contains(false);
    }

    @Test
    void ofSeveralUnmarkedLotsNoneIsTaken() {
        folder.layer("lot.geojson", lot("'id': 'L-1'"), lot("'id': 'L-2'"));

        assertThat(read("layers: {lot: lot.geojson}").ownLot()).isEmpty();
    }

    @Test
    void ofTwoLotsThatAreBothMarkedOwnNoneIsTakenAndThatIsSaid() {
        folder.layer("lot.geojson", lot("'id': 'L-1', 'own': 1"), lot("'id': 'L-2', 'own': 1"));

        assertThat(read("layers: {lot: lot.geojson}").ownLot()).isEmpty();
        assertThat(problems("layers: {lot: lot.geojson}"))
                .containsExactly(
                        "lot.geojson: 2 lots are marked as own, so none is taken; mark the one that the plan is for");
    }

    // ids

    @Test
    void aRepeatedIdIsMentionedOnce() {
        folder.layer(
                "tree.geojson",
                point("'id': 'T'", "[-76.0499, 35.3005]"),
                point("'id': 'T'", "[-76.0498, 35.3005]"),
                point("'id': 'T'", "[-76.0497, 35.3005]"));

        assertThat(problems("layers: {lot: lot.geojson, tree: tree.geojson}"))
                .containsExactly(
                        "tree.geojson: feature 2: has the same id T as feature 1; give each its own, so that findings"
                                + " can be told apart");
    }

    @Test
    void aFeatureWithoutAnIdGoesByItsPlaceInTheFile() {
        folder.layer("tree.geojson", point("", "[-76.0499, 35.3005]"), point("", "[-76.0498, 35.3005]"));

        assertThat(read("layers: {lot: lot.geojson, tree: tree.geojson}").features(Role.TREE))
                .extracting(Feature::id)
                .containsExactly("#1", "#2");
    }

    // coordinate reference systems

    @Test
    void geoJsonInDegreesIsReadAsDegreesEvenWhereThePlanIsProjected() {
        Site site = read("crs: EPSG:2264\nlayers: {lot: lot.geojson}");

        assertThat(site.frame().toLonLat(new Coordinate(0, 0)))
                .satisfies(origin -> assertThat(origin.x).isCloseTo(-76.0495, within(1e-9)))
                .satisfies(origin -> assertThat(origin.y).isCloseTo(35.3005, within(1e-9)));
    }

    @Test
    void geoJsonInFeetIsReadInTheSystemThatSiteYamlNames() {
        // EPSG:2264, NAD83 / North Carolina (ftUS): false origin x 2000000.002616666 ftUS at 79 W, 33.75 N (EPSG
        // dataset)
        folder.layer(
                "lot.geojson",
                SiteOnDisk.feature(
                        "'own': true",
                        "Polygon",
                        "[[[2000000, 500000], [2000100, 500000], [2000100, 500100], [2000000, 500100], [2000000, 500000]]]"));

        Site site = read("crs: EPSG:2264\nlayers: {lot: lot.geojson}");

        // The lot lies on the central meridian, where the grid scale is the projection's own: 100 ftUS are 30.48006 m
        // on grid.
        assertThat(site.frame().toLonLat(new Coordinate(0, 0)).x).isCloseTo(-79, within(0.001));
        assertThat(site.ownLot().orElseThrow().geometry().getArea()).isCloseTo(929.03, within(0.5));
    }

    @Test
    void geoJsonInFeetWithoutASystemIsRefused() {
        folder.layer(
                "lot.geojson",
                SiteOnDisk.feature(
                        "",
                        "Polygon",
                        "[[[2000000, 500000], [2000100, 500000]," + " [2000100, 500100], [2000000, 500000]]]"));

        assertThatThrownBy(() -> read("layers: {lot: lot.geojson}"))
                .isInstanceOf(UnusableInput.class)
                .hasMessageStartingWith("lot.geojson: feature 1: x is 2000000; a longitude lies between -180 and 180")
                .hasMessageContaining("crs: EPSG:2264");
    }

    @Test
    void aLayersOwnSystemComesBeforeThePlans() {
        folder.layer("tree.geojson", point("'id': 'T-1'", "[404545.0, 3906800.0]"));

        Site site = read("crs: EPSG:2264\nlayers: {lot: lot.geojson, tree: {file: tree.geojson, crs: EPSG:26918}}");

        assertThat(site.crs()).contains("; ");
        assertThat(site.frame()
                        .toLonLat(site.features(Role.TREE).get(0).geometry().getCoordinate())
                        .x)
                .isCloseTo(-76.05, within(0.01));
    }

    @Test
    void anUnknownSystemOfALayerIsAFaultAtItsLine() {
        assertThatThrownBy(() -> read("layers:\n  lot:\n    file: lot.geojson\n    crs: EPSG:99999\n"))
                .isInstanceOf(UnusableInput.class)
                .hasMessageStartingWith("site.yaml:4:10: crs: ")
                .hasMessageContaining("EPSG:99999");
    }

    @Test
    void layersThatLieMilesApartAreRefused() {
        folder.layer("tree.geojson", point("'id': 'T-1'", "[-76.0495, 35.4]"));

        refused(
                "layers: {lot: lot.geojson, tree: tree.geojson}",
                "tree.geojson: its tree features lie 6.8 miles from the lots; check the layer's crs and its .prj");
    }

    @Test
    void northingBeforeEastingIsRecognized() {
        folder.layer(
                        "lot.geojson",
                        SiteOnDisk.feature(
                                "'id': 'L-1', 'own': true",
                                "Polygon",
                                "[[[900000, 1000000], [900100, 1000000], [900100, 1000100], [900000, 1000000]]]"))
                .with("tree.csv", "id,easting,northing\nT-1,1000050,900050\n");

        refused(
                "crs: EPSG:2223\nlayers: {lot: lot.geojson, tree: tree.csv}",
                "tree.csv: its tree features lie 26.8 miles from the lots; check the layer's crs and its .prj. Swapped, its two"
                        + " coordinates lie at the plan: are they the wrong way round?");
    }

    @Test
    void withoutLotsTheLayersAreHeldAgainstTheFirstOne() {
        folder.without("lot.geojson")
                .layer("outfall.geojson", point("'id': 'OF-1'", "[-76.0495, 35.3]"))
                .layer("tree.geojson", point("'id': 'T-1'", "[-76.0495, 35.4]"));

        refused(
                "layers: {outfall: outfall.geojson, tree: tree.geojson}",
                "tree.geojson: its tree features lie 6.9 miles from the rest of the plan; check the layer's crs and its"
                        + " .prj");
    }

    @Test
    void latitudeBeforeLongitudeIsRecognized() {
        folder.layer("tree.geojson", point("'id': 'T-1'", "[35.3005, -76.0495]"));

        assertThatThrownBy(() -> read("layers: {lot: lot.geojson, tree: tree.geojson}"))
                .isInstanceOf(UnusableInput.class)
                .hasMessageStartingWith("tree.geojson: feature 1: ")
                .hasMessageContaining("looks like latitude first");
    }

    @Test
    void aPlanWithoutAnyGeometryIsRefused() {
        folder.layer("lot.geojson");

        assertThatThrownBy(() -> read("layers: {lot: lot.geojson}"))
                .isInstanceOf(UnusableInput.class)
                .hasMessageEndingWith("no lot has geometry; draw the lot, or leave its layer out");
    }

    // files

    @Test
    void aMissingFileIsAFaultWithTheNearestName() {
        refused(
                "layers: {lot: Lot.geojson}",
                "site.yaml:1:15: there is no file Lot.geojson in the site folder; did you mean lot.geojson?");
    }

    @ParameterizedTest
    @ValueSource(strings = {"../other/lot.geojson", "x/../../other/lot.geojson", "/etc/hostname"})
    void aFileOutsideOfTheFolderIsRefused(String file) {
        SiteOnDisk.in(place, "other").layer("lot.geojson", lot("'id': 'L-9'"));

        refused(
                "layers: {lot: " + file + "}",
                "site.yaml:1:15: " + file + " lies outside of the site folder; copy it in");
    }

    @Test
    void aPathWithBackslashesIsToldHowToBeWritten() {
        assertThatThrownBy(() -> SiteReader.read(folder.with("site.yaml", "layers: {lot: 'gis\\lot.geojson'}")
                        .path()))
                .hasMessageStartingWith(
                        "site.yaml:1:15: there is no file gis\\lot.geojson in the site folder, or its path has"
                                + " to be written with / and not with \\");
    }

    @Test
    void aLinkThatLeadsOutOfTheFolderIsRefused() throws IOException {
        SiteOnDisk other = SiteOnDisk.in(place, "other").layer("lot.geojson", lot("'id': 'L-9'"));
        Files.createSymbolicLink(folder.path("linked.geojson"), other.path("lot.geojson"));

        refused(
                "layers: {lot: linked.geojson}",
                "site.yaml:1:15: linked.geojson is a link to a place outside of the site folder; copy the file in");
    }

    @Test
    void aLinkBesideAShapefileThatLeadsOutIsRefusedToo() throws IOException {
        SiteOnDisk harrow = SiteOnDisk.copied("harrow-14", place);
        Path secret = Files.writeString(place.resolve("secret.txt"), "secret");
        Files.delete(harrow.path("PARCELS.prj"));
        Files.createSymbolicLink(harrow.path("PARCELS.prj"), secret);

        assertThatThrownBy(() -> SiteReader.read(harrow.path()))
                .isInstanceOf(UnusableInput.class)
                .hasMessageContaining("PARCELS.prj is a link to a place outside of the site folder")
                .hasMessageNotContaining("secret");
    }

    @Test
    void aLinkWithinTheFolderIsFollowedAndSoIsALinkedFolder() throws IOException {
        Files.createSymbolicLink(folder.path("same.geojson"), Path.of("lot.geojson"));
        folder.with("site.yaml", "layers: {lot: same.geojson}");
        Path linked = Files.createSymbolicLink(place.resolve("linked"), folder.path());

        assertThat(SiteReader.read(linked).features(Role.LOT)).hasSize(1);
    }

    @Test
    void theCurrentFolderCanBeRead() {
        Path here = Path.of("").toAbsolutePath().relativize(folder.path().toAbsolutePath());

        assertThat(SiteReader.read(here.resolve(".")).features(Role.LOT)).hasSize(1);
        assertThat(new LayerFiles(Path.of(""))
                        .layer(LayerSpec.plain(
                                Role.LOT,
                                "sample-sites/plumb-line-1/lot.geojson",
                                org.fallrule.document.Place.of("site.yaml"))))
                .isNotNull();
        assertThat(new LayerFiles(Path.of("."))
                        .layer(LayerSpec.plain(
                                Role.LOT,
                                "sample-sites/plumb-line-1/lot.geojson",
                                org.fallrule.document.Place.of("site.yaml"))))
                .isNotNull();
    }

    @Test
    void aFileInAFolderOfTheSiteIsRead() throws IOException {
        Files.createDirectories(folder.path("gis"));
        Files.move(folder.path("lot.geojson"), folder.path("gis/lot.geojson"));

        assertThat(read("layers: {lot: gis/lot.geojson}").features(Role.LOT)).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"lot.dxf", "lot"})
    void aKindOfFileThatCannotBeReadIsRefused(String file) {
        folder.with(file, "x");

        refused(
                "layers: {lot: " + file + "}",
                file + ": is not a kind of file that can be read; give " + String.join(", ", LayerFormat.allEndings()));
    }

    @Test
    void aTableIsAskedOfFilesThatHaveTablesOnly() {
        refused(
                "layers: {lot: {file: lot.geojson, table: lots}}",
                "site.yaml:1:42: lot.geojson is a file of one layer and has no tables; take table: away");
    }

    @Test
    void aNameThatNoFileCanHaveIsRefused() {
        assertThatThrownBy(() -> read("layers: {lot: \"lot\\0.geojson\"}"))
                .isInstanceOf(UnusableInput.class)
                .hasMessageContaining("cannot be a file's name");
    }

    @Test
    void theShortAndTheLongFormOfALayerReadTheSame() {
        List<Feature> shortForm = read("layers: {lot: lot.geojson}").features(Role.LOT);
        List<Feature> longForm = read("layers: {lot: {file: lot.geojson}}").features(Role.LOT);

        assertThat(longForm)
                .extracting(Feature::id)
                .isEqualTo(shortForm.stream().map(Feature::id).toList());
        assertThat(longForm.get(0).geometry().equalsExact(shortForm.get(0).geometry()))
                .isTrue();
    }

    @Test
    void anAbandonedPipeIsNoPartOfTheDrainAndIsTold() {
        folder.layer(
                "pipe.geojson",
                line("'id': 'P-1', 'status': 'proposed'", "[[-76.0495, 35.3008], [-76.0495, 35.3005]]"),
                line("'id': 'P-2', 'status': 'abandoned'", "[[-76.0496, 35.3008], [-76.0496, 35.3005]]"));

        Site site = read("layers: {lot: lot.geojson, pipe: pipe.geojson}\n");

        assertThat(site.features(Role.PIPE)).extracting(Feature::id).containsExactly("P-1");
        assertThat(site.drawn(Role.PIPE)).extracting(Feature::id).containsExactly("P-1", "P-2");
        assertThat(site.problems())
                .extracting(fault -> fault.toString())
                .contains(
                        "pipe.geojson: pipe P-2 is abandoned: no part of the drain, so that no water is counted in it and"
                                + " no rule held against it; if the drain still runs through it, give status existing");
    }

    @ParameterizedTest
    @ValueSource(strings = {"lot", "tree"})
    void aLayerInAnotherSystemThanStatedIsToldOnceForAllItsFeatures(String role) {
        folder.layer(
                role + ".geojson",
                point("'id': '1'", "[2130802, 760715]"),
                point("'id': '2'", "[2130803, 760716]"),
                point("'id': '3'", "[2130804, 760717]"));

        assertThatThrownBy(() -> read("layers: {" + (role.equals("lot") ? "" : "lot: lot.geojson, ") + role + ": "
                        + role + ".geojson}\n"))
                .isInstanceOfSatisfying(
                        UnusableInput.class,
                        e -> assertThat(e.faults())
                                .singleElement()
                                .asString()
                                .startsWith(role + ".geojson: feature 1: x is 2130802")
                                .endsWith("(the first of 3 features of the layer that it is so with)"));
    }
}
