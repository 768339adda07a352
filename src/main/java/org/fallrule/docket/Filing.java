package org.fallrule.docket;

import java.nio.file.Path;
import java.util.Map;
import org.fallrule.report.Report;

/** Where the reports of a run go, and in what forms. */
public interface Filing {
    /** The output folder. */
    Path folder();

    /** A report's files, by their names. */
    Map<String, byte[]> files(Report report);

    /**
     * Writes a report's files whole into a folder of their own, in place of the report that is there.
     *
     * @param name the folder's name
     * @throws org.fallrule.document.UnusableInput when it cannot be written; then nothing is changed
     */
    void put(String name, Map<String, byte[]> files);
}
