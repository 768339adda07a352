package org.fallrule.hydraulics.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.fallrule.document.Excerpt;
import org.fallrule.document.Fault;
import org.fallrule.document.Keys;
import org.fallrule.document.Node;
import org.fallrule.document.UnusableInput;
import org.fallrule.document.Yaml;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.UnreadableQuantity;
import org.fallrule.measure.Written;

/** Keys with values in a table's file; a value that is missing or cannot be read is refused with its line. */
final class DataFile {
    private final Node.Mapping mapping;

    DataFile(Node.Mapping mapping) {
        this.mapping = mapping;
    }

    /** A table that comes with the program. */
    static DataFile shipped(String name) {
        String file = name + ".yaml";
        try (InputStream in = Objects.requireNonNull(DataFile.class.getResourceAsStream(file), file)) {
            return new DataFile(Yaml.parse(new String(in.readAllBytes(), StandardCharsets.UTF_8), file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    List<DataFile> rows(String key) {
        List<Fault> faults = new ArrayList<>();
        List<DataFile> rows = new ArrayList<>();
        for (Node item : new Keys(mapping, faults).list(key)) {
            if (!(item instanceof Node.Mapping row)) {
                throw new UnusableInput(item.place(), key + ": found " + item.kind() + ", wanted keys with values");
            }
            rows.add(new DataFile(row));
        }
        return rows;
    }

    Optional<String> find(String key) {
        return refusing(keys -> keys.text(key));
    }

    String text(String key) {
        return find(key).orElseThrow(() -> missing(key));
    }

    /** The kind of quantity that is named. */
    Dimension dimension(String key) {
        String name = text(key);
        return Arrays.stream(Dimension.values())
                .filter(dimension -> dimension.word().equals(name))
                .findFirst()
                .orElseThrow(() -> new UnusableInput(
                        mapping.placeOf(key),
                        key + ": found \"" + Excerpt.of(name) + "\", wanted one of "
                                + Arrays.stream(Dimension.values())
                                        .map(Dimension::word)
                                        .collect(Collectors.joining(", "))));
    }

    /** A quantity with its unit. */
    Quantity quantity(String key, Dimension dimension) {
        return findQuantity(key, dimension).orElseThrow(() -> missing(key));
    }

    Optional<Quantity> findQuantity(String key, Dimension dimension) {
        return find(key).map(text -> read(key, text, dimension));
    }

    private Quantity read(String key, String text, Dimension dimension) {
        try {
            return Written.parse(text, dimension).quantity();
        } catch (UnreadableQuantity e) {
            throw new UnusableInput(mapping.placeOf(key), key + ": " + e.getMessage());
        }
    }

    private UnusableInput missing(String key) {
        return new UnusableInput(mapping.place(), "the key " + key + " is missing");
    }

    private <T> T refusing(Function<Keys, T> read) {
        List<Fault> faults = new ArrayList<>();
        T value = read.apply(new Keys(mapping, faults));
        if (!faults.isEmpty()) {
            throw new UnusableInput(faults);
        }
        return value;
    }
}
