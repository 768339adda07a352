package org.fallrule.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fallrule.SiteOnDisk;
import org.fallrule.docket.Unfinished;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The command check on many sites. */
class ManySitesTest {
    @TempDir
    Path place;

    private Ran checked(String out, Object... words) {
        return Ran.check(Stream.concat(
                        Stream.of("sample-sites", "--out", place.resolve(out), "--format", "json,text"),
                        Stream.of(words))
                .toArray());
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

    @Test
    void oneThreadAndManyWriteTheSameBytes() throws IOException {
        Ran one = checked("one", "--jobs", "1", "--quiet");
        Ran many = checked("many", "--jobs", "7", "--quiet");

        assertThat(contents(place.resolve("many"))).isEqualTo(contents(place.resolve("one")));
        assertThat(many).isEqualTo(one);
        assertThat(one.out().lines().map(line -> line.replaceFirst(":.*", "")))
                .containsExactly("harrow-14", "maple-court-2", "plumb-line-1", "quillfeather-8", "thistledown-3");
        assertThat(one.code()).isEqualTo(1);
        assertThat(one.err()).isEmpty();
    }

    @Test
    void severalSitesHaveALineEachAndASummaryAndNoFullReport() {
        Ran ran = checked("out");

        assertThat(ran.out().lines().limit(7))
                .startsWith("harrow-14: Does not meet the rules: 13 binding findings fail, 8 more open.")
                .contains("", "5 sites: binding rules fail 1, open 2, advice not followed 1, nothing open 1.");
        assertThat(ran.out()).contains("fails in 2 of 5: ground-falls-from-house", "Index written to ");
        assertThat(ran.out().lines()).hasSizeLessThan(12);
        assertThat(place.resolve("out").toFile().list())
                .containsExactlyInAnyOrder(
                        "harrow-14",
                        "maple-court-2",
                        "plumb-line-1",
                        "quillfeather-8",
                        "thistledown-3",
                        "index.html",
                        "index.csv",
                        "index.json");
    }

    @Test
    void theWorstSiteGivesTheExitCode() {
        Ran none = Ran.check("sample-sites/quillfeather-8", "sample-sites/plumb-line-1");
        assertThat(none.code()).isZero();
        assertThat(none.out())
                .endsWith("With --out DIR each report is written too, and an index of what needs you first.\n");
        assertThat(Ran.check("sample-sites/quillfeather-8", "sample-sites/maple-court-2", "--strict")
                        .code())
                .isEqualTo(1);
        Ran ran = Ran.check("sample-sites/quillfeather-8", place.resolve("nowhere"), "--quiet");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("nowhere could not be checked:", "there is no such folder");
        assertThat(ran.out()).contains("quillfeather-8: Nothing binding fails and nothing is open.");
    }

    @Test
    void aListGivesASiteOnEachLine() throws IOException {
        SiteOnDisk site = SiteOnDisk.copied("quillfeather-8", place.resolve("of two words"));
        Path list = Files.writeString(
                place.resolve("list.txt"), "# this week\n\nsample-sites/plumb-line-1\n" + site.path() + "\n");

        assertThat(Ran.check("@" + list, "--quiet").out().lines())
                .containsExactly(
                        "plumb-line-1: Nothing binding fails and nothing is open; 7 pieces of advice not followed.",
                        "quillfeather-8: Nothing binding fails and nothing is open.");
    }

    @Test
    void aResumedRunSaysTheSameAndTellsWhatItTookOver() throws IOException {
        Ran first = checked("out");
        Map<String, String> before = contents(place.resolve("out"));

        Ran again = checked("out", "--resume");

        assertThat(again.out()).isEqualTo(first.out());
        assertThat(again.err()).contains("5 of the reports were taken over from an earlier run.");
        assertThat(contents(place.resolve("out"))).isEqualTo(before);
    }

    /** The profile lies outside of the site's folder, and is an input all the same, however YAML may have its key written. */
    @ParameterizedTest
    @ValueSource(strings = {"layers_from", "\"layers\\x5ffrom\"", "? layers_from\n"})
    void aReportIsNotTakenOverWhenTheProfileOfItsLayersHasChanged(String key) throws IOException {
        SiteOnDisk plan = SiteOnDisk.copied("plumb-line-1", place.resolve("stack"));
        SiteOnDisk.copied("thistledown-3", place.resolve("stack"));
        Path profile = Files.writeString(place.resolve("stack/office.yaml"), "units: {diameter: in}\n");
        plan.replacing("site.yaml", "\nunits: {elev", "\n" + key + ": ../office.yaml\nunits: {elev");
        Object[] words = {place.resolve("stack"), "--out", place.resolve("out"), "--format", "json", "--resume"};
        Ran.check(words);
        assertThat(Ran.check(words).err()).contains("2 of the reports were taken over");

        Files.writeString(profile, "units: {diameter: in, length: ft}\n");

        assertThat(Ran.check(words).err()).contains("1 of the reports were taken over");
    }

    @Test
    void resumeWithoutAFolderAndNoJobsAreRefused() {
        assertThat(Ran.check("sample-sites", "--resume").err())
                .contains("--resume: wants the folder of the earlier run");
        assertThat(Ran.check("sample-sites", "--jobs", "0").err())
                .contains("--jobs: 0 sites at the same time are none");
        assertThat(Ran.check("sample-sites", "--jobs", "0").code()).isEqualTo(2);
    }

    @Test
    void aSecondRunIntoTheSameFolderIsRefusedAndTheFirstIsNotDisturbed() throws IOException {
        Path out = Files.createDirectories(place.resolve("out"));
        try (Unfinished first = Unfinished.in(out)) {
            Files.writeString(first.folder().resolve("half"), "");

            Ran second = checked("out");

            assertThat(second.code()).isEqualTo(2);
            assertThat(second.err()).contains("is being written to by another run");
            assertThat(first.folder().resolve("half")).exists();
        }
    }

    @Test
    void whatAKilledRunLeftUnfinishedIsClearedAway() throws IOException {
        Path left = Files.createDirectories(place.resolve("out/.unfinished/.harrow-14-123"));
        Files.writeString(left.resolve("report.txt"), "half");

        checked("out");

        assertThat(place.resolve("out/.unfinished")).doesNotExist();
    }

    @Test
    void killedAgainAndAgainAndResumedGivesTheSameAsAnUndisturbedRun() throws Exception {
        checked("whole", "--jobs", "2");
        Path out = place.resolve("killed");
        for (int kill = 0; kill < 3; kill++) {
            Process child = child(out);
            waitForAReport(child, out, kill + 1);
            child.destroyForcibly().waitFor();
            assertThat(out).as(Files.readString(place.resolve("child.txt"))).exists();
            assertEveryReportIsWhole(out);
        }

        Ran last = checked("killed", "--jobs", "2", "--resume");

        assertThat(last.err()).contains("taken over from an earlier run");
        assertThat(contents(out)).isEqualTo(contents(place.resolve("whole")));
    }

    private Process child(Path out) throws IOException {
        List<String> command = List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                classPath(),
                "org.fallrule.cli.Fallrule",
                "check",
                "sample-sites",
                "--today",
                "2026-06-01",
                "--out",
                out.toString(),
                "--format",
                "json,text",
                "--jobs",
                "2",
                "--resume");
        return new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(place.resolve("child.txt").toFile())
                .start();
    }

