package org.fallrule.bookshelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fallrule.document.Node;
import org.fallrule.document.Place;

/**
 * A value of a rule book in plain words, as far as one line of the book set it.
 *
 * @param text the words: {@code 12 in when above = 'walk'}
 * @param place the line
 */
record PlainValue(String text, Place place) {

    /** The values that stand under a key: one, or one for each case of a list. */
    static List<PlainValue> of(Node node) {
        if (node instanceof Node.Sequence list) {
            List<PlainValue> all = new ArrayList<>();
            list.items().forEach(item -> all.add(new PlainValue(words(item), item.place())));
            return all;
        }
        return List.of(new PlainValue(words(node), node.place()));
    }

    /** All of what stands under a key, on one line. */
    static String line(Node node) {
        return of(node).stream().map(PlainValue::text).collect(Collectors.joining("; "));
    }

    private static String words(Node node) {
        if (node instanceof Node.Scalar scalar) {
            return scalar.blank() ? "nothing" : scalar.text().strip();
        }
        if (node instanceof Node.Sequence list) {
            return list.items().stream().map(PlainValue::words).collect(Collectors.joining(", "));
        }
        Node.Mapping mapping = (Node.Mapping) node;
        Optional<Node> is = mapping.get("is");
        if (is.isPresent()) {
            return words(is.get())
                    + mapping.get("when").map(when -> " when " + words(when)).orElse("");
        }
        return mapping.entries().entrySet().stream()
                .map(entry -> entry.getKey() + " " + words(entry.getValue()))
                .collect(Collectors.joining(", "));
    }
}
