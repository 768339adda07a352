package org.fallrule.reader.geopackage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.fallrule.document.Fault;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.layer.RawFeature;
import org.fallrule.reader.layer.RawLayer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The file as a whole: what OGC 12-128 (GeoPackage Encoding Standard 1.3), clauses 1.1 and 2.1, asks of it, and what comes instead. */
class GeoPackageFileTest {
    private static final byte[] LINE = Made.blob(Made.wkb("LINESTRING (0 0, 3 4)"));

    @TempDir
    Path folder;

    private Made made() throws SQLException {
        return Made.in(folder, "plan.gpkg");
    }

    private static void refused(Made made, String says) {
        assertThatThrownBy(made::read).isInstanceOf(UnusableInput.class).hasMessage("plan.gpkg: " + says);
    }

    private void bytesRefused(byte[] bytes, String says) throws IOException {
        Path file = Files.write(folder.resolve("bytes.gpkg"), bytes);
        assertThatThrownBy(() -> GeoPackageReader.read(file, "plan.gpkg", Optional.empty()))
                .isInstanceOf(UnusableInput.class)
                .hasMessageStartingWith("plan.gpkg: " + says);
    }

    @Test
    void theLeastGeoPackageIsReadWithoutANote() throws SQLException {
        RawLayer layer = made().drain(LINE).read();

        assertThat(layer.crs()).contains("EPSG:2264");
        assertThat(layer.columns()).containsExactly("fid", "mark");
        assertThat(layer.features())
                .extracting(feature -> feature.geometry().orElseThrow().getLength())
                .containsExactly(5.0);
        assertThat(layer.notes()).isEmpty();
    }

    /** Requirement 1. */
    @Test
    void whatIsNoSqliteFileIsRefused() throws IOException {
        bytesRefused(new byte[0], "is empty; wanted a GeoPackage");
        bytesRefused("SQLite format 2".getBytes(StandardCharsets.US_ASCII), "is not a GeoPackage: it does not begin");
        bytesRefused("{\"type\": \"FeatureCollection\"}".getBytes(StandardCharsets.US_ASCII), "is not a GeoPackage");
        bytesRefused("SQLite format 3\0".getBytes(StandardCharsets.US_ASCII), "is cut short: it is 16 bytes long");
    }

    /** Requirement 2; editions before 1.2 wrote GP10, GP11. */
    @Test
    void theApplicationIdIsNotedWhereItIsAnothers() throws SQLException {
        assertThat(made().sql("PRAGMA application_id = 0x47503130").read().notes())
                .isEmpty();
        Made other = Made.in(folder, "other.gpkg").sql("PRAGMA application_id = 7");
        assertThat(other.read().notes())
                .extracting(Fault::toString)
                .containsExactly("plan.gpkg: its application_id is 0x00000007; wanted 0x47504B47 (GPKG); read as a"
                        + " GeoPackage, as it has the tables of one");
    }

    @Test
    void anotherSqliteFileIsRefusedByWhatItLacks() throws SQLException {
        refused(
                made().sql("DROP TABLE gpkg_contents"),
                "is an SQLite file but not a GeoPackage: it has no table gpkg_contents; export the layers as GeoPackage");
    }

    @Test
    void aFileCutShortIsRefusedByItsLength() throws IOException, SQLException {
        byte[] whole = Files.readAllBytes(made().drain(LINE).file);

        bytesRefused(
                Arrays.copyOf(whole, whole.length - 1000),
                "is cut short: it is " + (whole.length - 1000) + " bytes long where its header says " + whole.length);
    }

    @Test
    void severalTablesAreAskedAbout() throws SQLException {
        Made made = made().sql("INSERT INTO gpkg_contents VALUES ('lots', 'features', 2264), ('map', 'tiles', 2264)");

        refused(
                made,
                "holds 2 tables: drains, lots; say in site.yaml which one it is, such as {file: plan.gpkg, table: drains}");
        assertThat(made.drain(LINE).read("Drains").features()).hasSize(1);
        assertThatThrownBy(() -> made.read("drain"))
                .hasMessage("plan.gpkg: has no table drain; did you mean drains? It has drains, lots");
        assertThatThrownBy(() -> made.read("lots"))
                .hasMessage("plan.gpkg: lists the table lots, but it, or its row in gpkg_geometry_columns, is missing;"
                        + " export the layer again");
    }

