package org.fallrule.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import jdk.jfr.Recording;
import jdk.jfr.consumer.RecordedEvent;
import jdk.jfr.consumer.RecordingFile;
import org.fallrule.SiteOnDisk;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A run reads the site, the rules and itself, writes where it is told, starts no program and opens no connection; the Java machine is
 * asked what it saw. What SQLite reads of a GeoPackage it does not see.
 */
class WhatARunTouchesTest {
    private static final List<String> FILES = List.of("jdk.FileRead", "jdk.FileWrite");
    private static final List<String> NONE = List.of("jdk.SocketRead", "jdk.SocketWrite", "jdk.ProcessStart");

    private static final Path RULES = Path.of("rules").toAbsolutePath();

    @TempDir
    Path folder;

    private Path out;

    @BeforeEach
    void outFolder() {
        out = folder.resolve("out");
    }

    @Test
    void checkOfOneSite() throws IOException {
        Path site = SiteOnDisk.copied("harrow-14", folder).path();

        seen(List.of(site, RULES), out, "check", site, "--out", out, "--quiet");

        assertThat(out.resolve("harrow-14/report.pdf")).exists();
    }

    @Test
    void checkOfManySitesWithPackedLayers() throws IOException {
        Path stack = Files.createDirectories(folder.resolve("stack"));
        SiteOnDisk packed = SiteOnDisk.copied("harrow-14", stack);
        zip(packed, "WALKS.zip", "SIDEWALK");
        packed.replacing("site.yaml", "SIDEWALK.shp", "WALKS.zip");
        SiteOnDisk.copied("thistledown-3", stack);

        seen(List.of(stack, RULES), out, "check", stack, "--out", out, "--quiet", "--format", "json,html", "--resume");

        assertThat(out.resolve("index.html")).exists();
        assertThat(out.resolve("harrow-14/report.html")).exists();
    }

    @Test
    void begin() throws IOException {
        Path site = SiteOnDisk.copied("harrow-14", folder).without("site.yaml").path();

        seen(List.of(site, RULES), site, "begin", site);

        assertThat(site.resolve("site.yaml")).exists();
    }

    @Test
    void compare() throws IOException {
        Path before =
                SiteOnDisk.copied("plumb-line-1", folder.resolve("before")).path();
        Path after = SiteOnDisk.copied("plumb-line-1", folder.resolve("after")).path();

        seen(List.of(before, after, RULES), out, "compare", before, after, "--out", out);

        assertThat(out.resolve("comparison.html")).exists();
    }

    @Test
    void proposeAndGradeSheet() throws IOException {
        Path site = SiteOnDisk.copied("plumb-line-1", folder).path();

        seen(List.of(site, RULES, out), out, "propose", site, "--out", out.resolve("lines"), "--format", "json");
        seen(List.of(site, RULES, out), out, "gradesheet", site, "--out", out.resolve("sheet"));

        assertThat(out.resolve("sheet")).isNotEmptyDirectory();
    }

    private static void zip(SiteOnDisk site, String name, String stem) throws IOException {
        try (OutputStream file = Files.newOutputStream(site.path(name));
                ZipOutputStream zip = new ZipOutputStream(file)) {
            for (String ending : List.of(".shp", ".shx", ".dbf", ".prj", ".cpg")) {
                zip.putNextEntry(new ZipEntry(stem + ending));
                Files.copy(site.path(stem + ending), zip);
                site.without(stem + ending);
            }
        }
    }

    /** Runs a command and holds what it read and wrote against where it may. */
    private void seen(List<Path> read, Path written, Object... command) throws IOException {
        List<RecordedEvent> events = events(command);

        assertThat(paths(events, "jdk.FileRead"))
                .filteredOn(path -> !isTheProgram(path))
                .as("files read that are not the program's")
                .isNotEmpty()
                .allMatch(path -> read.stream().anyMatch(path::startsWith), "are of the site or the rules");
        assertThat(paths(events, "jdk.FileWrite"))
                .as("files written")
                .isNotEmpty()
                .allSatisfy(path -> assertThat(path).startsWithRaw(written));
        assertThat(events).noneMatch(event -> NONE.contains(event.getEventType().getName()));
    }

    /** Jars, classes and resources, the Java machine's own files, and where it takes random numbers for temporary names from. */
    private static boolean isTheProgram(Path path) {
        return path.toString().endsWith(".jar")
                || path.startsWith(Path.of("target").toAbsolutePath())
                || path.equals(Path.of("/dev/urandom"))
                || path.startsWith(Path.of(System.getProperty("java.home")));
    }

    private List<RecordedEvent> events(Object... command) throws IOException {
        Path file = folder.resolve("events.jfr");
        try (Recording recording = new Recording()) {
            Stream.concat(FILES.stream(), NONE.stream())
                    .forEach(event -> recording.enable(event).withThreshold(Duration.ZERO));
            recording.start();
            Ran ran = Ran.command(command);
            recording.stop();
            recording.dump(file);
            assertThat(ran.code()).as(ran.err()).isLessThan(Fallrule.UNUSABLE);
        }
        return RecordingFile.readAllEvents(file);
    }

    private static List<Path> paths(List<RecordedEvent> events, String kind) {
        return events.stream()
                .filter(event -> event.getEventType().getName().equals(kind))
                .map(event -> event.getString("path"))
                .filter(path -> path != null && !path.endsWith(".jfr"))
                .map(path -> Path.of(path).toAbsolutePath().normalize())
                .distinct()
                .toList();
    }
}
