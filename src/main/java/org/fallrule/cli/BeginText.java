package org.fallrule.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.fallrule.intake.Draft;
import org.fallrule.intake.DraftLayer;
import org.fallrule.intake.Statement;
import org.fallrule.intake.Sureness;
import org.fallrule.report.text.Wrapped;

/** What was taken for what, how sure that is, and what is open, in 80 columns. */
final class BeginText {
    private static final int WIDTH = 79;
    private static final int INDENT = 25;

    private final StringBuilder text = new StringBuilder();

    private BeginText() {}

    static String write(Draft draft, Path folder) {
        BeginText text = new BeginText();
        text.layers(draft);
        text.list(
                "Could not be read",
                draft.unreadable().stream().map(Object::toString).toList());
        text.list("Good to know", draft.told());
        List<String> open = open(draft);
        text.list(open.isEmpty() ? "" : "Open, each a line with \"ask:\" in site.yaml", open);
        text.list(
                "Open in the profile, each a line with \"ask:\" there",
                draft.profileOpen().stream().map(Object::toString).toList());
        text.para("\n" + draft.answered() + " of " + draft.asked() + " questions answered. Written to "
                + folder.resolve("site.yaml") + "; look it through, then: fallrule check "
                + quoted(folder.toString()));
        return text.text.toString();
    }

    /** A path as a shell takes it for one word. */
    private static String quoted(String path) {
        return path.matches("[\\p{L}\\p{N}_./:\\\\-]+") ? path : '"' + path + '"';
    }

    private void layers(Draft draft) {
        for (DraftLayer layer : draft.layers()) {
            List<String> lines = new ArrayList<>(
                    Wrapped.lines(layer.source() + ": " + layer.counted() + ", " + layer.because(), WIDTH - INDENT));
            columns(layer).forEach(line -> lines.addAll(Wrapped.lines(line, WIDTH - INDENT)));
            String start = String.format(
                    "%-15s%-10s", layer.role().word(), layer.sureness().spoken());
            for (String line : lines) {
                text.append(start).append(line).append('\n');
                start = " ".repeat(INDENT);
            }
        }
    }

    private static List<String> columns(DraftLayer layer) {
        List<String> lines = new ArrayList<>();
        for (Sureness sureness : List.of(Sureness.CERTAIN, Sureness.LIKELY)) {
            String fields = layer.fields().stream()
                    .filter(line -> line.sureness() == sureness && !line.value().isEmpty())
                    .map(line -> line.key() + " is " + line.value() + remark(line))
                    .collect(Collectors.joining(", "));
            if (!fields.isEmpty()) {
                lines.add(sureness.spoken() + ": " + fields);
            }
        }
        return lines;
    }

    private static String remark(Statement line) {
        boolean says = !line.remark().isEmpty()
                && !line.remark().equals(line.sureness().spoken());
        return says ? " (" + line.remark() + ")" : "";
    }

    private static List<String> open(Draft draft) {
        List<String> open = new ArrayList<>();
        draft.open().forEach(question -> open.add(question.question()));
        draft.crs().ifPresent(line -> add(open, "", line));
        add(open, "", draft.datum());
        draft.units().forEach(line -> add(open, "unit of ", line));
        draft.survey().forEach(line -> add(open, "", line));
        add(open, "", draft.absent());
        draft.layers().forEach(layer -> {
            String of = "layer " + layer.role().word() + ", ";
            layer.fields().forEach(line -> add(open, of + "the column of ", line));
            layer.values()
                    .forEach((name, lines) ->
                            lines.forEach(line -> add(open, of + "the meaning of " + name + " ", line)));
            layer.all().forEach(line -> add(open, of + "of all its features, ", line));
        });
        return open;
    }

    private static void add(List<String> open, String of, Statement line) {
        if (line.sureness() == Sureness.ASKS) {
            open.add(of + line.key() + ": " + line.remark());
        }
    }

    private void list(String title, List<String> items) {
        if (items.isEmpty()) {
            return;
        }
        text.append('\n').append(title).append(":\n");
        for (String item : items) {
            String start = "- ";
            for (String line : Wrapped.lines(item, WIDTH - 2)) {
                text.append(start).append(line).append('\n');
                start = "  ";
            }
        }
    }

    private void para(String words) {
        text.append(words.startsWith("\n") ? "\n" : "");
        Wrapped.lines(words, WIDTH).forEach(line -> text.append(line).append('\n'));
    }
}
