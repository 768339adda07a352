package org.fallrule.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.report.comparison.ComparisonReport;
import org.fallrule.report.comparison.ComparisonText;
import org.fallrule.report.data.ComparisonJson;
import org.fallrule.report.html.ComparisonHtml;

/** Where a comparison is written. The files are written whole beside their places and then moved there. */
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
        List.of(before, after).forEach(site -> OutFolder.refuseInside(folder, site, "the comparison"));
        OutFolder.ready(folder);
        return new ComparisonFolder(folder);
    }

    void write(ComparisonReport report) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put("comparison.html", bytes(ComparisonHtml.write(report)));
        files.put("comparison.json", bytes(ComparisonJson.write(report)));
        files.put("comparison.txt", bytes(ComparisonText.write(report)));
        try {
            WholeFiles.put(folder, files);
        } catch (IOException e) {
            throw new UnusableInput(
                    Place.of(folder.toString()),
                    "the comparison could not be written (" + e + "); make room, or name another folder with --out");
        }
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
