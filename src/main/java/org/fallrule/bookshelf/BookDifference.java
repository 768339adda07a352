package org.fallrule.bookshelf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fallrule.document.Node;
import org.fallrule.report.text.Wrapped;
import org.fallrule.rulebook.LayeredBook;

/** Two counties side by side, as a table of 80 columns. */
public final class BookDifference {
    private static final int FIRST = 22;
    private static final int OTHER = 27;
    /** Keys whose difference is none to a plan. */
    private static final Set<String> ABOUT = Set.of("basis", "title", "loosen_because");

    private final boolean all;
    private final StringBuilder text = new StringBuilder();

    private BookDifference(boolean all) {
        this.all = all;
    }

    /**
     * The table.
     *
     * @param all whether to print what is the same, too
     */
    public static String of(String oneName, LayeredBook one, String otherName, LayeredBook other, boolean all) {
        BookDifference table = new BookDifference(all);
        table.row("", oneName, otherName);
        table.text.append("-".repeat(FIRST + OTHER + OTHER + 4)).append('\n');
        int before = table.text.length();
        table.compare("the place", places(one), places(other));
        Map<String, RulePage> rulesOfOne = rules(one);
        Map<String, RulePage> rulesOfOther = rules(other);
        Set<String> ids = new LinkedHashSet<>(rulesOfOne.keySet());
        ids.addAll(rulesOfOther.keySet());
        ids.forEach(id ->
                table.compare(id, Optional.ofNullable(rulesOfOne.get(id)), Optional.ofNullable(rulesOfOther.get(id))));
        if (table.text.length() == before) {
            table.text.append("They ask the same.\n");
        }
        return table.text.toString();
    }

    private static Map<String, RulePage> rules(LayeredBook book) {
        Map<String, RulePage> rules = new LinkedHashMap<>();
        book.histories().stream().map(RulePage::of).forEach(page -> rules.put(page.id(), page));
        return rules;
    }

    private static Map<String, String> places(LayeredBook book) {
        Map<String, String> places = new LinkedHashMap<>();
        book.pages().stream()
                .filter(page -> page.inForce().on(book.day()))
                .forEach(page -> page.place().entries().forEach((key, node) -> {
                    if (node instanceof Node.Mapping mapping) {
                        mapping.entries()
                                .forEach((name, value) -> places.put(key + " " + name, PlainValue.line(value)));
                    } else {
                        places.put(key, PlainValue.line(node));
                    }
                }));
        return places;
    }

    private void compare(String id, Optional<RulePage> one, Optional<RulePage> other) {
        if (one.filter(RulePage::applies).isPresent()
                && other.filter(RulePage::applies).isPresent()) {
            compare(id, keys(one.get()), keys(other.get()));
        } else if (all || applies(one) != applies(other)) {
            row(id, standing(one), standing(other));
        }
    }

    private static boolean applies(Optional<RulePage> page) {
        return page.filter(RulePage::applies).isPresent();
    }

    private static String standing(Optional<RulePage> page) {
        if (page.isEmpty()) {
            return "no such rule";
        }
        if (page.get().applies()) {
            return page.get()
                    .now("at_least")
                    .or(() -> page.get().now("at_most"))
                    .map(node -> "asked: " + PlainValue.line(node))
                    .orElse("asked");
        }
        return page.get()
                .dropped()
                .map(entry ->
                        "dropped" + entry.text("reason").map(why -> ": " + why).orElse(""))
                .orElse("not in force");
    }

    private static Map<String, String> keys(RulePage page) {
        Map<String, String> keys = new LinkedHashMap<>();
        for (RulePage.Key key : page.keys()) {
            Node now = key.now();
            keys.put(key.name(), PlainValue.line(now));
        }
        return keys;
    }

    private void compare(String id, Map<String, String> one, Map<String, String> other) {
        Set<String> names = new LinkedHashSet<>(one.keySet());
        names.addAll(other.keySet());
        List<String> shown = new ArrayList<>();
        for (String name : names) {
            boolean same = one.getOrDefault(name, "").equals(other.getOrDefault(name, ""));
            if (all || (!same && !ABOUT.contains(name))) {
                shown.add(name);
            }
        }
        if (shown.isEmpty()) {
            return;
        }
        text.append(id).append('\n');
        shown.forEach(name -> row("  " + name, one.getOrDefault(name, "-"), other.getOrDefault(name, "-")));
    }

    private void row(String first, String one, String other) {
        boolean indented = first.startsWith("  ");
        List<String> firsts = Wrapped.lines(first, FIRST - (indented ? 2 : 0));
        List<String> ones = Wrapped.lines(one, OTHER);
        List<String> others = Wrapped.lines(other, OTHER);
        for (int i = 0; i < Math.max(firsts.size(), Math.max(ones.size(), others.size())); i++) {
            String line = (indented ? "  " : "")
                    + cell(firsts, i, FIRST - (indented ? 2 : 0))
                    + "  "
                    + cell(ones, i, OTHER)
                    + "  "
                    + cell(others, i, OTHER);
            text.append(line.stripTrailing()).append('\n');
        }
    }

    private static String cell(List<String> lines, int i, int width) {
        String words = i < lines.size() ? lines.get(i) : "";
        return words + " ".repeat(Math.max(0, width - words.length()));
    }
}
