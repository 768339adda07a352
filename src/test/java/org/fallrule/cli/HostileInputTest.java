package org.fallrule.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.fallrule.SiteOnDisk;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Input that cannot be used: exit code 2, a message that says where, and no report. */
class HostileInputTest {
    @TempDir
    Path place;

    private Ran ran(Object... words) {
        return Ran.check(Stream.concat(Stream.of("--out", place.resolve("out")), Stream.of(words))
                .toArray());
    }

    private void refused(Path site, String... messages) throws IOException {
        Ran ran = ran(site);

        assertThat(ran.err()).contains(messages);
        assertThat(ran.err()).doesNotContain("fault of the program");
        assertThat(ran.out()).isEmpty();
        assertThat(ran.code()).isEqualTo(2);
        assertThat(filesIn(place.resolve("out"))).isEmpty();
    }

    private static List<Path> filesIn(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return List.of();
        }
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile).toList();
        }
    }

    private SiteOnDisk quillfeather() {
        return SiteOnDisk.copied("quillfeather-8", place);
    }

    private SiteOnDisk harrow() {
        return SiteOnDisk.copied("harrow-14", place);
    }

    @Test
    void noSuchFolder() throws IOException {
        refused(place.resolve("nowhere"), "nowhere could not be checked:\n", "nowhere: there is no such folder");
    }

    @Test
    void aFileInsteadOfAFolder() throws IOException {
        refused(
                quillfeather().path("lot.geojson"),
                "lot.geojson: is a file; name the folder that holds the site's layers");
    }

    @Test
    void anEmptyFolder() throws IOException {
        refused(SiteOnDisk.in(place, "empty").path(), "empty: no layers here; name them under layers in site.yaml");
    }

    @Test
    void brokenJson() throws IOException {
        SiteOnDisk site = quillfeather().with("pipe.geojson", "{\"type\": \"FeatureCollection\",\n \"features\": [{]}");

        refused(site.path(), "pipe.geojson:2:16: feature 1: this is not JSON");
    }

    @Test
    void jsonThatEndsEarly() throws IOException {
        refused(quillfeather().with("pipe.geojson", "{\"type\": \"Feat").path(), "pipe.geojson:1:");
    }

    @Test
    void nestingWithoutEnd() throws IOException {
        refused(quillfeather().with("pipe.geojson", "[".repeat(100_000)).path(), "pipe.geojson:1:");
    }

    @Test
    void aNumberThatIsNone() throws IOException {
        SiteOnDisk site =
                quillfeather().replacing("outfall.geojson", "\"coordinates\": [-", "\"coordinates\": [NaN, -");

        refused(site.path(), "outfall.geojson:2:");
    }

    @Test
    void aShapefileWhoseCoordinatesAreNoNumbers() throws IOException {
        SiteOnDisk site = harrow();
        try (RandomAccessFile shp =
                new RandomAccessFile(site.path("TOPO_PT.shp").toFile(), "rw")) {
            shp.seek(100 + 8 + 4); // behind the header, the record's header and its shape type
            shp.write(new byte[] {0, 0, 0, 0, 0, 0, (byte) 0xF8, 0x7F}); // NaN, least significant byte first
        }

        refused(site.path(), "TOPO_PT.shp: feature 1: ", "wanted a finite number");
    }

    @Test
    void aShapefileWithoutItsMainFile() throws IOException {
        refused(
                harrow().without("STORM_LN.shp").path(),
                "site.yaml:19:11: ",
                "there is no file STORM_LN.shp in the site folder");
    }

    @Test
    void aShapefileThatIsCutShort() throws IOException {
        SiteOnDisk site = harrow();
        try (RandomAccessFile shp =
                new RandomAccessFile(site.path("STORM_LN.shp").toFile(), "rw")) {
            shp.setLength(300);
        }

        refused(site.path(), "STORM_LN.shp");
    }

    @Test
    void aShapefileWithoutShxIsReadAllTheSame() {
        Ran whole = ran(harrow().path(), "--quiet");
        Ran without = ran(harrow2().path(), "--quiet");

        assertThat(without.code()).isEqualTo(whole.code());
        assertThat(without.out()).isEqualTo(whole.out());
    }

    private SiteOnDisk harrow2() {
        return SiteOnDisk.copied("harrow-14", place.resolve("again")).without("STORM_LN.shx");
    }

    @Test
    void aShapefileWithoutDbfLacksTheColumnsThatSiteYamlNames() throws IOException {
        refused(
                harrow().without("STORM_LN.dbf").path(),
                "STORM_LN.shp has no column PIPEID for id",
                "STORM_LN.shp has no column UP_INV for invert_up");
    }

    @Test
    void aShapefileWithoutPrjIsAskedForIt() throws IOException {
        refused(
                harrow().without("marks.prj").path(),
                "marks.shp: says nothing of its coordinate reference system",
                "supply the .prj, or name it in site.yaml, such as crs: EPSG:2264");
    }

    @Test
    void anUnknownCrs() throws IOException {
        refused(
                SiteOnDisk.copied("thistledown-3", place)
                        .replacing("site.yaml", "EPSG:3734", "EPSG:373400")
                        .path(),
                "site.yaml:4:6: crs: ",
                "EPSG:373400");
    }

    @Test
    void aCrsMeantForAnotherPlace() throws IOException {
        refused(
                SiteOnDisk.copied("thistledown-3", place)
                        .replacing("site.yaml", "EPSG:3734", "EPSG:26917")
                        .path(),
                "lot.geojson: feature 1: the position (",
                "check the layer's crs, and whether its unit is feet or metres");
    }

    @Test
    void layersOfTwoPlaces() throws IOException {
        SiteOnDisk site = quillfeather();
        Files.copy(
                Path.of("sample-sites/plumb-line-1/building.geojson"),
                site.path("building.geojson"),
                java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        site.replacing("building.geojson", "-76.", "-76.1");

        refused(
                site.path(),
                "building.geojson: its building features lie ",
                " miles from the lots; check the layer's crs");
    }

    @Test
    void longitudeAndLatitudeSwapped() throws IOException {
        refused(
                quillfeather()
                        .layer("outfall.geojson", SiteOnDisk.feature("'id': 'OF-1'", "Point", "[35.3, -76.05]"))
                        .path(),
                "outfall.geojson: feature 1: the position (35.3, -76.05) looks like latitude first");
    }

    @Test
    void aPolygonThatCrossesItself() throws IOException {
        refused(
                quillfeather()
                        .layer(
                                "drive.geojson",
                                SiteOnDisk.feature(
                                        "'id': 'D-1'",
                                        "Polygon",
                                        "[[[-76.05, 35.3], [-76.0499, 35.3001], [-76.0499, 35.3], [-76.05, 35.3001],"
                                                + " [-76.05, 35.3]]]"))
                        .path(),
                "drive.geojson: feature 1: is not a sound shape: self-intersection at x ");
    }

    @Test
    void aQuantityThatCannotBeRead() throws IOException {
        refused(
                quillfeather()
                        .replacing("utility.geojson", "\"depth\": 42", "\"depth\": \"2'6\"")
                        .path(),
                "utility.geojson: feature 1: depth: \"2'6\" is not read as feet and inches; give one number");
    }

    @Test
    void anUnknownUnit() throws IOException {
        refused(
                quillfeather()
                        .replacing("site.yaml", "diameter: in", "diameter: inc")
                        .path(),
                "site.yaml:5:34: unknown unit inc of diameter; use m, cm, mm, ft, ft_us or in");
    }

    @Test
    void anUnknownCounty() throws IOException {
        refused(
                quillfeather()
                        .replacing("site.yaml", "county: saltmeadow", "county: saltmedow")
                        .path(),
                "site.yaml:3:9: county: there is no book saltmedow.yaml; did you mean saltmeadow?");
    }

    @Test
    void aCountyThatClimbsOutOfTheRules() throws IOException {
        refused(
                quillfeather()
                        .replacing("site.yaml", "county: saltmeadow", "county: ../house/stonebrook")
                        .path(),
                "site.yaml:3:9: county: there is no book ../house/stonebrook.yaml");
    }

    @Test
    void noCountyAndNoLotThatWouldTell() throws IOException {
        refused(
                quillfeather()
                        .replacing("site.yaml", "county: saltmeadow", "# none")
                        .replacing("lot.geojson", "\"own\": true", "\"own\": false")
                        .path(),
                "site.yaml: county: says no county; name one of brackenfell, larkmoor, saltmeadow");
    }

    @Test
    void anUnknownHouseOfThePlan() throws IOException {
        refused(
                quillfeather()
                        .replacing("site.yaml", "county: saltmeadow", "county: saltmeadow\nhouse: stonebrok")
                        .path(),
                "site.yaml:4:8: house: there is no book stonebrok.yaml; did you mean stonebrook?");
    }

    @Test
    void anUnknownHouse() throws IOException {
        Ran ran = ran(quillfeather().path(), "--house", "stonebrok");

        assertThat(ran.err()).contains("rules/house: there is no book stonebrok.yaml here; did you mean stonebrook?");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(filesIn(place.resolve("out"))).isEmpty();
    }

    @Test
    void anUnknownKeyInARuleBook() throws IOException {
        Path rules = place.resolve("rules");
        Files.createDirectories(rules.resolve("counties"));
        Files.copy(Path.of("rules/baseline.yaml"), rules.resolve("baseline.yaml"));
        Files.writeString(rules.resolve("counties/saltmeadow.yaml"), """
                title: Saltmeadow (invented)
                builds_on: ../baseline.yaml
                rules:
                  outfall-walk-setback:
                    at_leest: 6 ft
                """);

        Ran ran = ran(quillfeather().path(), "--rules", rules);

        assertThat(ran.err()).contains("counties/saltmeadow.yaml:5:5: ", "at_leest", "at_least?");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(filesIn(place.resolve("out"))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"nowhere", "sample-sites"})
    void aRulesFolderThatIsNone(String folder) throws IOException {
        Ran ran = ran(quillfeather().path(), "--rules", folder);

        assertThat(ran.err()).isEqualTo(folder + ": holds no baseline.yaml; name the folder of rule books\n");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(filesIn(place.resolve("out"))).isEmpty();
    }

    @Test
    void aWrongSystemDoesNotFloodTheTerminal() {
        String[] spots = Stream.generate(() -> SiteOnDisk.feature("", "Point", "[1, 2, 3]"))
                .limit(1000)
                .toArray(String[]::new);

        Ran ran = ran(quillfeather().layer("spot.geojson", spots).path());

        assertThat(ran.err().lines().count()).isEqualTo(2);
        assertThat(ran.err()).endsWith("(the first of 1000 features of the layer that it is so with)\n");
    }

    @Test
    void aThousandFaultsDoNotFloodTheTerminal() {
        String[] trees = Stream.generate(
                        () -> SiteOnDisk.feature("'root_radius': 'wide'", "Point", "[-76.0499, 35.3002]"))
                .limit(1000)
                .toArray(String[]::new);

        Ran ran = ran(quillfeather()
                .replacing("site.yaml", "easement, tree, water_body", "easement, water_body")
                .replacing("site.yaml", "  walk: walk.geojson", "  walk: walk.geojson\n  tree: tree.geojson")
                .layer("tree.geojson", trees)
                .path());

        assertThat(ran.err().lines().count()).isEqualTo(52);
        assertThat(ran.err()).endsWith("  and 950 more\n");
    }

    @Test
    void controlCharactersInFaultsDoNotReachTheTerminal() {
        SiteOnDisk site = quillfeather()
                .replacing(
                        "utility.geojson", "\"depth\": 42", "\"depth\": \"\\u001b]0;owned\\u0007\\u009b31m\\u202e\"");

        Ran ran = ran(site.path());

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("]0;owned").doesNotContain("\u001b", "\u0007", "\u009b", "\u202e");
    }

    @Test
    void ofSeveralSitesOneIsBrokenAndTheOthersAreChecked() throws IOException {
        SiteOnDisk broken = SiteOnDisk.copied("thistledown-3", place).with("pipe.geojson", "{");

        Ran ran = ran("--quiet", quillfeather().path(), broken.path(), harrow().path());

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out().lines())
                .containsExactly(
                        "quillfeather-8: Nothing binding fails and nothing is open.",
                        "harrow-14: Does not meet the rules: 13 binding findings fail, 8 more open.");
        assertThat(ran.err()).startsWith(broken.path() + " could not be checked:\n  pipe.geojson:1:");
        assertThat(place.resolve("out/quillfeather-8/findings.json")).isRegularFile();
        assertThat(place.resolve("out/harrow-14/findings.json")).isRegularFile();
        assertThat(place.resolve("out/thistledown-3")).doesNotExist();
    }
}
