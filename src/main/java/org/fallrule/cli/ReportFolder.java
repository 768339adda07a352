package org.fallrule.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fallrule.docket.Filing;
import org.fallrule.docket.ReportRecord;
import org.fallrule.docket.Stack;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.report.Report;
import org.fallrule.report.html.HtmlReport;
import org.fallrule.report.pdf.PrintSettings;
import org.fallrule.site.Site;

/** The folder that reports go to. A site's report is written whole beside the place it belongs to and then moved there. */
final class ReportFolder implements Filing {
    private final Path folder;
    private final Path unfinished;
    private final Set<ReportFormat> formats;
    private final PrintSettings settings;
    private final boolean watched;

    private ReportFolder(
            Path folder, Path unfinished, Set<ReportFormat> formats, PrintSettings settings, boolean watched) {
        this.folder = folder;
        this.unfinished = unfinished;
        this.formats = formats;
        this.settings = settings;
        this.watched = watched;
    }

    /** The same, for reports that are written again and again: an open page shows the new one by itself. */
    ReportFolder watched() {
        return new ReportFolder(folder, unfinished, formats, settings, true);
    }

    /**
     * Makes the folder ready before anything is checked.
     *
     * @throws UnusableInput if it cannot be written to, lies inside of a site, or a report would stand in a site's place
     */
    static ReportFolder prepare(Path folder, List<Path> sites, Set<ReportFormat> formats, PrintSettings settings) {
        Path whole = Stack.real(folder);
        for (Path site : sites) {
            OutFolder.refuseInside(folder, site, "reports");
            refuseItsFolder(folder, whole, site);
        }
        OutFolder.ready(folder);
        return new ReportFolder(folder, folder, formats, settings, false);
    }

    /** The same, for reports that are made in another folder before they are moved to their places. */
    ReportFolder madeIn(Path place) {
        return new ReportFolder(folder, place, formats, settings, watched);
    }

    private static void refuseItsFolder(Path folder, Path out, Path site) {
        Path whole = Stack.real(site);
        if (whole.startsWith(out) && out.relativize(whole).getNameCount() == 1) {
            throw new UnusableInput(
                    Place.of(folder.toString()),
                    "is the folder that holds the site " + site + ", whose report would stand in its place; write"
                            + " reports elsewhere");
        }
    }

    /** The file of a report that a person would open first. */
    String toRead() {
        return Stream.concat(Stream.of(ReportFormat.html, ReportFormat.pdf), Stream.of(ReportFormat.values()))
                .filter(formats::contains)
                .findFirst()
                .map(ReportFormat::file)
                .orElseThrow();
    }

    /** Says where a site's report stands and which of its files to open first. */
    String toRead(Site site) {
        return "Report written to " + of(site) + "; open " + toRead() + " there.";
    }

    @Override
    public Path folder() {
        return folder;
    }

    @Override
    public Map<String, byte[]> files(Report report) {
        return made(formats.stream(), report);
    }

    /** Where a site's report stands. */
    Path of(Site site) {
        return folder.resolve(site.id());
    }

    /** Writes a report whole, in place of the one that is there; on a failure nothing is changed. */
    void write(Report report) {
        put(report.site().id(), made(report));
    }

    /** The files of a report as {@link #write} would write them, side by side. */
    Map<String, byte[]> made(Report report) {
        return made(formats.parallelStream(), report);
    }

    private Map<String, byte[]> made(Stream<ReportFormat> each, Report report) {
        return each.collect(Collectors.toMap(ReportFormat::file, format -> written(format, report)));
    }

    @Override
    public void put(String name, Map<String, byte[]> files) {
        Path place = folder.resolve(name);
        try {
            Path fresh = Files.createTempDirectory(unfinished, ".report-");
            try {
                for (Map.Entry<String, byte[]> file : files.entrySet()) {
                    Files.write(fresh.resolve(file.getKey()), file.getValue());
                }
                readable(fresh);
                replace(place, fresh);
            } finally {
                delete(fresh);
            }
        } catch (IOException e) {
            throw new UnusableInput(
                    Place.of(place.toString()),
                    "the report could not be written (" + e + "); make room, or name another folder with --out");
        }
    }

    private byte[] written(ReportFormat format, Report report) {
        return watched && format == ReportFormat.html
                ? HtmlReport.writeWatched(report).getBytes(StandardCharsets.UTF_8)
                : format.write(report, settings);
    }

    /** A temporary folder is private to its owner; a report is as readable as any other new folder. */
    private void readable(Path fresh) throws IOException {
        if (folder.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            Files.setPosixFilePermissions(fresh, Files.getPosixFilePermissions(folder));
        }
    }

    private static void replace(Path place, Path fresh) throws IOException {
        if (!Files.exists(place)) {
            Files.move(fresh, place);
            return;
        }
        if (!Files.isDirectory(place)) {
            throw new UnusableInput(
                    Place.of(place.toString()),
                    "is a file where the report's folder would be; move it, or name another --out");
        }
        refuseForeignFiles(place);
        Path old = fresh.resolveSibling(fresh.getFileName() + ".old");
        Files.move(place, old);
        try {
            Files.move(fresh, place);
        } catch (IOException e) {
            Files.move(old, place);
            throw e;
        }
        delete(old);
    }

    /** Only a report is replaced: a folder that holds anything else is somebody's. */
    private static void refuseForeignFiles(Path place) throws IOException {
        Set<String> ours = Stream.concat(
                        Stream.of(ReportRecord.FILE),
                        Stream.of(ReportFormat.values()).map(ReportFormat::file))
                .collect(Collectors.toUnmodifiableSet());
        try (Stream<Path> files = Files.list(place)) {
            files.filter(file -> !ours.contains(file.getFileName().toString()) || !Files.isRegularFile(file))
                    .findFirst()
                    .ifPresent(file -> {
                        throw new UnusableInput(
                                Place.of(place.toString()),
                                "holds " + file.getFileName() + ", which is not part of a report; move it, or name"
                                        + " another --out");
                    });
        }
    }

    private static void delete(Path tree) throws IOException {
        if (!Files.exists(tree)) {
            return;
        }
        try (Stream<Path> all = Files.walk(tree)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
