package org.fallrule.bookshelf;

import java.util.List;
import org.fallrule.document.Fault;
import org.fallrule.report.text.Wrapped;

/** How the proof of a book, or of the map of counties, came out, as text of 80 columns. */
public final class ProofText {
    private static final int WIDTH = 78;

    private ProofText() {}

    public static String of(BookProof proof) {
        StringBuilder text = new StringBuilder();
        long missed = proof.examples().stream().filter(each -> !each.holds()).count();
        text.append(proof.file()).append('\n');
        lines(text, "  ", summary(proof, missed));
        proof.faults().forEach(fault -> lines(text, "  ", fault.toString()));
        for (Example.Held example : proof.examples()) {
            lines(text, "  ", (example.holds() ? "holds   " : "MISSED  ") + example.name());
            for (Fault miss : example.misses()) {
                lines(text, "            ", miss.toString());
            }
        }
        return text.toString();
    }

    public static String of(MapProof proof) {
        StringBuilder text = new StringBuilder(proof.file()).append('\n');
        if (proof.usable()) {
            lines(text, "  ", "no faults; the map of " + String.join(", ", proof.counties()));
        }
        proof.faults().forEach(fault -> lines(text, "  ", fault.toString()));
        return text.toString();
    }

    private static String summary(BookProof proof, long missed) {
        int examples = proof.examples().size();
        String faults = switch (proof.faults().size()) {
            case 0 -> "no faults, " + proof.rules() + " rules";
            case 1 -> "1 fault";
            default -> proof.faults().size() + " faults";
        };
        if (examples == 0) {
            return faults + "; no examples were run"
                    + (proof.usable() ? ": write some beside it, in a file that ends in .examples.yaml" : "");
        }
        return faults + "; " + examples + (examples == 1 ? " example, " : " examples, ")
                + (missed == 0 ? "all as expected" : missed + " otherwise than expected");
    }

    private static void lines(StringBuilder text, String indent, String words) {
        List<String> lines = Wrapped.lines(words, WIDTH - indent.length());
        for (int i = 0; i < lines.size(); i++) {
            text.append(indent).append(i == 0 ? "" : "  ").append(lines.get(i)).append('\n');
        }
    }
}
