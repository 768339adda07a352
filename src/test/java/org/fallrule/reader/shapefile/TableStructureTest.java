package org.fallrule.reader.shapefile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.reader.shapefile.Content.line;
import static org.fallrule.reader.shapefile.Content.point;

import java.nio.file.Path;
import java.util.Arrays;
import org.fallrule.reader.layer.RawFeature;
import org.fallrule.reader.layer.RawLayer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TableStructureTest {
    @TempDir
    Path folder = Path.of("");

    private Made made = new Made(folder);

    @BeforeEach
    void startInTheFolder() {
        made = new Made(folder);
    }

    private static Table marks() {
        return Table.of("mark", 'C', 3, 0);
    }

    @Test
    void deletedRowsAreLeftOutWithTheirShapesAndTheOthersKeepTheirNumbers() {
        byte[] broken = point(Double.NaN, 0);
        byte[] shapes = Made.mainFile(1, point(1, 1), broken, point(3, 3));
        Table table = marks().row("A").markedRow("*B").row("C");

        RawLayer layer = made.with("marks.shp", shapes)
                .with("marks.dbf", table.toArray())
                .read();

        assertThat(layer.features()).extracting(RawFeature::label).containsExactly("feature 1", "feature 3");
        assertThat(layer.features().get(1).columns()).containsEntry("mark", "C");
        assertThat(layer.features().get(1).geometry().orElseThrow().toText()).isEqualTo("POINT (3 3)");
        assertThat(layer.notes()).isEmpty();
    }

    @Test
    void anUnknownDeletionMarkIsNotedAndTheRowKept() {
        made.table(1, marks().markedRow("xA"));

        assertThat(made.read().features()).hasSize(1);
        assertThat(made.notes())
                .containsExactly("in/marks.dbf: feature 1: its row begins with the byte 120; wanted a blank, "
                        + "or * for a deleted row; read as a row that is not deleted");
    }

    @Test
    void moreOrFewerRowsThanShapesAreRefused() {
        assertThat(made.table(2, marks().row("A")).refusal())
                .containsExactly(
                        "in/marks.dbf: has 1 rows where in/marks.shp has 2 shapes, so attributes may belong to "
                                + "other shapes; wanted one row for each; export the layer again");
        assertThat(made.table(1, marks().row("A").row("B")).refusal())
                .containsExactly(
                        "in/marks.dbf: has 2 rows where in/marks.shp has 1 shapes, so attributes may belong to "
                                + "other shapes; wanted one row for each; export the layer again");
    }

    @Test
    void moreRowsThanTheFileHoldsAreRefused() {
        assertThat(made.table(2, marks().row("A").claimingRows(2)).refusal())
                .containsExactly("in/marks.dbf: claims 2 rows of 4 bytes, but only 5 bytes stand behind its header; "
                        + "copy or export the file again");
        assertThat(made.table(1, marks().row("A").claimingRows(Integer.MAX_VALUE))
                        .refusal())
                .containsExactly("in/marks.dbf: claims 2147483647 rows of 4 bytes, but only 5 bytes stand behind its "
                        + "header; copy or export the file again");
    }

    @Test
    void bytesBehindTheLastRowAreNoted() {
        byte[] table = marks().row("A").toArray();
        made.table(1, marks().row("A")).with("marks.dbf", Arrays.copyOf(table, table.length + 8));

        assertThat(made.read().features()).hasSize(1);
        assertThat(made.notes())
                .containsExactly("in/marks.dbf: 9 bytes stand behind its 1 rows; they were not read; "
                        + "check that no row is missing");
    }

    @Test
    void aRowLengthThatTheColumnsDoNotAddUpToIsRefused() {
        assertThat(made.table(1, marks().row("A").claimingRowLength(3)).refusal())
                .containsExactly(
                        "in/marks.dbf: its 1 columns and the deletion mark take 4 bytes, but its header says that "
                                + "a row has 3; wanted the two to agree; export the layer again");
    }

    @Test
    void anEmptyOrShortTableIsRefused() {
        assertThat(made.shapes(1, point(1, 2)).with("marks.dbf", new byte[0]).refusal())
                .containsExactly("in/marks.dbf: is 0 bytes long; wanted a dBASE table, whose header takes 32 and more; "
                        + "export the layer again");
        assertThat(made.with("marks.dbf", new byte[32]).refusal())
                .containsExactly(
                        "in/marks.dbf: gives 0 bytes of header and 0 bytes for a row in a file of 32 bytes; wanted a "
                                + "header of 33 or more that the file can hold and rows of 1 or more; export the layer again");
    }

    @Test
    void aTableOfDbaseLevel7IsRefusedAndOtherVersionsNoted() {
        assertThat(made.table(1, marks().row("A").version(4)).refusal())
                .containsExactly("in/marks.dbf: is a table of dBASE level 7; wanted dBASE III; "
                        + "save it as dBASE III or export the layer again");
        assertThat(made.table(1, marks().row("A").version(0x83)).notes())
                .containsExactly("in/marks.dbf: is marked as version 131; wanted 3, dBASE III; read as that; "
                        + "check its columns");
    }

    @Test
    void columnsWithoutANameOrWithTheSameAreRefused() {
        assertThat(made.table(1, marks().field("mark", 'N', 3, 0).row("A")).refusal())
                .containsExactly("in/marks.dbf: its column 2 has the name mark, as another column has; "
                        + "wanted a name for each that no other has; rename it");
        assertThat(made.table(1, marks().field("", 'N', 3, 0).row("A")).refusal())
                .containsExactly(
                        "in/marks.dbf: its column 2 has no name; wanted a name for each that no other has; rename it");
    }

    @Test
    void withoutATableTheFeaturesHaveNoAttributesAndThatIsNoted() {
        made.shapes(3, line(0, 0, 1, 1)).without("marks.dbf");

        assertThat(made.read().features().get(0).columns()).isEmpty();
        assertThat(made.firstShape().toText()).isEqualTo("LINESTRING (0 0, 1 1)");
        assertThat(made.notes())
                .containsExactly("in/marks.shp: no .dbf stands beside it, so its features have no attributes; "
                        + "put the .dbf in the same folder");
    }
}
