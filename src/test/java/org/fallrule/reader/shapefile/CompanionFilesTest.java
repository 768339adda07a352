package org.fallrule.reader.shapefile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.reader.shapefile.Content.point;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CompanionFilesTest {
    @TempDir
    Path folder = Path.of("");

    private Made made = new Made(folder);

    @BeforeEach
    void twoPoints() {
        made = new Made(folder).shapes(1, point(1, 2), point(3, 4));
    }

    private static byte[] index(int... words) {
        return new Bytes().raw(new byte[100]).big(words).toArray();
    }

    @Test
    void namesThatDifferInCaseAreFoundAndNamedAsTheyAre() {
        Table table = Table.of("mark", 'N', 3, 1).row("1.5").row("bad");
        made.without("marks.dbf")
                .with("MARKS.Dbf", table.toArray())
                .with("Marks.PRJ", "LOCAL_CS[\"site\"]".getBytes(StandardCharsets.US_ASCII));

        assertThat(made.read().crs()).contains("LOCAL_CS[\"site\"]");
        assertThat(made.read().features().get(0).columns()).containsEntry("mark", 1.5);
        assertThat(made.notes())
                .containsExactly("in/MARKS.Dbf: feature 2: mark: found \"bad\"; wanted a number such as 12.5; "
                        + "it was left out; type it again");
    }

    @Test
    void theNameOfTheSameCaseIsTakenBeforeOthers() {
        Table other = Table.of("other", 'N', 3, 0).row("1").row("2");
        made.with("MARKS.DBF", other.toArray()).shapes(1, point(1, 2), point(3, 4));

        assertThat(made.read().features().get(0).columns()).containsOnlyKeys("id");
    }

    @Test
    void theTextOfTheProjectionFileIsTheCrsWithoutByteOrderMark() {
        made.with("marks.prj", "\uFEFFLOCAL_CS[\"Höhe\"]\r\n".getBytes(StandardCharsets.UTF_8));

        assertThat(made.read().crs()).contains("LOCAL_CS[\"Höhe\"]");
        assertThat(made.notes()).isEmpty();
    }

    @Test
    void aBlankProjectionFileIsNoted() {
        made.with("marks.prj", " \n".getBytes(StandardCharsets.US_ASCII));

        assertThat(made.read().crs()).isEmpty();
        assertThat(made.notes())
                .containsExactly("in/marks.prj: is blank, so the layer says nothing of its coordinates; "
                        + "write the WKT of their CRS into it");
    }

    @Test
    void aProjectionFileOfManyMegabytesIsRefused() {
        assertThat(made.with("marks.prj", new byte[3 << 20]).refusal())
                .containsExactly(
                        "in/marks.prj: is 3145728 bytes long; wanted a short text; replace it or take it away");
    }

    @Test
    void aFolderInPlaceOfATableIsRefused() throws IOException {
        made.without("marks.dbf");
        Files.createDirectory(folder.resolve("marks.dbf"));

        assertThat(made.refusal()).containsExactly("in/marks.dbf: is not a plain file; name the file itself");
    }

    @Test
    void anIndexThatAgreesNeedsNoNote() {
        assertThat(made.with("marks.shx", index(50, 10, 64, 10)).notes()).isEmpty();
    }

    @Test
    void anIndexOfAnotherNumberOfRecordsIsNoted() {
        assertThat(made.with("marks.shx", index(50, 10)).notes())
                .containsExactly(
                        "in/marks.shx: lists 1 records where the .shp has 2; the .shp was read and the .shx left "
                                + "aside; export the layer again so that they agree");
        assertThat(made.with("marks.shx", new byte[0]).notes())
                .containsExactly(
                        "in/marks.shx: lists 0 records where the .shp has 2; the .shp was read and the .shx left "
                                + "aside; export the layer again so that they agree");
    }

    @Test
    void anIndexOfOtherPlacesOrLengthsIsNoted() {
        String note =
                "in/marks.shx: gives another place or length for feature 2 than the .shp; the .shp was read and the "
                        + ".shx left aside; export the layer again so that they agree";

        assertThat(made.with("marks.shx", index(50, 10, 65, 10)).notes()).containsExactly(note);
        assertThat(made.with("marks.shx", index(50, 10, 64, 11)).notes()).containsExactly(note);
    }
}