    /** The class path of this test, however its runner has loaded it. */
    private static String classPath() {
        if (ManySitesTest.class.getClassLoader() instanceof URLClassLoader loader) {
            return Stream.of(loader.getURLs())
                    .map(url -> Path.of(URI.create(url.toString())).toString())
                    .collect(Collectors.joining(File.pathSeparator));
        }
        return System.getProperty("java.class.path");
    }

    private static void waitForAReport(Process child, Path out, int reports) throws InterruptedException {
        for (int i = 0; i < 2400 && child.isAlive(); i++) {
            String[] names = out.toFile().list((folder, name) -> !name.startsWith("."));
            if (names != null && names.length >= reports) {
                return;
            }
            child.waitFor(25, TimeUnit.MILLISECONDS);
        }
    }

    private static void assertEveryReportIsWhole(Path out) throws IOException {
        for (Map.Entry<String, String> file : contents(out).entrySet()) {
            Path path = Path.of(file.getKey());
            if (path.getNameCount() == 2 && !file.getKey().startsWith(".unfinished")) {
                assertThat(out.resolve(path.getName(0)).toFile().list())
                        .containsExactlyInAnyOrder("findings.json", "report.txt", "made-from.json");
            }
        }
    }

    @Test
    void nothingIsLeftOpenOfTheFilesThatARunReads() throws IOException {
        Path open = Path.of("/proc/self/fd");
        assumeTrue(Files.isDirectory(open));
        checked("warm");
        long before = count(open);

        checked("one");
        checked("two", "--resume");

        assertThat(count(open)).isLessThan(before + 5);
    }

    private static long count(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.count();
        }
    }
}
