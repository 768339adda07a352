package org.fallrule.rulebook;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Optional;
import org.fallrule.Fuzzed;

/** A made-up book: as a baseline, and as a county's over a short one. */
class RuleLibraryFuzzTest {
    private static final LocalDate DAY = LocalDate.of(2026, 6, 1);
    private static final String BASELINE = """
            title: A baseline
            rules:
              walk-setback:
                check: clearance
                from: outfall
                to: walk
                at_least: 5 ft
                weight: must
                basis: {kind: practice, document: none}
            """;

    @FuzzTest
    void anyBaselineIsReadOrRefused(byte[] bytes) {
        RuleLibrary library =
                new RuleLibrary(Fuzzed.file("rules/baseline.yaml", bytes).resolveSibling(""), "rules");
        Fuzzed.readOrRefuse(() -> library.baseline(Optional.empty(), DAY).book());
    }

    @FuzzTest
    void anyCountysBookIsReadOrRefused(byte[] bytes) {
        Fuzzed.file("layered/baseline.yaml", BASELINE.getBytes(StandardCharsets.UTF_8));
        RuleLibrary library = new RuleLibrary(Fuzzed.path("layered"), "rules");
        Fuzzed.file("layered/counties/larkmoor.yaml", bytes);
        Fuzzed.readOrRefuse(() -> library.load("larkmoor", Optional.empty(), DAY));
    }
}
