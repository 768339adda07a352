package org.fallrule.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.SiteOnDisk.feature;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.fallrule.SiteOnDisk;
import org.fallrule.document.Fault;
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

    private List<String> sizes(Draft draft, Role role, String attribute) {
        return draft.layers().stream()
                .filter(layer -> layer.role() == role)
                .flatMap(layer -> layer.values().getOrDefault(attribute, List.of()).stream())
                .map(line -> line.key() + " = " + line.value() + (line.isOpen() ? "?" : ""))
                .toList();
    }

    private SiteOnDisk shots(String... codes) {
        StringBuilder csv = new StringBuilder("no,latitude,longitude,elev,code\n");
        for (int i = 0; i < 2 * codes.length; i++) {
            csv.append(i).append(",35.3000").append(i).append(",-76.05,5,");
            csv.append(codes[i % codes.length]).append('\n');
        }
        return folder.with("shots.csv", csv.toString());
    }

    /** Trailing sizes as a training page of surveyors shows them; the other forms are common practice without a source. */
    @Test
    void aSizeThatStandsWithACodeBecomesTheAttribute() {
        shots("GS", "TREE 24\"", "TREE18in", "30\" OAK", "TREE 600mm", "TREE", "WV 2\"", "MH-48", "DS4");

        Draft draft = draft(Map.of("units.elevation", "ft"));

        assertThat(sizes(draft, Role.TREE, "trunk_diameter"))
                .containsExactly(
                        "TREE 24\" = 24 in", "TREE18in = 18 in", "30\" OAK = 30 in", "TREE 600mm = 600 mm", "TREE = ");
        assertThat(asked).doesNotContain("size.shots.csv.tree");
        assertThat(draft.told())
                .contains(
                        "shots.csv, not used: WV 2\", water valve; MH-48, manhole",
                        "shots.csv: what stands with codes, as in DS4, is not used as a size of the layer inlet");
        folder.with("site.yaml", draft.yaml());
        assertThat(SiteReader.read(folder.path()).features(Role.TREE))
                .extracting(tree -> tree.get(org.fallrule.site.Attribute.TRUNK_DIAMETER)
                        .map(size -> Math.round(size.metres() * 1000))
                        .orElse(0L))
                .containsExactly(610L, 457L, 762L, 600L, 0L, 610L, 457L, 762L, 600L, 0L);
    }

    /** A number alone may be inches, centimetres or the number of the tree. */
    @Test
    void aNumberWithoutAUnitIsAskedAbout() {
        shots("GS", "TREE 24", "TREE-18");

        Draft open = draft();
        assertThat(asked).contains("size.shots.csv.tree");
        assertThat(open.layers().get(0).fields())
                .anySatisfy(line -> assertThat(line.key() + line.isOpen()).isEqualTo("trunk_diametertrue"));
        folder.with("site.yaml", open.yaml());
        assertThat(SiteReader.read(folder.path()).features(Role.TREE))
                .hasSize(4)
                .allMatch(tree ->
                        tree.get(org.fallrule.site.Attribute.TRUNK_DIAMETER).isEmpty());

        assertThat(sizes(draft(Map.of("size.shots.csv.tree", "cm")), Role.TREE, "trunk_diameter"))
                .containsExactly("TREE 24 = 24 cm", "TREE-18 = 18 cm");
        assertThat(sizes(draft(Map.of("size.shots.csv.tree", "no such size; not used")), Role.TREE, "trunk_diameter"))
                .isEmpty();
    }

    @Test
    void besideSizesWithUnitsANumberIsOpenByItself() {
        shots("GS", "TREE 24\"", "TREE 18", "TREE 30'");

        // feet with a tree are its height or its crown as well
        assertThat(sizes(draft(), Role.TREE, "trunk_diameter"))
                .containsExactly("TREE 24\" = 24 in", "TREE 18 = ?", "TREE 30' = ?");
    }

    /** The size of a basin is that of its box, its grate or its pipe; or the number is the basin's own. */
    @Test
    void theSizeOfABasinIsAskedAbout() {
        shots("GS", "CB 12", "CB 12X18");

        assertThat(sizes(draft(), Role.INLET, "box_length")).containsExactly("CB 12 = 12", "CB 12X18 = 12");
        Draft answered = draft(Map.of("size.shots.csv.inlet", "in"));
        assertThat(sizes(answered, Role.INLET, "box_length")).containsExactly("CB 12 = 12 in", "CB 12X18 = 12 in");
        assertThat(sizes(answered, Role.INLET, "box_width")).containsExactly("CB 12 = 12 in", "CB 12X18 = 18 in");
    }

    @Test
    void theSizeOfALineIsItsDiameter() {
        folder.layer(
                "cad.geojson",
                feature("'LAYER': 'PIPE 4\\u0022'", "LineString", LINE),
                feature("'LAYER': 'GAS 2\\u0022'", "LineString", LINE),
                feature("'LAYER': 'GAS 1-1/4\\u0022'", "LineString", LINE));

        Draft draft = draft();

        assertThat(sizes(draft, Role.PIPE, "diameter")).containsExactly("PIPE 4\" = 4 in");
        assertThat(sizes(draft, Role.UTILITY, "diameter")).containsExactly("GAS 2\" = 2 in", "GAS 1-1/4\" = 1 1/4 in");
    }

    /** One question for a code, whatever sizes stand with it. */
    @Test
    void aCodeWithTwoMeaningsIsAskedOnceForAllItsSizes() {
        shots("GS", "CO 4", "CO 6");

        Draft draft = draft(Map.of("code.shots.csv.CO", "cleanout"));

        assertThat(asked).filteredOn(key -> key.startsWith("code.")).containsExactly("code.shots.csv.CO");
        assertThat(draft.layers().get(0).where()).isEqualTo("code IN ('CO 4', 'CO 6')");
    }

    @Test
    void theNumbersOfPointsAreNotCodes() {
        folder.layer(
                "export.geojson",
                point("name", "'NAME': 'CB-1', 'STRUCTTYPE': 'CB'"),
                point("name", "'NAME': 'CB-2', 'STRUCTTYPE': 'CB'"),
                point("name", "'NAME': 'DS-1', 'STRUCTTYPE': 'DS'"),
                point("name", "'NAME': 'DS-2', 'STRUCTTYPE': 'CO'"));

        assertThat(draft(Map.of("code.export.geojson.CO", "cleanout")).layers())
                .extracting(DraftLayer::where)
                .containsExactly("STRUCTTYPE IN ('CB', 'DS')", "STRUCTTYPE IN ('CO')");
        assertThat(asked).noneMatch(key -> key.startsWith("size."));
    }

    /** Not every feature of a large file is kept; a code that comes once, at its end, is seen all the same. */
    @Test
    void ofALargeFileWhatComesOnceIsSeen() {
        StringBuilder csv = new StringBuilder("no,latitude,longitude,elev,code\n");
        for (int i = 1; i <= 12_000; i++) {
            csv.append(i).append(",35.3,-76.05,5.1,GS\n");
        }
        folder.with("shots.csv", csv.append("12001,35.3,-76.05,5.1,CB\n").toString());

        Draft draft = draft();

        assertThat(draft.layers())
                .extracting(layer -> layer.role().word() + " " + layer.counted())
                .containsExactly("inlet at least 1 point", "spot at least 10000 points");
        assertThat(draft.told())
                .contains(
                        "shots.csv: of its 12,001 features 10,001 were looked at closely, the first and each that has a"
                                + " value or a way of writing that those before it had not");
    }

    @Test
    void theColorsOfMarksTellTheKindsOfUtilities() {
        folder.layer(
                "marks.geojson",
                feature("'Color': 'RED', 'ql': 'QL-B'", "LineString", LINE),
                feature("'Color': 'Blue', 'ql': 'QLD'", "LineString", LINE),
                feature("'Color': 'WHITE'", "LineString", LINE));

        Draft draft = draft(Map.of("code.marks.geojson.Blue", "water_service utility"));

        assertThat(sizes(draft, Role.UTILITY, "kind")).containsExactly("RED = electric", "Blue = water_service");
        assertThat(sizes(draft, Role.UTILITY, "quality")).containsExactly("QL-B = B", "QLD = D");
        assertThat(draft.told()).contains("marks.geojson, not used: WHITE, proposed excavation");
        folder.with("site.yaml", draft.yaml());
        assertThat(SiteReader.read(folder.path()).features(Role.UTILITY)).hasSize(2);
    }

    /** In a drawing a color is a color. */
    @Test
    void theColorsOfADrawingTellNothing() {
        folder.layer(
                "Entities.geojson",
                feature("'Layer': 'V-UTIL-GAS', 'Color': 'RED'", "LineString", LINE),
                feature("'Layer': 'V-UTIL-ELEC', 'Color': 'YELLOW'", "LineString", LINE));

        assertThat(sizes(draft(), Role.UTILITY, "kind")).containsExactly("V-UTIL-GAS = gas", "V-UTIL-ELEC = electric");
    }

    /** A shapefile cuts names to ten letters (dBASE III). */
    @Test
    void namesThatAShapefileCutAreRead() {
        folder.layer(
                "STORM_GRAV.geojson",
                feature(
                        "'PIPE_DIAME': 4, 'PIPE_MATER': 'SDR35', 'UPSTREAM_I': 7.5, 'DOWNSTREAM': 7.1, 'LIFECYCLES': 'PROP'",
                        "LineString",
                        LINE),
                feature("'PIPE_DIAME': 6, 'LIFECYCLES': 'PROP'", "LineString", LINE));

        Draft draft = draft();

        assertThat(taken(draft)).isEqualTo("pipe likely");
        assertThat(draft.layers().get(0).fields())
                .extracting(line -> line.key() + " " + line.value() + (line.isOpen() ? "?" : ""))
                // inverts, or the names of structures
                .containsExactly(
                        "status LIFECYCLES",
                        "diameter PIPE_DIAME",
                        "material PIPE_MATER",
                        "invert_up ?",
                        "invert_down ?");
    }

    @Test
    void aDrawingInOneLayerIsTakenApartAndWhatIsDrawnOtherwiseIsTold() {
        folder.layer(
                "Entities.geojson",
                feature("'Layer': 'C-STRM-PIPE'", "LineString", LINE),
                feature("'Layer': 'C-BLDG'", "LineString", LINE),
                feature("'Layer': 'V-PROP-LINE'", "LineString", LINE),
                feature("'Layer': 'LOT_LINES'", "LineString", LINE),
                feature("'Layer': 'Defpoints'", "LineString", LINE),
                feature("'Layer': '0'", "LineString", LINE));

        Draft draft = draft();

        assertThat(taken(draft)).isEqualTo("lot likely, pipe likely");
        assertThat(draft.told())
                .contains("Entities.geojson, not used: C-BLDG, building (1 line; wanted polygons); Defpoints, of the"
                        + " drawing itself");
        assertThat(asked).contains("code.Entities.geojson.V-PROP-LINE");
        assertThat(draft.open()).anySatisfy(open -> assertThat(open.question()).contains("stand for? 0 (1)"));
    }

    /** As collectors write them: a byte-order mark, semicolons, decimal commas, Windows line ends, sizes with codes. */
    @Test
    void aTableOfACollectorIsRead() {
        folder.with("job.csv", """
                \uFEFFPoint;Longitude;Latitude;Elevation;Desc
                1;-76,05;35,3;103,20;GS
                2;-76,05;35,3;99,6;OUT
                3;-76,05;35,3;103,9;TREE 24"
                """.replace("\n", "\r\n"));

        Draft draft = draft(Map.of("units.elevation", "ft"));

        assertThat(taken(draft)).isEqualTo("outfall likely, tree likely, spot likely");
        folder.with("site.yaml", draft.yaml());
        assertThat(SiteReader.read(folder.path())
                        .features(Role.SPOT)
                        .get(0)
                        .get(org.fallrule.site.Attribute.ELEVATION)
                        .orElseThrow()
                        .metres())
                .isEqualTo(103.20 * 0.3048);
    }

    @Test
    void whatHoldsAPlanAndIsNotReadIsTold() {
        folder.layer("pipe.geojson", feature("'id': 'P'", "LineString", LINE))
                .with("points.txt", "1,759601.5,2132201.25,103.20,GS\n")
                .with("plan.DXF", "0\nSECTION\n")
                .with("readme.txt", "Nothing to see, 1, 2.")
                .with("letter.pdf", "%PDF");

        assertThat(draft().unreadable())
                .extracting(fault -> fault.where().file())
                .containsExactly("plan.DXF", "points.txt");
    }

    @Test
    void aTableWithoutAFirstLineOfNamesIsToldWhatToWrite() {
        folder.with("PNEZD.csv", "1,759601.5,2132201.25,103.20,GS\n");

        assertThat(draft().unreadable())
                .singleElement()
                .satisfies(fault -> assertThat(fault.toString())
                        .startsWith(
                                "PNEZD.csv:1: holds numbers where the columns' names are wanted; write a first line"));
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

    @Test
    void filesBeyondThoseLookedAtAreTold() {
        folder.layer("a.geojson");
        for (int i = 0; i < 501; i++) {
            folder.with(String.format(Locale.ROOT, "note-%03d.txt", i), "");
        }

        assertThat(draft().unreadable())
                .extracting(Fault::toString)
                .contains("Lane 1 – Süd: holds 502 files, and only 500 are looked at; not looked at: note-499.txt and 1"
                        + " more. Leave in the folder what belongs to the lot");
    }

    @Test
    void columnsOfWhichNothingIsReadAreToldAndThoseOfPeopleAreNot() {
        folder.layer(
                "pipe.geojson",
                SiteOnDisk.feature(
                        "'id': 'P-1', 'diam_in': 4, 'crew': 'B', 'owner_name': 'A. Nobody', 'remark': 'x'",
                        "LineString",
                        "[[-76.05, 35.3], [-76.051, 35.3]]"));

        Draft draft = draft();

        assertThat(draft.told()).contains("pipe.geojson: not used are the columns crew, remark");
        assertThat(draft.yaml() + draft.told()).doesNotContain("owner_name", "Nobody");
    }

    @Test
    void aLotWithoutWalkOrDriveIsAskedWhetherThereIsNone() {
        folder.layer(
                "pipe.geojson", SiteOnDisk.feature("'id': 'P-1'", "LineString", "[[-76.05, 35.3], [-76.051, 35.3]]"));

        assertThat(draft().absent().remark()).contains("walk, drive, septic");
        assertThat(draft(Map.of("absent", "drive, septic")).yaml()).contains("absent: [drive, septic]");
    }

    @Test
    void theTwoKindsOfFeetAreExplainedOnceWhereTheyAreAsked() {
        folder.layer(
                "pipe.geojson",
                SiteOnDisk.feature(
                        "'id': 'P-1', 'diameter': 4, 'invert_up': 7",
                        "LineString",
                        "[[-76.05, 35.3], [-76.051, 35.3]]"));
        List<String> questions = new ArrayList<>();

        Draft draft = Intake.draft(folder.path(), Optional.empty(), question -> {
            questions.add(question.says());
            return Optional.empty();
        });

        assertThat(questions)
                .filteredOn(says -> says.startsWith("the unit of"))
                .hasSize(2)
                .allMatch(says -> says.contains("(ft_us is the US survey foot)"));
        assertThat(draft.told())
                .filteredOn(says -> says.contains("1200/3937 m"))
                .hasSize(1);
        assertThat(draft.yaml()).contains("US survey foot");
    }
}
