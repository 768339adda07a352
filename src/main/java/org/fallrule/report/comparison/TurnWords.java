package org.fallrule.report.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.fallrule.comparison.Change;
import org.fallrule.comparison.Comparison;
import org.fallrule.comparison.FindingChange;
import org.fallrule.report.Sentence;

/** What has become of the findings, in one line: {@code New: pipe-cover of pipe P-3. Gone: frost of inlet CB-1.} */
public final class TurnWords {
    private static final int NAMED = 3;

    private TurnWords() {}

    public static String of(Comparison comparison) {
        List<String> parts = new ArrayList<>();
        for (Change change : List.of(Change.NEW, Change.WORSE, Change.BETTER, Change.GONE)) {
            List<FindingChange> changes = comparison.with(change);
            if (!changes.isEmpty()) {
                String word = change.word();
                parts.add(word.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + word.substring(1) + ": "
                        + named(changes) + ".");
            }
        }
        return parts.isEmpty() ? "Findings as they were." : String.join(" ", parts);
    }

    private static String named(List<FindingChange> changes) {
        String first = changes.stream()
                .limit(NAMED)
                .map(change -> change.shown().rule() + " of "
                        + Sentence.about(change.shown().observation()))
                .collect(Collectors.joining(", "));
        return changes.size() > NAMED ? first + " and " + (changes.size() - NAMED) + " more" : first;
    }
}
