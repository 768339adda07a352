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

/** What offices call the layers of a role: the words by which the names of loose layers are guessed too. */
final class OfficeWords {
    private static final String FILE = "/org/fallrule/intake/trade-words.yaml";

    private OfficeWords() {}

    /** The role that a word stands for; nothing where it is not known, or may stand for several. */
    static Optional<Role> role(String word) {
        String plain = word.toLowerCase(Locale.ROOT).replaceAll("[ _-]", "");
        return layers().entries().entrySet().stream()
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

    /** Read anew each time: only a fault asks for it. */
    private static Node.Mapping layers() {
        try (InputStream in = Objects.requireNonNull(OfficeWords.class.getResourceAsStream(FILE), FILE)) {
            Node.Mapping file = Yaml.parse(new String(in.readAllBytes(), StandardCharsets.UTF_8), FILE);
            return (Node.Mapping) file.get("layers").orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException("The words that come with the program cannot be read", e);
        }
    }
}
