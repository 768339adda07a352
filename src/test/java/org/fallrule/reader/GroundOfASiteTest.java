package org.fallrule.reader;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.fallrule.SiteOnDisk;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.PlanInFeet;
import org.fallrule.check.pipe.Cover;
import org.fallrule.document.Fault;
import org.fallrule.document.UnusableInput;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The ground of a site folder, from rasters, points and lines, to the cover of its pipe. Coordinates are feet of EPSG:2264. */
class GroundOfASiteTest {
    private static final Path RASTERS = Path.of("src/test/resources/org/fallrule/reader/raster");
    private static final String PLAN = """
            crs: EPSG:2264
            units: {elevation: ft, diameter: in}
            layers:
              lot: lot.geojson
              pipe: pipe.geojson
              outfall: outfall.geojson
            """;

    @TempDir
    Path place;

    private SiteOnDisk folder;

    @BeforeEach
    void aLotWithAPipe() {
        folder = SiteOnDisk.in(place, "lane-1").layer("lot.geojson", lot(1450000));
        pipe(1450250, 1450350);
    }

    private static String lot(int x) {
        return SiteOnDisk.feature(
                "'id': 'L-1', 'own': true",
                "Polygon",
                "[[[%d, 549700], [%d, 549700], [%d, 549900], [%d, 549900], [%d, 549700]]]"
                        .formatted(x, x + 600, x + 600, x, x));
    }

    private void pipe(int from, int to) {
        folder.layer(
                        "pipe.geojson",
                        SiteOnDisk.feature(
                                "'id': 'P-1', 'diameter': 4, 'invert_up': 631, 'invert_down': 630",
                                "LineString",
                                "[[" + from + ", 549820], [" + to + ", 549820]]"))
                .layer(
                        "outfall.geojson",
                        SiteOnDisk.feature("'id': 'OF-1', 'kind': 'daylight'", "Point", "[" + to + ", 549820]"));
    }

    private void raster(String fixture, String name) throws IOException {
        Files.copy(RASTERS.resolve(fixture), folder.path(name));
    }

    private void spots(String file, double... heights) {
        String[] corners = {
            "1450200, 549700", "1450400, 549700", "1450400, 549900", "1450200, 549900", "1450300, 549750"
        };
        String[] features = new String[heights.length];
        for (int i = 0; i < heights.length; i++) {
            features[i] =
                    SiteOnDisk.feature("'id': 'S-" + i + "'", "Point", "[" + corners[i] + ", " + heights[i] + "]");
        }
        folder.layer(file, features);
    }

    private SiteAnalysis analysis(String more) {
        return SiteAnalysis.of(
                SiteReader.read(folder.with("site.yaml", PLAN + more).path()));
    }

    private List<String> cover(String more) {
        return new Cover()
                .observe(analysis(more), PlanInFeet.terms(new Cover(), "at_least: 12 in")).stream()
                        .map(PlanInFeet::line)
                        .toList();
    }

    private List<String> problems(String more) {
        return analysis(more).problems().stream().map(Fault::toString).toList();
    }

    @Test
    void aGeoTiffIsTheGroundOverThePipe() throws IOException {
        raster("plain.tif", "ground.tif");

        assertThat(cover("  ground: {file: ground.tif, unit: ft}"))
                .singleElement()
                .asString()
                .startsWith("meets P-1: ");
    }

    @Test
    void anAsciiGridIsTheGroundOverThePipe() throws IOException {
        raster("corner.asc", "ground.asc");
        raster("corner.prj", "ground.prj");

        assertThat(cover("  ground: {file: ground.asc, unit: ft}"))
                .singleElement()
                .asString()
                .startsWith("meets P-1: ");
    }

