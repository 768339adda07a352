package org.fallrule.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.Map;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.report.docket.Docket;
import org.fallrule.report.docket.DocketCsv;
import org.fallrule.report.docket.DocketJson;
import org.fallrule.report.html.DocketHtml;

/** Writes the index of many sites: each file whole beside its place and then moved there. */
final class IndexFolder {
    static final String PAGE = "index.html";

    private IndexFolder() {}

    /**
     * Writes it.
     *
     * @param report the file in each report's folder that the page leads to
     * @param unfinished where the files are made, on the same disk
     * @throws UnusableInput when it cannot be written; each file is then either the old one or the new
     */
    static void write(Docket docket, String report, Path folder, Path unfinished) {
        Map<String, String> files = new LinkedHashMap<>();
        files.put("index.json", DocketJson.write(docket));
        files.put("index.csv", DocketCsv.write(docket));
        files.put(PAGE, DocketHtml.write(docket, report));
        try {
            for (Map.Entry<String, String> file : files.entrySet()) {
                Path fresh = Files.writeString(unfinished.resolve(file.getKey()), file.getValue());
                Files.move(fresh, folder.resolve(file.getKey()), StandardCopyOption.REPLACE_EXISTING);
            }
        } catch (IOException e) {
            throw new UnusableInput(Place.of(folder.toString()), "the index could not be written: " + e);
        }
    }
}
