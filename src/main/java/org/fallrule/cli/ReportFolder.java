package org.fallrule.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.report.Report;
import org.fallrule.report.html.HtmlReport;
import org.fallrule.report.pdf.PrintSettings;
import org.fallrule.site.Site;

/** The folder that reports go to. A site's report is written whole beside the place it belongs to and then moved there. */
final class ReportFolder {
    private final Path folder;
    private final Set<ReportFormat> formats;
    private final PrintSettings settings;
    private final boolean watched;

    private ReportFolder(Path folder, Set<ReportFormat> formats, PrintSettings settings, boolean watched) {
        this.folder = folder;
        this.formats = formats;
        this.settings = settings;
        this.watched = watched;
    }

    /** The same, for reports that are written again and again: an open page shows the new one by itself. */
    ReportFolder watched() {
        return new ReportFolder(folder, formats, settings, true);
    }

    /**
     * Makes the folder ready before anything is checked.
     *
     * @throws UnusableInput if it cannot be written to, lies inside of a site, or two sites would write the same report
     */
    static ReportFolder prepare(Path folder, List<Path> sites, Set<ReportFormat> formats, PrintSettings settings) {
        refuseClashes(folder, sites);
        try {
            Files.createDirectories(folder);
            Files.delete(Files.createTempFile(folder, ".fallrule", ".probe"));
        } catch (IOException e) {
            throw new UnusableInput(
                    Place.of(folder.toString()), "cannot be written to (" + e + "); name another folder with --out");
        }
        return new ReportFolder(folder, formats, settings, false);
    }

    private static void refuseClashes(Path folder, List<Path> sites) {
        Map<String, Path> taken = new HashMap<>();
        for (Path site : sites) {
            Path whole = real(site);
            String id = String.valueOf(site.toAbsolutePath().normalize().getFileName());
            if (real(folder).startsWith(whole)) {
                throw new UnusableInput(
                        Place.of(folder.toString()), "lies inside of the site " + site + "; write reports elsewhere");
            }
            if (real(folder).resolve(id).equals(whole)) {
                throw new UnusableInput(
                        Place.of(folder.toString()),
                        "is the folder that holds the site " + site + ", whose report would stand in its place; write"
                                + " reports elsewhere");
            }
            Path other = taken.put(id, whole);
            if (other != null) {
                throw new UnusableInput(Place.of(site.toString()), clash(whole, other));
            }
        }
    }

    private static String clash(Path site, Path other) {
        return site.equals(other)
                ? "is named twice; name it once"
                : "has the same folder name as " + other
                        + ", so their reports would overwrite each other; check them one"
                        + " by one with --out folders of their own";
    }

    /** The place on disk with links followed, as far as it is there yet. */
    private static Path real(Path path) {
        Path whole = path.toAbsolutePath().normalize();
        try {
            return whole.toRealPath();
        } catch (IOException e) {
            Path parent = whole.getParent();
            return parent == null ? whole : real(parent).resolve(whole.getFileName());
        }
    }

    /** Where a site's report stands. */
    Path of(Site site) {
        return folder.resolve(site.id());
    }

    /** Writes a report whole, in place of the one that is there; on a failure nothing is changed. */
    void write(Report report) {
        Map<String, byte[]> files = formats.parallelStream()
                .collect(Collectors.toMap(ReportFormat::file, format -> written(format, report)));
        Path place = of(report.site());
        try {
            Path fresh = Files.createTempDirectory(folder, "." + report.site().id() + "-");
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
            throw new UnusableInput(Place.of(place.toString()), "the report could not be written: " + e);
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
        Path old = place.resolveSibling(fresh.getFileName() + ".old");
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
        Set<String> ours = Set.copyOf(
                Stream.of(ReportFormat.values()).map(ReportFormat::file).toList());
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