    @Test
    void aRasterWithoutAUnitOfHeightsIsAskedAbout() throws IOException {
        raster("plain.tif", "ground.tif");

        assertThatThrownBy(() -> SiteReader.read(
                        folder.with("site.yaml", PLAN.replace("elevation: ft, ", "") + "  ground: ground.tif")
                                .path()))
                .isInstanceOf(UnusableInput.class)
                .hasMessageContaining("ground.tif: says nothing of the unit of its heights; say unit: ft, ft_us or m");
    }

    private List<String> problemsOfInput(String more) {
        return analysis(more).site().problems().stream().map(Fault::toString).toList();
    }

    @Test
    void aRasterInAnotherDatumThanThePlanIsToldAndNotUsed() throws IOException {
        raster("vertical_feet.tif", "ground.tif");
        String ground = "  ground: ground.tif\n";

        assertThat(analysis(ground + "datum: NGVD 29").ground()).isEmpty();
        assertThat(problemsOfInput(ground + "datum: NGVD 29"))
                .contains(
                        "ground.tif: its heights are in NAVD88, the plan's in NGVD 29 (datum in site.yaml); they are not"
                                + " shifted and not used: bring them to NGVD 29 in a GIS program, or mend the datum that is wrong in"
                                + " site.yaml");
        assertThat(analysis(ground + "datum: NAVD 88").ground()).isPresent();
        assertThat(problemsOfInput(ground + "datum: NAVD 88")).noneMatch(says -> says.contains("datum"));
        assertThat(analysis(ground).ground()).isPresent();
    }

    @Test
    void spotsThatSiteYamlPutsIntoAnotherDatumAreToldAndNotUsed() {
        spots("spot.geojson", 640, 640, 640, 640, 640);

        assertThat(analysis("  spot: {file: spot.geojson, datum: NGVD29}\ndatum: NAVD88")
                        .ground())
                .isEmpty();
        assertThat(problemsOfInput("  spot: {file: spot.geojson, datum: NGVD29}\ndatum: NAVD88"))
                .anyMatch(says -> says.startsWith("spot.geojson: its heights are in NGVD29, the plan's in NAVD88"));
        assertThat(analysis("  spot: {file: spot.geojson, datum: North American Vertical Datum of 1988}\ndatum: NAVD88")
                        .ground())
                .isPresent();
    }

    @Test
    void invertsInAnotherDatumAreNotUsedAndDoNotMeetAnything() {
        spots("spot.geojson", 640, 640, 640, 640, 640);
        String mixed = "  spot: {file: spot.geojson, datum: NAVD88}\n";
        folder.replacing("pipe.geojson", "\"diameter\"", "\"status\": \"existing\", \"diameter\"");
        String plan = PLAN.replace("pipe: pipe.geojson", "pipe: {file: pipe.geojson, datum: NGVD29}");
        SiteAnalysis analysis = SiteAnalysis.of(SiteReader.read(
                folder.with("site.yaml", plan + mixed + "datum: NAVD88").path()));

        assertThat(analysis.network().runs().get(0).invertUp()).isEmpty();
        assertThat(new Cover()
                        .observe(analysis, PlanInFeet.terms(new Cover(), "at_least: 12 in")).stream()
                                .map(PlanInFeet::line))
                .singleElement()
                .asString()
                .startsWith("cannot_tell P-1; lacks the upstream invert of pipe P-1");

        // without a word on the whole plan, the drain's datum is the plan's, and the ground is the stranger
        SiteAnalysis silent = SiteAnalysis.of(
                SiteReader.read(folder.with("site.yaml", plan + mixed).path()));
        assertThat(silent.ground()).isEmpty();
        assertThat(silent.network().runs().get(0).invertUp()).isPresent();
    }

    @Test
    void aRasterThatContradictsSiteYamlIsTold() throws IOException {
        raster("vertical_feet.tif", "ground.tif");

        assertThat(problemsOfInput("  ground: {file: ground.tif, datum: NGVD29}\ndatum: NAVD88"))
                .contains(
                        "ground.tif: its heights are in NAVD88 by its own words; NGVD29 in site.yaml was not used; mend the"
                                + " one that is wrong");
    }

