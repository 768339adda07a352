package org.fallrule.cli;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.file.Path;
import org.fallrule.ChangedSample;
import org.fallrule.Fuzzed;
import org.fallrule.FuzzedFolder;

/** The whole command: a report or a refusal comes of any folder, never a breakdown. */
class CheckFuzzTest {
    private static final String[] SAMPLES = {"quillfeather-8", "thistledown-3", "plumb-line-1", "maple-court-2"};

    @FuzzTest
    void anyFolderIsCheckedOrRefused(byte[] bytes) {
        checked(FuzzedFolder.of("check/any", bytes), bytes.length % 8 == 7, "none");
    }

    @FuzzTest
    void anyChangedSampleIsCheckedOrRefused(FuzzedDataProvider data) {
        Path sample = Path.of("sample-sites", data.pickValue(SAMPLES));
        boolean whole = data.consumeInt(0, 7) == 7;
        String remedies = data.consumeInt(0, 15) == 15 ? "each" : "none";
        checked(FuzzedFolder.of("check/changed", ChangedSample.of(sample, data)), whole, remedies);
    }

    /** @param whole whether every kind of report is written, which takes long */
    private static void checked(Path folder, boolean whole, String remedies) {
        RanWell.must(Ran.check(
                "--rules",
                "rules",
                "--county",
                "larkmoor",
                "--remedies",
                remedies,
                "--format",
                whole ? "text,json,geojson,csv,html,pdf,svg,sections" : "json,svg",
                "--out",
                Fuzzed.path("reports"),
                folder));
    }
}
