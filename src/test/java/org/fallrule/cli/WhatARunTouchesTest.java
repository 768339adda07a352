package org.fallrule.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import jdk.jfr.Recording;
import jdk.jfr.consumer.RecordedEvent;
import jdk.jfr.consumer.RecordingFile;
import org.fallrule.SiteOnDisk;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A run reads the site, the rules and itself, writes where it is told, and opens no connection; the Java machine is asked what it saw. */
class WhatARunTouchesTest {
    private static final List<String> FILES = List.of("jdk.FileRead", "jdk.FileWrite");
    private static final List<String> SOCKETS = List.of("jdk.SocketRead", "jdk.SocketWrite");

    private static final Path RULES = Path.of("rules").toAbsolutePath();

    @TempDir
    Path folder;

    @Test
    void readsAndWritesNothingElseAndOpensNoConnection() throws IOException {
        Path site = SiteOnDisk.copied("harrow-14", folder).path();
        Path out = folder.resolve("out");

        List<RecordedEvent> seen = seen("check", site.toString(), "--out", out.toString(), "--quiet");

        assertThat(paths(seen, "jdk.FileRead"))
                .filteredOn(path -> !isTheProgram(path))
                .as("files read that are not the program's")
                .isNotEmpty()
                .allMatch(path -> path.startsWith(site) || path.startsWith(RULES));
        assertThat(paths(seen, "jdk.FileWrite"))
                .as("files written")
                .isNotEmpty()
                .allSatisfy(path -> assertThat(path).startsWithRaw(out));
        assertThat(seen)
                .noneMatch(event -> SOCKETS.contains(event.getEventType().getName()));
    }

    /** Jars, classes and resources, the Java machine's own files, and where it takes random numbers for temporary names from. */
    private static boolean isTheProgram(Path path) {
        return path.toString().endsWith(".jar")
                || path.startsWith(Path.of("target").toAbsolutePath())
                || path.equals(Path.of("/dev/urandom"))
                || path.startsWith(Path.of(System.getProperty("java.home")));
    }

    private List<RecordedEvent> seen(String... command) throws IOException {
        Path events = folder.resolve("events.jfr");
        try (Recording recording = new Recording()) {
            Stream.concat(FILES.stream(), SOCKETS.stream())
                    .forEach(event -> recording.enable(event).withThreshold(Duration.ZERO));
            recording.start();
            StringWriter said = new StringWriter();
            Fallrule.run(new PrintWriter(said), new PrintWriter(said), command);
            recording.stop();
            recording.dump(events);
        }
        return RecordingFile.readAllEvents(events);
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