    @Test
    void aFileOfTilesHasNoLayer() throws SQLException {
        refused(
                made().sql("UPDATE gpkg_contents SET data_type = 'tiles'"),
                "holds no layer of features, only tiles; export the layer into it");
    }

    /** SQLite tells capitals from small letters in ASCII alone (SQLite, Built-in Scalar Functions, lower). */
    @Test
    void aTableWhoseNameHasOtherLettersThanAsciiIsRead() throws SQLException {
        Made made = made().sql(
                        "ALTER TABLE drains RENAME TO \"RÖHREN\"",
                        "UPDATE gpkg_contents SET table_name = 'RÖHREN'",
                        "UPDATE gpkg_geometry_columns SET table_name = 'RÖHREN'");

        assertThat(made.read("röhren").columns()).containsExactly("fid", "mark");
    }

    /** Requirement 22 allows one geometry column; spatial databases that export to GeoPackages have tables of several. */
    @Test
    void aTableOfTwoGeometryColumnsIsReadByTheOneThatIsNamed() throws SQLException {
        Made made = made().sql(
                        "ALTER TABLE drains ADD COLUMN axis BLOB",
                        "INSERT INTO gpkg_geometry_columns VALUES ('drains', 'axis', 'LINESTRING', 2264, 0, 0)")
                .drain(Made.blob(Made.wkb("POINT (1 2)")));

        refused(
                made,
                "the table drains has the geometry columns geom, axis; say in site.yaml which one it is, such as table:"
                        + " drains.geom");
        assertThat(made.read("Drains.GEOM").features().get(0).geometry()).contains(Made.geometry("POINT (1 2)"));
        assertThat(made.read("drains.axis").features().get(0).geometry()).isEmpty();
        assertThatThrownBy(() -> made.read("drains.edge")).hasMessageContaining("has the geometry columns geom, axis");
        assertThatThrownBy(() -> made.read("pipes.axis")).hasMessageContaining("has no table pipes.axis");
    }

    /** Requirement 11: -1 and 0 stand for systems that are not known. */
    @Test
    void undefinedSystemsAreNone() throws SQLException {
        Made made = made();
        assertThat(made.sql("UPDATE gpkg_geometry_columns SET srs_id = -1")
                        .read()
                        .crs())
                .isEmpty();
        assertThat(made.sql("UPDATE gpkg_geometry_columns SET srs_id = 0")
                        .read()
                        .crs())
                .isEmpty();
    }

    @Test
    void aSystemOfAnotherNumberIsReadByOrganizationOrDefinition() throws SQLException {
        Made made = made().sql(
                        "INSERT INTO gpkg_spatial_ref_sys VALUES ('zone', 99, 'EPSG', 32119, 'x', NULL), ('own', 100001,"
                                + " 'EPSG', 100001, 'PROJCS[\"own\"]', NULL), ('bare', 100002, 'NONE', 2, 'undefined', NULL)",
                        "UPDATE gpkg_geometry_columns SET srs_id = 99");
        assertThat(made.read().crs()).contains("EPSG:32119");
        made.sql("UPDATE gpkg_geometry_columns SET srs_id = 100001");
        assertThat(made.read().crs()).contains("PROJCS[\"own\"]");
        made.sql("UPDATE gpkg_geometry_columns SET srs_id = 100002");
        assertThat(made.read().crs()).isEmpty();
        assertThat(made.read().notes())
                .extracting(Fault::says)
                .containsExactly("its reference system NONE:2 has no definition in the file; name it in site.yaml, such"
                        + " as crs: EPSG:2264");
        made.sql(
                "ALTER TABLE gpkg_spatial_ref_sys ADD COLUMN definition_12_063 TEXT",
                "UPDATE gpkg_spatial_ref_sys SET definition_12_063 = 'PROJCRS[\"second edition\"]' WHERE srs_id = 100002");
        assertThat(made.read().crs()).contains("PROJCRS[\"second edition\"]");
        made.sql("UPDATE gpkg_geometry_columns SET srs_id = 5");
        refused(
                made,
                "its reference system 5 is not in gpkg_spatial_ref_sys; assign the layer its system and export it again");
    }

