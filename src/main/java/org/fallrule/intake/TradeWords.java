package org.fallrule.intake;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fallrule.document.Node;
import org.fallrule.reader.OfficeWords;
import org.fallrule.site.Attribute;

/** What the words of {@link OfficeWords} stand for. */
final class TradeWords {
    private final Map<String, List<Meaning>> layers;
    private final Map<String, List<Meaning>> codes;
    private final Map<String, List<Meaning>> colors;
    private final Set<String> colorColumns = new HashSet<>();
    private final Node.Mapping columns;
    private final Map<String, Map<String, String>> values = new HashMap<>();

    private TradeWords(Node.Mapping file) {
        layers = meanings(mapping(file, "layers"));
        codes = meanings(mapping(file, "codes"));
        Node.Mapping ofColors = mapping(file, "colors");
        colors = meanings(mapping(ofColors, "meanings"));
        ((Node.Sequence) ofColors.get("columns").orElseThrow()).items().forEach(name -> colorColumns.add(text(name)));
        columns = mapping(file, "columns");
        mapping(file, "values").entries().forEach((attribute, words) -> {
            Map<String, String> known = new HashMap<>();
            ((Node.Mapping) words)
                    .entries()
                    .forEach((names, word) ->
                            List.of(names.split(" ", -1)).forEach(name -> known.put(name, text(word))));
            values.put(attribute, known);
        });
    }

    static TradeWords load() {
        return new TradeWords(OfficeWords.file());
    }

    private static Node.Mapping mapping(Node.Mapping file, String key) {
        return (Node.Mapping)
                file.get(key).orElseThrow(() -> new IllegalStateException("the trade's words have no " + key));
    }

    private static String text(Node node) {
        return ((Node.Scalar) node).text();
    }

    private static Map<String, List<Meaning>> meanings(Node.Mapping section) {
        Map<String, List<Meaning>> all = new HashMap<>();
        section.entries().forEach((words, node) -> {
            List<Node> items = node instanceof Node.Sequence several ? several.items() : List.of(node);
            List<Meaning> meanings =
                    items.stream().map(item -> Meaning.of(text(item))).toList();
            for (String word : words.split(" ", -1)) {
                all.merge(plain(word), meanings, (one, other) -> {
                    throw new IllegalStateException("the trade's words have " + word + " twice");
                });
            }
        });
        return all;
    }

    /** What a word in the name of a layer may stand for; nothing when it is not known. */
    List<Meaning> layer(String word) {
        return layers.getOrDefault(plain(word), List.of());
    }

    /** What a code may stand for. A size with it, as in {@code TREE 24"}, does not matter. */
    List<Meaning> code(String code) {
        List<Meaning> whole = codes.getOrDefault(plain(code), List.of());
        return whole.isEmpty() ? SizedCode.of(code).map(this::code).orElse(List.of()) : whole;
    }

    private List<Meaning> code(SizedCode sized) {
        List<Meaning> whole = codes.getOrDefault(plain(sized.code()), List.of());
        return whole.isEmpty() ? codes.getOrDefault(plain(sized.firstWord()), List.of()) : whole;
    }

    /** Whether a column may hold the colors that utilities are marked in. */
    boolean isOfColors(String column) {
        return colorColumns.contains(plain(column));
    }

    /** What is marked in a color. */
    List<Meaning> color(String color) {
        return colors.getOrDefault(plain(color), List.of());
    }

    /** More names that a column of an attribute goes by, likeliest first. */
    List<String> columns(Attribute<?> attribute) {
        return columns(attribute, "likely");
    }

    /** Names of columns that may hold an attribute, but are asked about. */
    List<String> askedColumns(Attribute<?> attribute) {
        return columns(attribute, "asks");
    }

    private List<String> columns(Attribute<?> attribute, String key) {
        List<String> names = new ArrayList<>();
        columns.get(attribute.name())
                .flatMap(said -> ((Node.Mapping) said).get(key))
                .ifPresent(list -> ((Node.Sequence) list).items().forEach(name -> names.add(text(name))));
        return names;
    }

    /** The word that a value of an attribute stands for. */
    Optional<String> value(Attribute<?> attribute, String raw) {
        return Optional.ofNullable(
                values.getOrDefault(attribute.name(), Map.of()).get(plain(raw)));
    }

    static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[_\\s-]", "");
    }
}