    @Test
    void aRasterElsewhereIsAFault() throws IOException {
        raster("plain.tif", "ground.tif");
        pipe(1480250, 1480350);
        folder.layer("lot.geojson", lot(1480000));

        assertThatThrownBy(() -> analysis("  ground: {file: ground.tif, unit: ft}"))
                .isInstanceOf(UnusableInput.class)
                .hasMessageContaining("ground.tif: lies ");
    }

    @Test
    void whereTheRasterEndsTheCoverCannotBeTold() throws IOException {
        raster("plain.tif", "ground.tif");
        pipe(1450400, 1450560);

        assertThat(cover("  ground: {file: ground.tif, unit: ft}"))
                .anyMatch(line -> line.startsWith("meets P-1: "))
                .anyMatch(line -> line.startsWith("cannot_tell P-1; lacks ground above pipe P-1 from station 0+7"));
    }

    @Test
    void theProposedGroundCountsOverTheExisting() throws IOException {
        raster("plain.tif", "ground.tif");
        spots("proposed.geojson", 631, 631, 631, 631);

        assertThat(cover("  ground: {file: ground.tif, unit: ft}\n  proposed_ground: proposed.geojson"))
                .singleElement()
                .asString()
                .startsWith("fails P-1: ");
    }

    @Test
    void pointsOfTheSameRoleLieOverARaster() throws IOException {
        raster("plain.tif", "ground.tif");
        spots("over.geojson", 631, 631, 631, 631);

        assertThat(cover("  proposed_ground: [{file: ground.tif, unit: ft}, over.geojson]"))
                .singleElement()
                .asString()
                .startsWith("fails P-1: ");
    }

    @Test
    void spotsThatStandForNoHeightAreReported() {
        spots("spot.geojson", 640, 640, 640, 0, -9999);

        assertThat(problems("  spot: spot.geojson"))
                .filteredOn(says -> says.contains("seems to stand for none"))
                .hasSize(2);
    }

    @Test
    void contoursAndBreaklinesWithoutSpotsAreAGround() {
        folder.layer(
                        "contour.geojson",
                        line("'id': 'C-1', 'elevation': 640", "[[1450200, 549700], [1450400, 549700]]"),
                        line("'id': 'C-2', 'elevation': 642", "[[1450200, 549900], [1450400, 549900]]"),
                        line("'id': 'C-3'", "[[1450200, 549850], [1450400, 549850]]"))
                .layer("breakline.geojson", line("'id': 'B-1'", "[[1450200, 549800, 641], [1450400, 549800, 641]]"));
        String lines = "  contour: contour.geojson\n  breakline: breakline.geojson";

        assertThat(cover(lines)).isNotEmpty().allMatch(line -> line.startsWith("meets P-1: "));
        assertThat(problems(lines))
                .filteredOn(says -> says.contains("has no elevation and is left out of the ground"))
                .singleElement()
                .asString()
                .startsWith("contour.geojson: ");
    }

    @Test
    void aLinkBesideARasterThatLeadsOutOfTheFolderIsRefused() throws IOException {
        Path secret = Files.writeString(place.resolve("secret.txt"), "a secret");
        Files.writeString(folder.path("ground.asc"), "ncols 1\nnrows 1\nxllcorner 0\nyllcorner 0\ncellsize 1\n630\n");
        Files.createSymbolicLink(folder.path("ground.prj"), secret);

        assertThatThrownBy(() -> analysis("  ground: {file: ground.asc, unit: ft}"))
                .isInstanceOf(UnusableInput.class)
                .hasMessageContaining("ground.prj is a link to a place outside of the site folder; copy the file in")
                .hasMessageNotContaining("a secret");
    }

    private static String line(String properties, String places) {
        return SiteOnDisk.feature(properties, "LineString", places);
    }
}
