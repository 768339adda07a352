package org.fallrule.bookshelf;

import java.util.List;
import java.util.Optional;
import org.fallrule.document.Node;
import org.fallrule.report.text.Wrapped;
import org.fallrule.rulebook.LayeredBook;
import org.fallrule.rulebook.RuleHistory;

/** The rules that apply, as text of 80 columns: every value with the line that set it, and what it overrode. */
public final class BookText {
    private static final int WIDTH = 80;

    private final StringBuilder text = new StringBuilder();

    private BookText() {}

    /** All rules, or the one of an id; dropped rules with their reason. */
    public static String of(LayeredBook book, Optional<String> rule) {
        BookText page = new BookText();
        if (rule.isEmpty()) {
            page.head(book);
        }
        BookPages.rules(book, rule).forEach(page::rule);
        return page.text.toString();
    }

    private void head(LayeredBook book) {
        for (LayeredBook.Page page : book.pages()) {
            line("", page.source().title());
            line(
                    "  ",
                    page.layer() + ", " + page.source().file()
                            + (page.inForce().on(book.day())
                                    ? ""
                                    : "; " + page.inForce().spoken() + ", not applied on " + book.day()));
        }
        book.pages().stream()
                .filter(page -> page.inForce().on(book.day()))
                .forEach(page -> page.place().entries().forEach(this::place));
        blank();
    }

    private void place(String key, Node node) {
        blank();
        line("", "Place: " + key);
        if (node instanceof Node.Mapping mapping) {
            mapping.entries().forEach((name, value) -> value("  ", name, value));
        } else {
            value("  ", key, node);
        }
    }

    private void rule(RulePage rule) {
        line("", rule.id());
        line("  ", rule.title());
        rule.dropped()
                .ifPresent(entry -> line(
                        "  ",
                        "DROPPED in " + entry.place().fileAndLine()
                                + entry.text("reason").map(why -> ": " + why).orElse("")));
        for (RulePage.Key key : rule.keys()) {
            value("  ", key.name(), key.now());
            key.was()
                    .forEach(node -> line(
                            "      ",
                            "overrides " + PlainValue.line(node) + "  ["
                                    + node.place().fileAndLine() + "]"));
        }
        rule.asleep().forEach(this::asleep);
        blank();
    }

    private void asleep(RuleHistory.Entry entry) {
        String says = entry.keys().entries().entrySet().stream()
                .filter(key -> !key.getKey().equals("effective"))
                .map(key -> key.getKey() + " " + PlainValue.line(key.getValue()))
                .reduce((one, other) -> one + "; " + other)
                .orElse("nothing");
        line(
                "  ",
                "not applied, " + entry.inForce().spoken() + ": " + says + "  ["
                        + entry.place().fileAndLine() + "]");
    }

    private void value(String indent, String key, Node node) {
        List<PlainValue> values = PlainValue.of(node);
        if (values.size() == 1) {
            line(indent, key + ": " + placed(values.get(0)));
            return;
        }
        line(indent, key + ":");
        values.forEach(each -> line(indent + "  ", placed(each)));
    }

    private static String placed(PlainValue value) {
        return value.text() + "  [" + value.place().fileAndLine() + "]";
    }

    private void line(String indent, String words) {
        String next = indent;
        for (String each : Wrapped.lines(words, WIDTH - indent.length() - 2)) {
            text.append(next).append(each).append('\n');
            next = indent + "  ";
        }
    }

    private void blank() {
        text.append('\n');
    }
}
