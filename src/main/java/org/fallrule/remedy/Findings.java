package org.fallrule.remedy;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Measured;
import org.fallrule.finding.Outcome;
import org.fallrule.finding.Weight;

/** The findings of a review by what they are about, and whether those of a changed plan are worse. */
final class Findings {
    private final Map<Subject, Finding> worst = new HashMap<>();

    Findings(List<Finding> findings) {
        findings.stream()
                .filter(finding -> finding.weight() != Weight.NOTE)
                .forEach(finding ->
                        worst.merge(Subject.of(finding), finding, (one, other) -> isWorse(one, other) ? other : one));
    }

    /** How bad an outcome is: what fails is worse than what cannot be told, and that than what is borderline. */
    static int badness(Outcome outcome) {
        return switch (outcome) {
            case FAILS -> 3;
            case CANNOT_TELL -> 2;
            case BORDERLINE -> 1;
            case MEETS, NOT_APPLICABLE, WAIVED -> 0;
        };
    }

    /** The first of the findings, those that fail first, that is worse than it was here, or is open and was not here at all. */
    Optional<Finding> firstWorse(List<Finding> after) {
        return new Findings(after)
                .worst.values().stream()
                        .filter(Findings::isOpen)
                        .filter(finding -> Optional.ofNullable(worst.get(Subject.of(finding)))
                                .map(before -> isWorse(before, finding))
                                .orElse(true))
                        .min(Comparator.comparing(Finding::weight)
                                .thenComparing(finding -> -badness(finding.outcome()))
                                .thenComparing(Finding::rule)
                                .thenComparing(finding -> Subject.of(finding).subject()));
    }

    static boolean isOpen(Finding finding) {
        return finding.outcome().isOpen();
    }

    /** Whether a finding has got worse: its outcome, or by how much it misses its limit where it missed it before. */
    static boolean isWorse(Finding before, Finding after) {
        int more = badness(after.outcome()) - badness(before.outcome());
        return more > 0 || (more == 0 && isOpen(after) && shortfall(after) > shortfall(before) + tolerance(after));
    }

    private static double tolerance(Finding finding) {
        return finding.observation()
                .measured()
                .map(measured -> measured.value().dimension().tolerance())
                .orElse(0.0);
    }

    private static double shortfall(Finding finding) {
        Optional<Measured> measured = finding.observation().measured();
        return measured.flatMap(Measured::limit)
                .map(limit -> Math.max(0, limit.shortfall(measured.orElseThrow().value())))
                .orElse(0.0);
    }
}
