package org.fallrule.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.report.comparison.ComparisonReport;
import org.fallrule.report.comparison.ComparisonText;
import org.fallrule.report.data.ComparisonJson;
import org.fallrule.report.html.ComparisonHtml;

/** Where a comparison is written. Each file is written whole beside its place and then moved there. */
final class ComparisonFolder {
    private final Path folder;

    private ComparisonFolder(Path folder) {
        this.folder = folder;
    }

    /**
     * Makes the folder ready before anything is compared.
     *
     * @throws UnusableInput if it cannot be written to, or lies inside of one of the sites
     */
    static ComparisonFolder prepare(Path folder, Path before, Path after) {
        for (Path site : List.of(before, after)) {
            if (folder.toAbsolutePath()
                    .normalize()
                    .startsWith(site.toAbsolutePath().normalize())) {
                throw new UnusableInput(
                        Place.of(folder.toString()), "lies inside of the site " + site + "; write elsewhere");
            }
        }
        try {
            Files.createDirectories(folder);
            Files.delete(Files.createTempFile(folder, ".fallrule", ".probe"));
        } catch (IOException e) {
            throw new UnusableInput(
                    Place.of(folder.toString()), "cannot be written to (" + e + "); name another folder with --out");
        }
        return new ComparisonFolder(folder);
    }

    void write(ComparisonReport report) {
        Map<String, String> files = new LinkedHashMap<>();
        files.put("comparison.html", ComparisonHtml.write(report));
        files.put("comparison.json", ComparisonJson.write(report));
        files.put("comparison.txt", ComparisonText.write(report));
        files.forEach(this::write);
    }

    private void write(String name, String text) {
        Path place = folder.resolve(name);
        Path fresh = folder.resolve("." + name + ".part");
        try {
            try {
                Files.write(fresh, text.getBytes(StandardCharsets.UTF_8));
                Files.move(fresh, place, StandardCopyOption.REPLACE_EXISTING);
            } finally {
                Files.deleteIfExists(fresh);
            }
        } catch (IOException e) {
            throw new UnusableInput(Place.of(place.toString()), "could not be written: " + e);
        }
    }
}
