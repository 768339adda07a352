package org.fallrule.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.report.docket.Docket;
import org.fallrule.report.docket.DocketCsv;
import org.fallrule.report.docket.DocketJson;
import org.fallrule.report.html.DocketHtml;

/** Writes the index of many sites: all files whole beside their places and then moved there. */
final class IndexFolder {
    static final String PAGE = "index.html";

    private IndexFolder() {}

    /**
     * Writes it.
     *
     * @param report the file in each report's folder that the page leads to
     * @param unfinished where the files are made, on the same disk
     * @throws UnusableInput when it cannot be written; the old files then stay
     */
    static void write(Docket docket, String report, Path folder, Path unfinished) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put("index.json", bytes(DocketJson.write(docket)));
        files.put("index.csv", bytes(DocketCsv.write(docket)));
        files.put(PAGE, bytes(DocketHtml.write(docket, report)));
        try {
            WholeFiles.put(folder, unfinished, files);
        } catch (IOException e) {
            throw new UnusableInput(
                    Place.of(folder.toString()),
                    "the index could not be written (" + e + "); make room, or name another --out");
        }
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
