package org.fallrule.document;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Takes the keys of a mapping one by one, gathers what is wrong with them, and at the end refuses those that nobody asked for.
 */
public final class Keys {
    private final Node.Mapping mapping;
    private final List<Fault> faults;
    private final Set<String> asked = new LinkedHashSet<>();

    public Keys(Node.Mapping mapping, List<Fault> faults) {
        this.mapping = mapping;
        this.faults = faults;
    }

    public Node.Mapping mapping() {
        return mapping;
    }

    /** The keys that were asked for so far, in that order. */
    public Set<String> asked() {
        return Collections.unmodifiableSet(asked);
    }

    /** The value under a key, if there is one. A key with nothing or an empty text after it says nothing. */
    public Optional<Node> node(String key) {
        asked.add(key);
        return mapping.get(key).filter(node -> !saysNothing(node));
    }

    /** The single value under a key; a list or mapping there is a fault. */
    public Optional<Node.Scalar> scalar(String key) {
        return node(key).flatMap(node -> {
            if (node instanceof Node.Scalar scalar) {
                return Optional.of(scalar);
            }
            fault(node.place(), key + ": found " + node.kind() + ", wanted a single value");
            return Optional.empty();
        });
    }

    public Optional<String> text(String key) {
        return scalar(key).map(Node.Scalar::text);
    }

    /** The single value under a key that must be there. */
    public Optional<Node.Scalar> required(String key, String wanted) {
        if (node(key).isEmpty()) {
            fault(mapping.place(), "the key " + key + " is missing; give " + wanted);
        }
        return scalar(key);
    }

    /** The mapping under a key. */
    public Optional<Node.Mapping> mapping(String key) {
        return node(key).flatMap(node -> {
            if (node instanceof Node.Mapping found) {
                return Optional.of(found);
            }
            fault(node.place(), key + ": found " + node.kind() + ", wanted keys with values");
            return Optional.empty();
        });
    }

    /** The items under a key: a list, or a single value taken as a list of one. */
    public List<Node> list(String key) {
        return node(key)
                .map(node -> node instanceof Node.Sequence sequence ? sequence.items() : List.of(node))
                .orElse(List.of());
    }

    /** The single values listed under a key. */
    public List<Node.Scalar> scalars(String key) {
        List<Node.Scalar> values = new ArrayList<>();
        for (Node item : list(key)) {
            if (item instanceof Node.Scalar scalar && !saysNothing(scalar)) {
                values.add(scalar);
            } else {
                fault(item.place(), key + ": found " + item.kind() + ", wanted single values");
            }
        }
        return values;
    }

    /** The texts under a key that holds keys with single values, in the order written. */
    public Map<String, Node.Scalar> texts(String key) {
        Map<String, Node.Scalar> texts = new LinkedHashMap<>();
        mapping(key)
                .ifPresent(inner -> inner.entries().forEach((name, node) -> {
                    if (node instanceof Node.Scalar scalar) {
                        texts.put(name, scalar);
                    } else {
                        fault(node.place(), key + ": " + name + ": found " + node.kind() + ", wanted a single value");
                    }
                }));
        return texts;
    }

    /** Refuses every key that was not asked for, each with its place and the nearest key that is known. */
    public void refuseOthers(String what) {
        mapping.entries().keySet().stream()
                .filter(key -> !asked.contains(key))
                .forEach(key -> fault(
                        mapping.placeOf(key),
                        "unknown key " + Excerpt.of(key) + " in " + what + Nearest.hint(key, asked) + " Known: "
                                + String.join(", ", asked)));
    }

    private static boolean saysNothing(Node node) {
        return node instanceof Node.Scalar scalar && scalar.blank();
    }

    public void fault(Place where, String says) {
        faults.add(new Fault(where, says));
    }
}