    /** Clause 1.1.1, table of data types, and its warning that readers must expect other values. */
    @Test
    void valuesAreOfTheirColumnsTypeOrNoted() throws SQLException {
        Made made = made().sql(
                        "ALTER TABLE drains ADD COLUMN laid BOOLEAN",
                        "ALTER TABLE drains ADD COLUMN surveyed DATE",
                        "ALTER TABLE drains ADD COLUMN depth DOUBLE",
                        "ALTER TABLE drains ADD COLUMN photo BLOB",
                        "ALTER TABLE drains ADD COLUMN size MEDIUMINT",
                        "INSERT INTO drains VALUES (4, NULL, 'a', 1, '2024-02-29', 3, x'00', 12)",
                        "INSERT INTO drains VALUES (9, NULL, x'01', 7, 'May', 9e999, x'00', '12 in')");

        RawLayer layer = made.read();

        RawFeature good = layer.features().get(0);
        assertThat(good.label()).isEqualTo("feature 4");
        assertThat(good.columns())
                .containsEntry("laid", true)
                .containsEntry("surveyed", LocalDate.of(2024, 2, 29))
                .containsEntry("depth", 3.0)
                .containsEntry("size", 12L)
                .doesNotContainKey("photo");
        assertThat(layer.features().get(1).columns())
                .containsEntry("laid", 7L)
                .containsEntry("surveyed", "May")
                .containsEntry("size", "12 in")
                .doesNotContainKeys("depth", "mark");
        assertThat(layer.notes())
                .extracting(Fault::toString)
                .containsExactly(
                        "plan.gpkg: photo: is a column of type BLOB; it was left out",
                        "plan.gpkg: feature 9: mark: holds bytes where TEXT is wanted; not used",
                        "plan.gpkg: feature 9: laid: is 7 where 0 or 1 is wanted; read as a number",
                        "plan.gpkg: feature 9: surveyed: \"May\" is no date such as 2024-05-31; read as text",
                        "plan.gpkg: feature 9: depth: is infinite; wanted a number; not used",
                        "plan.gpkg: feature 9: size: \"12 in\" is text in a column of type MEDIUMINT; read as text");
    }

    /** SQLite, Write-Ahead Logging, section 2: until a checkpoint, changes stand only in the file beside it. */
    @Test
    void changesThatWaitInAWalFileAreReadAndNothingIsWritten() throws SQLException, IOException {
        Made made = made();
        try (Connection desktop = made.connect();
                Statement statement = desktop.createStatement()) {
            statement.execute("PRAGMA journal_mode = WAL");
            statement.execute("PRAGMA wal_autocheckpoint = 0");
            Made.insert(desktop, LINE);
            List<String> before = state();

            assertThat(made.read().features()).hasSize(1);

            assertThat(state()).isEqualTo(before);
            assertThat(before).anyMatch(name -> name.startsWith("plan.gpkg-wal"));
        }
    }

    @Test
    void aFileLeftInWalModeIsReadFromAFolderThatCannotBeWrittenTo() throws SQLException, IOException {
        Made made = made().sql("PRAGMA journal_mode = WAL").drain(LINE);
        Files.deleteIfExists(folder.resolve("plan.gpkg-wal"));
        Files.deleteIfExists(folder.resolve("plan.gpkg-shm"));
        List<String> before = state();

        assertThat(made.read().features()).hasSize(1);

        assertThat(state()).isEqualTo(before).hasSize(1);
    }

    @Test
    void aNameOfManySignsIsStillAPath() throws SQLException {
        assertThat(Made.in(folder, "a plan? #1 50%20ä.gpkg").drain(LINE).read().features())
                .hasSize(1);
    }

    @Test
    void aViewThatComputesWithoutEndIsStopped() throws SQLException {
        refused(
                made().sql(
                                "DROP TABLE drains",
                                "CREATE VIEW drains AS WITH RECURSIVE n(fid) AS (SELECT 1 UNION ALL SELECT fid + 1 FROM"
                                        + " n WHERE fid > 0) SELECT max(fid) AS fid, NULL AS geom FROM n"),
                "takes more computing than a file of its size can need; export the layer as a plain table, not a view");
    }

