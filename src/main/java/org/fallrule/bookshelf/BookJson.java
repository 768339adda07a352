package org.fallrule.bookshelf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.document.JsonWriter;
import org.fallrule.document.Node;
import org.fallrule.document.Place;
import org.fallrule.rulebook.LayeredBook;
import org.fallrule.rulebook.RuleHistory;

/** The facts of {@link BookText} as JSON, {@code fallrule-rules/1}. */
public final class BookJson {
    private BookJson() {}

    public static String of(LayeredBook book, Optional<String> rule) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("format", "fallrule-rules/1");
        tree.put("day", book.day().toString());
        tree.put(
                "rule_books",
                book.pages().stream().map(page -> page(page, book)).toList());
        tree.put(
                "rules",
                BookPages.rules(book, rule).stream().map(BookJson::rule).toList());
        return JsonWriter.write(tree);
    }

    private static Map<String, Object> page(LayeredBook.Page page, LayeredBook book) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("file", page.source().file());
        tree.put("title", page.source().title());
        tree.put("layer", page.layer());
        tree.put("sha256", page.source().sha256());
        tree.put("in_force", page.inForce().on(book.day()));
        List<Object> place = new ArrayList<>();
        page.place().entries().forEach((key, node) -> {
            if (node instanceof Node.Mapping mapping) {
                mapping.entries().forEach((name, value) -> place.add(value(key + "." + name, value)));
            } else {
                place.add(value(key, node));
            }
        });
        tree.put("place", place);
        return tree;
    }

    private static Map<String, Object> rule(RulePage rule) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("rule", rule.id());
        tree.put("title", rule.title());
        tree.put("applies", rule.applies());
        rule.dropped().ifPresent(entry -> {
            Map<String, Object> dropped = set("", entry.place());
            dropped.remove("value");
            dropped.put("reason", entry.text("reason").orElse(""));
            tree.put("dropped", dropped);
        });
        tree.put("keys", rule.keys().stream().map(BookJson::key).toList());
        if (!rule.asleep().isEmpty()) {
            tree.put(
                    "not_in_force", rule.asleep().stream().map(BookJson::asleep).toList());
        }
        return tree;
    }

    private static Map<String, Object> asleep(RuleHistory.Entry entry) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("says", entry.inForce().spoken());
        tree.put("set_by", entry.place().fileAndLine());
        return tree;
    }

    private static Map<String, Object> key(RulePage.Key key) {
        Map<String, Object> tree = value(key.name(), key.now());
        if (!key.was().isEmpty()) {
            tree.put(
                    "overrides",
                    key.was().stream()
                            .map(node -> set(PlainValue.line(node), node.place()))
                            .toList());
        }
        return tree;
    }

    private static Map<String, Object> value(String key, Node node) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("key", key);
        tree.put(
                "values",
                PlainValue.of(node).stream()
                        .map(each -> set(each.text(), each.place()))
                        .toList());
        return tree;
    }

    private static Map<String, Object> set(String text, Place place) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("value", text);
        tree.put("set_by", place.fileAndLine());
        return tree;
    }
}
