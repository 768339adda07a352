package org.fallrule.report;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fallrule.finding.Finding;
import org.fallrule.remedy.JointChange;
import org.fallrule.remedy.Remedied;

/** Puts into words what would pass. */
public final class RemedyWords {
    private RemedyWords() {}

    /** What would pass a finding, or why nothing does, as one fact; nothing for a finding that needs none. */
    public static Optional<Fact> of(Report report, Finding finding) {
        return report.remedies().of(finding).map(RemedyWords::fact);
    }

    private static Fact fact(Remedied remedied) {
        String name = switch (remedied.kind()) {
            case PROVED -> "would pass";
            case TRADE_OFF -> "trade-off";
            case NONE -> "no remedy";
        };
        return new Fact(name, sentence(remedied.says()));
    }

    /** The same in one line: {@code Would pass: lower the outfall invert by 0.18 ft.} */
    public static Optional<String> line(Report report, Finding finding) {
        return of(report, finding).map(fact -> sentence(fact.name()).replace(".", ": ") + plain(fact.value()));
    }

    /** A clause as a sentence. */
    private static String sentence(String clause) {
        return clause.substring(0, 1).toUpperCase(Locale.ROOT)
                + clause.substring(1)
                + (clause.endsWith(".") ? "" : ".");
    }

    private static String plain(String sentence) {
        return sentence.substring(0, 1).toLowerCase(Locale.ROOT) + sentence.substring(1);
    }

    /** What passes together: {@code These 3 changes together let 5 of 13 failing findings pass, 4 of them binding.} */
    public static String joint(JointChange joint) {
        return "These " + joint.changes().size() + " changes together let "
                + joint.passed().size() + " of "
                + joint.failing() + " failing findings pass, " + joint.binding()
                + " of them binding, and make none worse.";
    }

    /** The changes of a joint change in one sentence. */
    public static String jointChanges(JointChange joint) {
        return sentence(String.join("; ", joint.changes()));
    }

    /** The findings that a joint change lets pass: {@code pipe-least-slope (pipe P-2)}. */
    public static List<String> passed(JointChange joint) {
        return joint.passed().stream()
                .map(finding -> finding.rule() + " (" + Sentence.about(finding.observation()) + ")")
                .toList();
    }

    /** All of a joint change as one fact. */
    public static Optional<Fact> jointFact(Report report) {
        return report.remedies()
                .joint()
                .map(joint -> new Fact(
                        "would pass together",
                        joint(joint) + " " + jointChanges(joint) + " Then these meet: "
                                + passed(joint).stream().collect(Collectors.joining(", ")) + "."));
    }
}
