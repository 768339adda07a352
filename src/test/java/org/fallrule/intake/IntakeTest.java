package org.fallrule.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.SiteOnDisk.feature;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.SiteOnDisk;
import org.fallrule.document.Node;
import org.fallrule.document.Yaml;
import org.fallrule.reader.SiteReader;
import org.fallrule.site.Role;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What loose files are taken for, and what is asked. */
class IntakeTest {
    private static final String HERE = "[-76.05, 35.3]";
    private static final String LINE = "[[-76.05, 35.3], [-76.0499, 35.3]]";
    private static final String AREA = "[[[-76.05, 35.3], [-76.0499, 35.3], [-76.0499, 35.301], [-76.05, 35.3]]]";

    @TempDir
    Path place;

    private final List<String> asked = new ArrayList<>();
    private SiteOnDisk folder;

    @BeforeEach
    void aFolder() {
        folder = SiteOnDisk.in(place, "Lane 1 – Süd");
    }

    private Draft draft(Map<String, String> answers) {
        asked.clear();
        return Intake.draft(folder.path(), Optional.empty(), question -> {
            asked.add(question.key());
            return Optional.ofNullable(answers.get(question.key())).flatMap(question::read);
        });
    }

    private Draft draft() {
        return draft(Map.of());
    }

    private static String taken(Draft draft) {
        return draft.layers().stream()
                .map(layer -> layer.role().word() + " " + layer.sureness().spoken())
                .reduce((one, other) -> one + ", " + other)
                .orElse("-");
    }

    @ParameterizedTest
    @CsvSource({
        "pipe.geojson, LineString, pipe certain",
        "LOTS.GEOJSON, Polygon, lot certain",
        "TaxParcels.geojson, Polygon, lot likely",
        "sidewalks 2026.geojson, Polygon, walk likely",
        "ESMT.geojson, Polygon, easement likely",
        "drn_area.geojson, Polygon, drainage_area likely",
        "Stream.geojson, LineString, water_body likely",
        "soils.geojson, Polygon, soil certain",
        "GAS.geojson, LineString, utility likely",
        // a form that does not fit its name
        "parcels.geojson, Point, -",
        // names that may stand for two things: nothing is taken
        "bndy.geojson, Polygon, -",
        "ROW.geojson, Polygon, -",
        "storm.geojson, LineString, -",
        "export_7.geojson, Polygon, -",
    })
    void aFileIsTakenForWhatItsNameAndGeometrySay(String file, String form, String taken) {
        String at = form.equals("Point") ? HERE : form.equals("LineString") ? LINE : AREA;
        folder.layer(file, feature("'id': 'A'", form, at));

        Draft draft = draft();

        assertThat(taken(draft)).isEqualTo(taken);
        assertThat(asked.contains("role." + file)).isEqualTo(taken.equals("-"));
    }

    @Test
    void columnsTellWhatTheNameLeavesOpen() {
        folder.layer("storm.geojson", feature("'US_INV': 7, 'DS_INV': 6, 'DIA': 4, 'OWNER': 'x'", "LineString", LINE));

        assertThat(taken(draft())).isEqualTo("pipe likely");
    }

    /** The codes that must be asked about, never guessed: each has two meanings in the field. */
    @ParameterizedTest
    @ValueSource(strings = {"BC", "WM", "TP", "SW", "IP", "EP", "CO", "BW", "FL", "DI", "GV", "SD", "FH", "RW"})
    void aCodeWithTwoMeaningsIsAsked(String code) {
        folder.with("shots.csv", "no,northing,easting,elev,code\n1,10,20,5,GS\n2,11,21,5,GS\n3,12,22,5," + code + "\n");

        Draft draft = draft();

        assertThat(asked).contains("code.shots.csv." + code);
        assertThat(draft.layers()).singleElement().satisfies(layer -> {
            assertThat(layer.role()).isEqualTo(Role.SPOT);
            assertThat(layer.where()).isEqualTo("code IN ('GS')");
        });
        assertThat(draft.open()).anySatisfy(open -> assertThat(open.question()).contains("the code " + code));
    }

