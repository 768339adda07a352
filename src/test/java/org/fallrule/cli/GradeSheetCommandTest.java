package org.fallrule.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GradeSheetCommandTest {
    private static final String SITE = "sample-sites/harrow-14";

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        return Fallrule.run(new PrintWriter(out), new PrintWriter(err), args);
    }

    @Test
    void itPrintsTheSheetAndWritesThreeFiles(@TempDir Path folder) {
        assertThat(run("gradesheet", SITE, "--out", folder.toString())).isZero();
        assertThat(out.toString()).contains("Grade sheet: Harrow Street 14", "Pipe P-1: inlet DS-1 to inlet CB-1");
        assertThat(folder.toFile().list())
                .containsExactlyInAnyOrder(
                        "harrow-14-gradesheet.txt", "harrow-14-gradesheet.csv", "harrow-14-gradesheet.pdf");
    }

    @Test
    void onlyTheFormatsThatAreAskedForAreWritten(@TempDir Path folder) throws Exception {
        assertThat(run("gradesheet", SITE, "--format", "csv", "--out", folder.toString()))
                .isZero();
        assertThat(folder.toFile().list()).containsExactly("harrow-14-gradesheet.csv");
        assertThat(Files.readString(folder.resolve("harrow-14-gradesheet.csv")))
                .startsWith("\uFEFFsite,pipe,station,distance_ft");
    }

    @ParameterizedTest
    @ValueSource(strings = {"5", "0 ft", "-1 ft", "10 %"})
    void aDistanceThatIsNoneIsRefused(String every) {
        assertThat(run("gradesheet", SITE, "--every", every)).isEqualTo(2);
        assertThat(err.toString()).startsWith("--every");
    }

    private String text(String... args) {
        assertThat(run(args)).isZero();
        return out.toString().replaceAll("\\s+", " ");
    }

    @Test
    void theDistanceForDiggingByHandIsTheCountysAndSaysWhereItStands() {
        assertThat(text("gradesheet", SITE, "--county", "larkmoor"))
                .containsPattern("within 18 in of the outside edge of a utility on the plan, by rule hand-dig in"
                        + " rules/counties/larkmoor.yaml:\\d+ \\(statute: State One-Call Act \\(invented\\), 12\\)");
    }

    @Test
    void aDistanceGivenWithTheCommandStandsInPlaceOfTheCountys() {
        assertThat(text("gradesheet", SITE, "--by-hand", "30 in", "--rules", "nowhere"))
                .contains("within 30 in of the outside edge of a utility on the plan, as given with the command")
                .doesNotContain("by rule");
    }

    @Test
    void aCountyThatIsNotKnownIsRefused() {
        assertThat(run("gradesheet", SITE, "--county", "nowhere")).isEqualTo(2);
        assertThat(err.toString()).contains("nowhere");
    }

    @Test
    void nothingIsWrittenIntoTheSite() {
        assertThat(run("gradesheet", SITE, "--out", SITE + "/out")).isEqualTo(2);
        assertThat(err.toString()).contains("lies inside of the site");
    }

    @Test
    void aFolderThatIsNoSiteIsRefused(@TempDir Path folder) {
        assertThat(run("gradesheet", folder.toString())).isEqualTo(2);
    }
}
