package org.fallrule.reader;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.fallrule.document.Node;
import org.fallrule.document.Yaml;
import org.fallrule.site.Role;

/**
 * The words that offices and field crews use for layers, columns, codes and values, from {@code trade-words.yaml}: data, so that a
 * word is added without code.
 */
public final class OfficeWords {
    private static final String FILE = "trade-words.yaml";

    private OfficeWords() {}

    /** The role that a word for a layer stands for; nothing where it is not known, or may stand for several. */
    static Optional<Role> role(String word) {
        String plain = word.toLowerCase(Locale.ROOT).replaceAll("[ _-]", "");
        return ((Node.Mapping) file().get("layers").orElseThrow())
                .entries().entrySet().stream()
                        .filter(entry -> List.of(entry.getKey().split(" ", -1)).contains(plain))
                        .flatMap(entry -> role(entry.getValue()).stream())
                        .findFirst();
    }

    /** {@code walk}; {@code utility gas}; of a list of meanings none is sure. */
    private static Optional<Role> role(Node meaning) {
        return meaning instanceof Node.Scalar one
                ? Arrays.stream(one.text().split(" ", -1)).findFirst().flatMap(Role::named)
                : Optional.empty();
    }

    /** All of them, under {@code layers}, {@code columns} and so on; read anew each time, as a run asks once or on a fault. */
    public static Node.Mapping file() {
        try (InputStream in = Objects.requireNonNull(OfficeWords.class.getResourceAsStream(FILE), FILE)) {
            return Yaml.parse(new String(in.readAllBytes(), StandardCharsets.UTF_8), FILE);
        } catch (IOException e) {
            throw new UncheckedIOException("The words that come with the program cannot be read", e);
        }
    }
}