    @Test
    void aTableOfShotsBecomesSeveralLayers() {
        folder.with("shots.csv", """
                Point No,Northing,Easting,Elev_ft,Field Code
                1,10,20,5.1,GS
                2,11,21,5.2,GND
                3,12,22,5.3,DS
                4,13,23,5.4,CB
                5,14,24,5.5,CO
                6,15,25,5.6,GM
                7,16,26,5.7,O'HARA
                """);

        Draft draft = draft(Map.of("code.shots.csv.CO", "cleanout", "crs", "2264"));

        assertThat(draft.layers()).extracting(DraftLayer::role).containsExactly(Role.INLET, Role.CLEANOUT, Role.SPOT);
        assertThat(draft.layers().get(0).where()).isEqualTo("\"Field Code\" IN ('DS', 'CB')");
        assertThat(draft.layers().get(0).values().get("kind"))
                .extracting(Statement::key, Statement::value)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("DS", "downspout"),
                        org.assertj.core.groups.Tuple.tuple("CB", "basin"));
        assertThat(draft.told()).contains("shots.csv, not used: GM, gas meter");
        assertThat(draft.open()).anySatisfy(open -> assertThat(open.question()).contains("O'HARA (1)"));
    }

    /** A point that is not on the ground must not become ground because its file is called topo. */
    @Test
    void codesThatAreNotKnownDoNotBecomeGround() {
        folder.with("topo.csv", "x,y,z,code\n1,1,5,GS\n2,2,5,ZZ\n3,3,5,ZZ\n4,4,5,QQ\n");

        Draft draft = draft();

        assertThat(draft.layers())
                .singleElement()
                .satisfies(layer -> assertThat(layer.where()).isEqualTo("code IN ('GS')"));
        assertThat(draft.open()).anySatisfy(open -> assertThat(open.question()).contains("ZZ (2), QQ (1)"));
    }

    @Test
    void theLayersOfADrawingAreToldApartByTheirNames() {
        folder.layer(
                "cad.geojson",
                feature("'LAYER': 'C-STRM-PIPE', 'DIA': 4", "LineString", LINE),
                feature("'LAYER': 'V-UTIL-GAS'", "LineString", LINE),
                feature("'LAYER': 'V-WATR'", "LineString", LINE));

        Draft draft = draft();

        assertThat(taken(draft)).isEqualTo("pipe likely, utility likely");
        assertThat(draft.layers().get(1).values().get("kind")).contains(Statement.likely("V-UTIL-GAS", "gas", ""));
        // a water line, main or service, or a stream
        assertThat(asked).contains("code.cad.geojson.V-WATR");
    }

    @Test
    void twoColumnsThatCouldBothBeItAreAsked() {
        folder.layer("pipe.geojson", feature("'DIA': 4, 'PIPE_SIZE': 6, 'id': 'P'", "LineString", LINE));

        Draft draft = draft();

        assertThat(draft.layers().get(0).fields())
                .singleElement()
                .isEqualTo(Statement.open("diameter", "DIA (4), or PIPE_SIZE (6)?"));
        assertThat(draft(Map.of("column.pipe.geojson.pipe.diameter", "2"))
                        .layers()
                        .get(0)
                        .fields())
                .containsExactly(Statement.certain("diameter", "PIPE_SIZE"));
    }

    @ParameterizedTest
    @CsvSource({"DIA, units.diameter", "DIA_IN, -", "diam_mm, -"})
    void aUnitIsAskedUnlessTheColumnsNameCarriesIt(String column, String question) {
        folder.layer("pipe.geojson", feature("'" + column + "': 4", "LineString", LINE));
        draft();

        assertThat(asked.contains("units.diameter")).isEqualTo(!question.equals("-"));
    }

    @Test
    void aNumberThatCarriesItsUnitIsNotAskedAbout() {
        folder.layer("pipe.geojson", feature("'DIA': '4 in'", "LineString", LINE));
        draft();

        assertThat(asked).doesNotContain("units.diameter");
    }

    @Test
    void aFileWithoutASystemIsAskedForIt() {
        folder.with("spot.csv", "x,y,z\n2130000,760000,5\n");
        draft();

        assertThat(asked).contains("crs");
        assertThat(draft(Map.of("crs", "nonsense")).crs().orElseThrow().isOpen())
                .isTrue();
        assertThat(draft(Map.of("crs", "3734")).crs().orElseThrow().value()).isEqualTo("EPSG:3734");
    }

    /** Whose lot it is is nobody's business here. */
    @Test
    void ownersAreNeitherReadNorPrinted() {
        folder.layer(
                "parcels.geojson",
                feature(
                        "'APN': '1', 'OWNER_NAME': 'Quill', 'MAILADDR1': 'Quill', 'OwnName2': 'Quill'",
                        "Polygon",
                        AREA),
                feature("'APN': '2', 'OWNER_NAME': 'Quill'", "Polygon", AREA));

        Draft draft = draft();

        assertThat(draft.yaml()).doesNotContain("Quill").doesNotContain("OWNER_NAME");
        assertThat(draft.toString()).doesNotContain("Quill");
        assertThat(draft.told()).contains("parcels.geojson: 3 columns that may name people were not looked into");
        assertThat(asked).contains("own.parcels.geojson");
    }

    @Test
    void theOwnLotIsMarkedByItsId() {
        folder.layer("parcels.geojson", feature("'APN': '1'", "Polygon", AREA), feature("'APN': '2'", "Polygon", AREA));

        folder.with("site.yaml", draft(Map.of("own.parcels.geojson", "2")).yaml());

        assertThat(SiteReader.read(folder.path()).ownLot().orElseThrow().id()).isEqualTo("2");
    }

    @Test
    void whatCannotBeReadIsToldAndTheRestIsTaken() {
        folder.with("broken.shp", "no shapefile")
                .with("broken.gpkg", "no GeoPackage")
                .with("broken.zip", "no archive")
                .with("broken.tif", "no raster")
                .with("package.json", "{}")
                .with("notes.txt", "not looked at")
                .layer("pipe.geojson", feature("'id': 'P'", "LineString", LINE));

        Draft draft = draft();

        assertThat(taken(draft)).isEqualTo("pipe certain");
        assertThat(draft.unreadable())
                .extracting(fault -> fault.where().file())
                .containsExactly("broken.gpkg", "broken.shp", "broken.tif", "broken.zip", "package.json");
    }

    @Test
    void utilitiesComeInPartsAndAnythingElseFromOneFile() {
        folder.layer("gas lines.geojson", feature("'id': 'G'", "LineString", LINE))
                .layer("sewer.geojson", feature("'id': 'S'", "LineString", LINE))
                .layer("lot_survey.geojson", feature("'id': 'L'", "Polygon", AREA))
                .layer("parcels.geojson", feature("'id': 'L'", "Polygon", AREA));

        Draft draft = draft();

        assertThat(taken(draft)).isEqualTo("utility likely, utility likely");
        assertThat(asked).contains("which.lot");
        folder.with("site.yaml", draft.yaml());
        assertThat(SiteReader.read(folder.path()).features(Role.UTILITY))
                .extracting(line -> line.get(org.fallrule.site.Attribute.KIND).orElse("-"))
                .containsExactly("gas", "sanitary");
    }

    /** Names that mean something in YAML, JSON or in conditions come through unharmed. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "yes",
                "a: b",
                "it's",
                "say \"hi\"",
                "# no",
                "{x}",
                "007",
                "back\\slash",
                "Ünïcode 管",
                " x ",
                "a\nb: c",
                "\ttab"
            })
    void anyNameOfAColumnOrValueIsWrittenSoThatItIsReadAgain(String name) {
        folder.layer(
                "inlet points.geojson",
                point(name, "'c': 'CB', 'NAME': 'x'"),
                point(name, "'c': 'CB'"),
                point(name, "'c': 'CB', 'NAMEc': 'CB'"),
                point(name, "'c': 'NAME', 'NAMEc': 'GS'"));

        String yaml = draft().yaml();

        assertThat(Yaml.parse(yaml, "site.yaml").get("layers")).isPresent();
        folder.with("site.yaml", yaml);
        assertThat(SiteReader.read(folder.path()).features(Role.INLET)).hasSizeBetween(3, 4);
    }

    private static String point(String name, String properties) {
        String escaped = name.replace("\\", "\\\\")
                .replace("\"", "\\\"")
                .replace("\n", "\\n")
                .replace("\t", "\\t");
        return feature(properties, "Point", HERE).replace("NAME", escaped);
    }

    @ParameterizedTest
    @ValueSource(strings = {"CODE", "Field Code", "it's", "a-b", "select", "Ünï", "a.b", "IN"})
    void aConditionOnAnyColumnTakesTheFeaturesThatItMeans(String column) {
        folder.layer(
                "export.geojson",
                point(column, "'NAME': 'CB'"),
                point(column, "'NAME': 'GS'"),
                point(column, "'NAME': 'GS'"));

        folder.with("site.yaml", draft(Map.of("units.elevation", "ft")).yaml());

        assertThat(SiteReader.read(folder.path()).features(Role.INLET)).hasSize(1);
        assertThat(SiteReader.read(folder.path()).features(Role.SPOT)).hasSize(2);
    }

    @Test
    void everyLineOfTheDraftWithAQuestionIsInYamlThatCanBeRead() {
        folder.layer("bndy.geojson", feature("'id': 'A'", "Polygon", AREA));

        Node.Mapping read = Yaml.parse(draft().yaml(), "site.yaml");

        assertThat(read.entries())
                .containsKeys("site", "datum", "survey", "absent")
                .doesNotContainKey("layers");
        assertThat(draft().yaml()).contains("# ask: what is bndy.geojson (1 polygon)?", "#   lot: bndy.geojson");
    }
}
