package org.fallrule.docket;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.SiteOnDisk;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.report.Report;
import org.fallrule.report.docket.DocketEntry;
import org.fallrule.report.docket.Need;
import org.fallrule.rulebook.RuleLibrary;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DocketRunTest {
    @TempDir
    Path place;

    private Path stack;
    private Path out;

    /** A report is one line, written as it is. */
    private class OneLine implements Filing {
        private int put;

        @Override
        public Path folder() {
            return out;
        }

        @Override
        public Map<String, byte[]> files(Report report) {
            return Map.of("line.txt", report.verdict().getBytes(StandardCharsets.UTF_8));
        }

        @Override
        public void put(String name, Map<String, byte[]> files) {
            synchronized (this) {
                put++;
            }
            files.forEach((file, bytes) -> write(out.resolve(name), file, bytes));
        }
    }

    private static void write(Path folder, String file, byte[] bytes) {
        try {
            Files.createDirectories(folder);
            Files.write(folder.resolve(file), bytes);
        } catch (IOException e) {
            throw new UnusableInput(Place.of(file), "the report could not be written: " + e);
        }
    }

    @BeforeEach
    void plans() {
        stack = place.resolve("stack");
        out = place.resolve("out");
        for (int i = 1; i <= 6; i++) {
            plan("plan-" + i);
        }
    }

    /** A lot and an outfall on it: little to check, so that a run is quick. */
    private void plan(String name) {
        SiteOnDisk.in(stack, name)
                .with("site.yaml", "county: saltmeadow\nlayers: {lot: lot.geojson, outfall: outfall.geojson}")
                .layer(
                        "lot.geojson",
                        SiteOnDisk.feature(
                                "'id': 'L', 'own': true",
                                "Polygon",
                                "[[[-76.05, 35.30], [-76.0497, 35.30], [-76.0497, 35.3003], [-76.05, 35.30]]]"))
                .layer("outfall.geojson", SiteOnDisk.feature("'id': 'OF-1'", "Point", "[-76.0498, 35.3001]"));
    }

    private List<DocketEntry> run(Filing filing, boolean resume, int threads, String options) {
        RuleLibrary library = new RuleLibrary(Path.of("rules"), "rules");
        BooksInForce books = new BooksInForce(library, Optional.empty(), Optional.empty(), LocalDate.of(2026, 6, 1));
        SiteTask task = new SiteTask(
                new PlanReview(books, RemedySearch.none),
                Optional.of(filing),
                new RunDigest("1", options, library.folder()),
                resume);
        List<DocketEntry> told = new ArrayList<>();
        Stack sites = Stack.of(List.of(stack.toString()), Optional.of(out));
        List<DocketEntry> entries = new DocketRun(sites.sites(), task, threads).run(new DocketRun.Watcher() {
            @Override
            public void done(DocketEntry entry) {
                told.add(entry);
            }

            @Override
            public void underWay(DocketRun.Progress progress) {
                assertThat(progress.done()).isBetween(0, progress.all());
            }
        });
        assertThat(told).isEqualTo(entries);
        return entries;
    }

    @Test
    void entriesComeInTheOrderOfTheStackWhateverTheThreads() {
        List<DocketEntry> one = run(new OneLine(), false, 1, "");
        List<DocketEntry> four = run(new OneLine(), false, 4, "");

        assertThat(one)
                .extracting(DocketEntry::folder)
                .containsExactly("plan-1", "plan-2", "plan-3", "plan-4", "plan-5", "plan-6");
        assertThat(four).isEqualTo(one);
    }

    @Test
    void aBrokenSiteStopsNoOtherAndIsListedWithItsCause() throws IOException {
        Files.writeString(stack.resolve("plan-3/outfall.geojson"), "{nonsense");

        List<DocketEntry> entries = run(new OneLine(), false, 2, "");

        assertThat(entries).extracting(DocketEntry::isBroken).containsExactly(false, false, true, false, false, false);
        assertThat(entries.get(2).need()).isEqualTo(Need.BROKEN);
        assertThat(entries.get(2).causes().get(0)).contains("outfall.geojson");
    }

    @Test
    void aSiteDeletedAfterItWasFoundIsListedWithItsCause() {
        Filing deleting = new OneLine() {
            @Override
            public synchronized void put(String name, Map<String, byte[]> files) {
                super.put(name, files);
                if (name.equals("plan-1")) {
                    delete(stack.resolve("plan-6"));
                }
            }
        };

        List<DocketEntry> entries = run(deleting, false, 1, "");

        assertThat(entries.get(5).causes())
                .containsExactly(stack.resolve("plan-6") + ": there is no such folder; name a site folder");
    }

    private static void delete(Path folder) {
        for (String file : List.of("site.yaml", "lot.geojson", "outfall.geojson", "")) {
            try {
                Files.delete(folder.resolve(file));
            } catch (IOException e) {
                throw new IllegalStateException(e);
            }
        }
    }

    @Test
    void aReportThatCannotBeWrittenIsACauseAndTheRestGoesOn() {
        Filing full = new OneLine() {
            @Override
            public void put(String name, Map<String, byte[]> files) {
                if (name.equals("plan-2")) {
                    throw new UnusableInput(Place.of(name), "the report could not be written: No space left on device");
                }
                super.put(name, files);
            }
        };

        List<DocketEntry> entries = run(full, false, 2, "");

        assertThat(entries.get(1).causes())
                .containsExactly("plan-2: the report could not be written: No space left on device");
        assertThat(entries).filteredOn(DocketEntry::isBroken).hasSize(1);
    }

    @Test
    void aFaultOfTheProgramInOneSiteIsACauseToo() {
        Filing failing = new OneLine() {
            @Override
            public Map<String, byte[]> files(Report report) {
                throw new IllegalStateException("odd");
            }
        };

        assertThat(run(failing, false, 2, ""))
                .allSatisfy(entry -> assertThat(entry.causes().get(0)).contains("fault of the program", "odd"));
    }

    @Test
    void whatWasMadeFromTheSameIsTakenOver() {
        List<DocketEntry> before = run(new OneLine(), false, 2, "");
        OneLine again = new OneLine();

        assertThat(run(again, true, 2, "")).isEqualTo(before);
        assertThat(again.put).isZero();
    }

    @Test
    void withoutResumeEverythingIsMadeAnew() {
        run(new OneLine(), false, 2, "");
        OneLine again = new OneLine();

        run(again, false, 2, "");

        assertThat(again.put).isEqualTo(6);
    }

    @Test
    void onlyWhatChangedIsMadeAnew() throws IOException {
        run(new OneLine(), false, 2, "");
        // of the same length, and at the same time
        Path file = stack.resolve("plan-4/outfall.geojson");
        var time = Files.getLastModifiedTime(file);
        Files.writeString(file, Files.readString(file).replace("OF-1", "OF-2"));
        Files.setLastModifiedTime(file, time);
        Files.writeString(stack.resolve("plan-5/well.geojson"), "{\"type\": \"FeatureCollection\", \"features\": []}");
        OneLine again = new OneLine();

        run(again, true, 2, "");

        assertThat(again.put).isEqualTo(2);
    }

    @Test
    void otherOptionsMakeEverythingAnew() {
        run(new OneLine(), false, 2, "letter");
        OneLine again = new OneLine();

        run(again, true, 2, "a4");

        assertThat(again.put).isEqualTo(6);
    }

    @Test
    void sharedLayersThatChangeMakeEverythingAnew() throws IOException {
        Files.writeString(stack.resolve("sites.yaml"), "near: 100 ft");
        run(new OneLine(), false, 2, "");
        Files.writeString(stack.resolve("sites.yaml"), "near: 200 ft");
        OneLine again = new OneLine();

        run(again, true, 2, "");

        assertThat(again.put).isEqualTo(6);
    }

    @Test
    void aReportThatIsNotWholeIsMadeAnew() throws IOException {
        run(new OneLine(), false, 2, "");
        Files.writeString(out.resolve("plan-1/line.txt"), "cut");
        Files.delete(out.resolve("plan-2/line.txt"));
        Files.writeString(out.resolve("plan-3/" + ReportRecord.FILE), "{\"format\": ");
        Files.delete(out.resolve("plan-4/" + ReportRecord.FILE));
        OneLine again = new OneLine();

        run(again, true, 2, "");

        assertThat(again.put).isEqualTo(4);
    }
}
