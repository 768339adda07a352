package org.fallrule.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.fallrule.SiteOnDisk;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.reader.SiteReader;
import org.fallrule.report.Report;
import org.fallrule.report.pdf.Paper;
import org.fallrule.report.pdf.PrintSettings;
import org.fallrule.review.Reviewer;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.rulebook.RuleLibrary;
import org.fallrule.site.Site;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportFolderTest {
    private static final Path SITE = Path.of("sample-sites/plumb-line-1");

    @TempDir
    Path place;

    private Ran checked(Object... words) {
        return Ran.check(Stream.concat(Stream.of("--quiet"), Stream.of(words)).toArray());
    }

    private static Map<String, String> contents(Path folder) throws IOException {
        Map<String, String> contents = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                contents.put(folder.relativize(file).toString(), Files.readString(file, StandardCharsets.ISO_8859_1));
            }
        }
        return contents;
    }

    private void refused(Ran ran, String... messages) {
        assertThat(ran.err()).contains(messages);
        assertThat(ran.err()).doesNotContain("fault of the program");
        assertThat(ran.code()).isEqualTo(2);
    }

    @Test
    void aReportHasAFileForEachFormatAndNothingElseIsLeft() throws IOException {
        assertThat(checked(SITE, "--out", place).code()).isZero();

        assertThat(contents(place).keySet())
                .containsExactly(Stream.of(ReportFormat.values())
                        .map(format -> "plumb-line-1/" + format.file())
                        .sorted()
                        .toArray(String[]::new));
        assertThat(place.toFile().list()).containsExactly("plumb-line-1");
    }

    @Test
    void onlyTheAskedFormatsAreWritten() throws IOException {
        checked(SITE, "--out", place, "--format", "csv,json");

        assertThat(contents(place).keySet()).containsExactly("plumb-line-1/findings.csv", "plumb-line-1/findings.json");
    }

    @Test
    void aReportTakesThePlaceOfTheOneBefore() throws IOException {
        checked(SITE, "--out", place);
        Files.writeString(place.resolve("plumb-line-1/report.txt"), "old");

        checked(SITE, "--out", place, "--format", "json");

        assertThat(contents(place).keySet()).containsExactly("plumb-line-1/findings.json");
    }

    @Test
    void twoRunsGiveTheSameBytes() throws IOException {
        checked(SITE, Path.of("sample-sites/harrow-14"), "--out", place.resolve("one"));
        checked(SITE, Path.of("sample-sites/harrow-14"), "--out", place.resolve("two"));

        assertThat(contents(place.resolve("one"))).isEqualTo(contents(place.resolve("two")));
    }

    @Test
    void aReportIsAsReadableAsItsFolder() throws IOException {
        checked(SITE, "--out", place.resolve("out"));

        assertThat(Files.getPosixFilePermissions(place.resolve("out/plumb-line-1")))
                .isEqualTo(Files.getPosixFilePermissions(place.resolve("out")));
    }

    @Test
    void aFileWhereTheFolderWouldBeIsRefusedBeforeAnythingIsChecked() throws IOException {
        Path file = Files.writeString(place.resolve("out"), "mine");

        Ran ran = checked(SITE, "--out", file);

        refused(ran, file + ": cannot be written to (", "name another folder with --out");
        assertThat(ran.out()).isEmpty();
        assertThat(file).hasContent("mine");
    }

    @Test
    void aFileWhereTheReportWouldBeIsLeftAlone() throws IOException {
        Path file = Files.writeString(place.resolve("plumb-line-1"), "mine");

        refused(checked(SITE, "--out", place), file + ": is a file where the report's folder would be");
        assertThat(contents(place)).containsExactly(Map.entry("plumb-line-1", "mine"));
    }

    @Test
    void aFolderWithinTheSiteIsRefused() {
        SiteOnDisk site = SiteOnDisk.copied("plumb-line-1", place);

        refused(
                checked(site.path(), "--out", site.path("out")),
                "lies inside of the site " + site.path() + "; write reports elsewhere");
        refused(checked(site.path(), "--out", site.path()), "lies inside of the site");
        assertThat(site.path("out")).doesNotExist();
    }

    @Test
    void aLinkIntoTheSiteIsRefusedToo() throws IOException {
        SiteOnDisk site = SiteOnDisk.copied("plumb-line-1", place);
        Path link = Files.createSymbolicLink(place.resolve("link"), site.path());

        refused(checked(site.path(), "--out", link.resolve("out")), "lies inside of the site");
        assertThat(site.path("out")).doesNotExist();
    }

    @Test
    void theFolderThatHoldsTheSiteIsRefused() throws IOException {
        SiteOnDisk site = SiteOnDisk.copied("plumb-line-1", place);
        Map<String, String> before = contents(place);

        refused(checked(site.path(), "--out", place), "is the folder that holds the site " + site.path());
        assertThat(contents(place)).isEqualTo(before);
    }

    @Test
    void aSiteThatIsNamedTwiceIsCheckedOnceAndThatIsTold() throws IOException {
        Ran ran = checked(SITE, Path.of("sample-sites/../sample-sites/plumb-line-1"), "--out", place.resolve("out"));

        assertThat(ran.err()).contains("plumb-line-1: is named twice, and was checked once");
        assertThat(ran.out().lines()).hasSize(1);
        assertThat(ran.code()).isZero();
        assertThat(Files.readString(place.resolve("out/index.json"))).contains("is named twice");
    }

    @Test
    void twoSitesOfOneFolderNameHaveReportsOfTheirOwnAndThatIsTold() throws IOException {
        SiteOnDisk other = SiteOnDisk.copied("plumb-line-1", place);

        Ran ran = checked(SITE, other.path(), "--out", place.resolve("out"), "--format", "json");

        assertThat(ran.err())
                .contains(other.path()
                        + ": has the folder name of another site; its report is written to plumb-line-1-2");
        assertThat(ran.code()).isZero();
        assertThat(contents(place.resolve("out")).keySet())
                .contains("plumb-line-1/findings.json", "plumb-line-1-2/findings.json");
    }

    @Test
    void aReportFolderThatHoldsSomethingElseIsLeftAlone() throws IOException {
        Files.createDirectories(place.resolve("plumb-line-1/findings.csv"));
        Files.writeString(place.resolve("plumb-line-1/findings.csv/mine.txt"), "mine");

        refused(
                checked(SITE, "--out", place),
                "plumb-line-1: holds findings.csv, which is not part of a report; move it, or name another --out");

        Files.move(place.resolve("plumb-line-1/findings.csv"), place.resolve("plumb-line-1/notes"));
        refused(checked(SITE, "--out", place), "holds notes, which is not part of a report");
        assertThat(contents(place)).containsExactly(Map.entry("plumb-line-1/notes/mine.txt", "mine"));
    }

    @Test
    void aWriterThatFailsLeavesTheOldReportUntouched() throws IOException {
        checked(SITE, "--out", place);
        Map<String, String> before = contents(place);
        Site site = SiteReader.read(SITE);
        Site unplaceable = new Site(
                site.id(),
                site.name(),
                site.county(),
                site.house(),
                site.crs(),
                site.datum(),
                local -> {
                    throw new IllegalStateException("no such place");
                },
                site.survey(),
                site.layers(),
                site.waivers(),
                site.problems());
        RuleBook book = new RuleLibrary(Path.of("rules"), "rules").load("saltmeadow", java.util.Optional.empty());
        SiteAnalysis analysis = SiteAnalysis.of(unplaceable);
        Report report =
                new Report(analysis, "saltmeadow", book, Reviewer.review(analysis, book, LocalDate.of(2026, 6, 1)));
        ReportFolder folder = ReportFolder.prepare(
                place,
                List.of(SITE),
                Set.copyOf(List.of(ReportFormat.values())),
                new PrintSettings(Paper.letter, LocalDate.of(2026, 6, 1)));

        assertThatThrownBy(() -> folder.write(report)).isInstanceOf(IllegalStateException.class);

        assertThat(contents(place)).isEqualTo(before);
        assertThat(place.toFile().list()).containsExactly("plumb-line-1");
    }
}