    @Test
    void aViewThatIsStoppedTakesNoOtherTableOfTheFileWithIt() throws SQLException {
        Made made = made().drain(LINE)
                .sql(
                        "CREATE VIEW endless AS WITH RECURSIVE n(fid) AS (SELECT 1 UNION ALL SELECT fid + 1 FROM"
                                + " n WHERE fid > 0) SELECT max(fid) AS fid, NULL AS geom FROM n",
                        "INSERT INTO gpkg_contents VALUES ('endless', 'features', 2264)",
                        "INSERT INTO gpkg_geometry_columns VALUES ('endless', 'geom', 'GEOMETRY', 2264, 2, 2)");
        try (GeoPackageReader reader = new GeoPackageReader()) {
            for (int round = 0; round < 2; round++) {
                assertThatThrownBy(() -> reader.layer(made.file, "plan.gpkg/endless", Optional.of("endless")))
                        .hasMessageContaining("takes more computing");
                assertThat(reader.layer(made.file, "plan.gpkg/drains", Optional.of("drains"))
                                .features())
                        .hasSize(1);
            }
        }
    }

    /** Whoever saves the file anew while it is read does not mix two states of the plan. */
    @Test
    void allTablesAreReadFromTheFileThatWasOpenedFirst() throws SQLException, IOException {
        Made made = made().drain(LINE);
        Made later = Made.in(folder, "later.gpkg").drain(LINE).drain(LINE);
        try (GeoPackageReader reader = new GeoPackageReader()) {
            assertThat(reader.layer(made.file, "plan.gpkg", Optional.empty()).features())
                    .hasSize(1);
            Files.move(later.file, made.file, StandardCopyOption.REPLACE_EXISTING);
            assertThat(reader.layer(made.file, "plan.gpkg", Optional.empty()).features())
                    .hasSize(1);
        }
        assertThat(made.read().features()).hasSize(2);
    }

    @Test
    void aViewThatInventsRowsWithoutEndIsStoppedBeforeTheyFillTheMemory() throws SQLException {
        refused(
                made().sql(
                                "DROP TABLE drains",
                                "CREATE VIEW drains AS WITH RECURSIVE n(fid) AS (SELECT 1 UNION ALL SELECT fid + 1 FROM n)"
                                        + " SELECT fid, NULL AS geom FROM n"),
                "gives more rows than a file of its size can hold; export the layer as a plain table, not a view");
    }

    @Test
    void aValueOfAGigabyteIsRefused() throws SQLException {
        refused(
                made().sql("DROP TABLE drains", "CREATE VIEW drains AS SELECT 1 AS fid, zeroblob(900000000) AS geom"),
                "holds a value of more than 64 MiB, which no feature of a site needs; split the feature or leave the"
                        + " column out");
    }

    @Test
    void aBrokenGeometryIsNamedByItsFeatureAndAllAreTold() throws SQLException {
        Made made = made().drain(new byte[] {1}).drain(LINE).sql("INSERT INTO drains VALUES (8, 'text', NULL)");
        assertThatThrownBy(made::read)
                .isInstanceOfSatisfying(
                        UnusableInput.class,
                        e -> assertThat(e.faults())
                                .extracting(Fault::toString)
                                .containsExactly(
                                        "plan.gpkg: feature 1: its geometry does not begin with GP and a header of 8 bytes; wanted"
                                                + " a GeoPackage geometry; export the layer again",
                                        "plan.gpkg: feature 8: its geometry is text or a number; wanted a GeoPackage geometry"));
    }

    /** No outcome but a layer or a message, whatever the bytes. */
    @Test
    void bytesChangedAtRandomNeverCrash() throws IOException {
        byte[] whole = Files.readAllBytes(GeoPackagesWrittenByGdalTest.fixture("gaps.gpkg"));
        Random random = new Random(20240229);
        Path file = folder.resolve("changed.gpkg");
        for (int round = 0; round < 400; round++) {
            byte[] changed = whole.clone();
            for (int times = random.nextInt(40) + 1; times > 0; times--) {
                changed[random.nextInt(changed.length)] = (byte) random.nextInt(256);
            }
            Files.write(
                    file, random.nextInt(5) == 0 ? Arrays.copyOf(changed, random.nextInt(changed.length)) : changed);
            try {
                assertThat(GeoPackageReader.read(file, "changed.gpkg", Optional.of("drains"))
                                .features())
                        .hasSizeLessThan(10_000);
            } catch (UnusableInput told) {
                assertThat(told.faults()).isNotEmpty();
            }
        }
    }

    private List<String> state() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName() + " " + file.toFile().length() + " "
                            + file.toFile().lastModified())
                    .sorted()
                    .toList();
        }
    }
}
