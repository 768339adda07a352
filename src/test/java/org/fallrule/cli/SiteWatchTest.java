package org.fallrule.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.fallrule.SiteOnDisk;
import org.fallrule.report.pdf.Paper;
import org.fallrule.report.pdf.PrintSettings;
import org.fallrule.rulebook.RuleLibrary;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A site that is edited while it is watched. Each test waits for the line that a redraw prints, however long that takes. */
@SuppressWarnings("NullAway.Init")
class SiteWatchTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 1);
    private static final String OUTFALL = "-76.0499586379, 35.3000254638";
    private static final String NEARER = "-76.0499556379, 35.3000145638";

    @TempDir
    Path place;

    private final BlockingQueue<String> lines = new LinkedBlockingQueue<>();
    private SiteOnDisk site;
    private Path rules;
    private SiteWatch watch;
    private Thread watching;

    /** Takes whole lines as they are printed. */
    private static final class Lines extends Writer {
        private final BlockingQueue<String> lines;
        private final StringBuilder line = new StringBuilder();

        Lines(BlockingQueue<String> lines) {
            this.lines = lines;
        }

        @Override
        public void write(char[] letters, int from, int count) {
            for (int i = from; i < from + count; i++) {
                if (letters[i] == '\n') {
                    lines.add(line.toString());
                    line.setLength(0);
                } else {
                    line.append(letters[i]);
                }
            }
        }

        @Override
        public void flush() {}

        @Override
        public void close() {}
    }

    @BeforeEach
    void start() throws IOException, InterruptedException {
        site = SiteOnDisk.copied("quillfeather-8", place);
        rules = Files.createDirectories(place.resolve("rules/counties"));
        for (String book : List.of("baseline.yaml", "counties/saltmeadow.yaml")) {
            Files.copy(Path.of("rules", book), place.resolve("rules").resolve(book));
        }
        PrintWriter screen = new PrintWriter(new Lines(lines), true);
        ReportFolder reports = ReportFolder.prepare(
                place.resolve("out"),
                List.of(site.path()),
                EnumSet.of(ReportFormat.html, ReportFormat.json),
                new PrintSettings(Paper.letter, TODAY));
        watch = new SiteWatch(
                site.path(),
                new BookOptions(),
                new RuleLibrary(place.resolve("rules"), "rules"),
                TODAY,
                Optional.of(reports),
                screen,
                screen);
        watching = new Thread(watch::run);
        watching.start();
        assertThat(line()).startsWith("Watching ");
        assertThat(line()).contains("Nothing binding fails and nothing is open.");
    }

    @AfterEach
    void end() throws InterruptedException {
        watch.close();
        watching.join();
    }

    private String line() throws InterruptedException {
        String line = lines.poll(5, TimeUnit.MINUTES);
        assertThat(line).as("a line that the watch prints").isNotNull();
        return line;
    }

    @Test
    void aSavedFileRedrawsTheReportAndSaysWhatChanged() throws InterruptedException, IOException {
        site.replacing("outfall.geojson", OUTFALL, NEARER);

        assertThat(line())
                .contains("Does not meet the rules", "Worse: ", "outfall-walk-setback of outfall OF-1 and walk");
        assertThat(place.resolve("out/quillfeather-8/findings.json")).content().contains("\"outcome\" : \"fails\"");
        assertThat(place.resolve("out/quillfeather-8/report.html"))
                .content()
                .contains("<html lang=\"en\" data-watched>");

        site.replacing("outfall.geojson", NEARER, OUTFALL);
        assertThat(line()).contains("Nothing binding fails and nothing is open.", "Gone: ");
    }

    @Test
    void theLayersThatItSharesAndItsProfileAreWatchedToo() throws IOException {
        Path street = place.resolve("street.geojson");
        Files.copy(site.path("outfall.geojson"), street);
        Files.writeString(place.resolve("sites.yaml"), "shared: {street: street.geojson}\n");
        Files.writeString(place.resolve("firm.yaml"), "units: {elevation: ft}\n");
        site.replacing("site.yaml", "county: saltmeadow", "county: saltmeadow\nlayers_from: ../firm.yaml");

        assertThat(SiteWatch.watched(site.path(), rules))
                .contains(site.path(), rules, place.resolve("sites.yaml"), street)
                .anyMatch(file -> file.endsWith("firm.yaml"));
    }

    @Test
    void aHalfWrittenFileIsToldAndTheWatchGoesOn() throws InterruptedException, IOException {
        String whole = Files.readString(site.path("pipe.geojson"));
        site.with("pipe.geojson", whole.substring(0, whole.length() / 2));
        assertThat(line()).contains("could not be checked; the last report stands, watching on:");
        assertThat(line()).contains("pipe.geojson");
        assertThat(place.resolve("out/quillfeather-8/report.html")).exists();

        site.with("pipe.geojson", whole);
        lines.removeIf(each -> each.startsWith("  "));
        assertThat(line()).contains("Nothing binding fails", "Findings as they were.");
    }

    @Test
    void aSiteThatGoesAndComesBackIsWatchedOn() throws InterruptedException, IOException {
        Path aside = place.resolve("aside");
        Files.move(site.path(), aside);
        assertThat(line()).contains("could not be checked");
        assertThat(line()).contains("there is no such folder");

        Files.move(aside, site.path());
        assertThat(line()).contains("Nothing binding fails");
        site.replacing("outfall.geojson", OUTFALL, NEARER);
        assertThat(line()).contains("Does not meet the rules");
    }

    @Test
    void aChangedRuleBookCountsToo() throws InterruptedException, IOException {
        Path county = rules.resolve("saltmeadow.yaml");
        String text = Files.readString(county);
        assertThat(text).contains("at_least: 6 ft");
        Files.writeString(county, text.replace("at_least: 6 ft", "at_least: 60 ft"));

        assertThat(line()).contains("Does not meet the rules");
    }

    @Test
    void whatProgramsKeepBesideAnOpenFileIsNoChange() throws InterruptedException, IOException {
        site.with("plan.gpkg-shm", "x").with(".lock", "x").with("pipe.geojson~", "x");
        site.replacing("outfall.geojson", OUTFALL, NEARER);

        assertThat(line()).contains("Does not meet the rules");
        assertThat(lines).isEmpty();
    }
}
