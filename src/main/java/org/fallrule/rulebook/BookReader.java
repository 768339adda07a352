package org.fallrule.rulebook;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fallrule.document.Fault;
import org.fallrule.document.Keys;
import org.fallrule.document.Node;
import org.fallrule.document.Place;
import org.fallrule.document.Yaml;
import org.fallrule.locality.Locality;

/** Reads one rule book file. */
final class BookReader {
    /** Keys at the top of a book that are about the book. */
    private static final Set<String> ABOUT =
            Set.of("title", "builds_on", "effective", "loosen_because", "checklist", "rules");

    private final List<Fault> faults;

    BookReader(List<Fault> faults) {
        this.faults = faults;
    }

    BookFile read(Path path, String shownAs, BookFile.Layer layer) {
        String text = Yaml.text(path, shownAs);
        Keys keys = new Keys(Yaml.parse(text, shownAs), faults);
        String title = keys.required("title", "the book's title")
                .map(Node.Scalar::text)
                .orElse(shownAs);
        Optional<Node.Scalar> buildsOn = keys.scalar("builds_on");
        if (layer == BookFile.Layer.HOUSE) {
            buildsOn.ifPresent(on -> faults.add(new Fault(
                    on.place(), "a house book is laid over whatever county is asked for; leave builds_on out")));
        }
        InForce inForce = InForce.read(keys, faults);
        Node.Mapping place = place(keys.mapping());
        Locality locality = new LocalityReader(faults).read(keys);
        AsBuiltTolerances asBuilt = keys.mapping(AsBuiltReader.KEY)
                .map(mapping -> new AsBuiltReader(faults).read(mapping))
                .orElse(AsBuiltTolerances.UNSAID);
        if (layer == BookFile.Layer.HOUSE) {
            guardPlace(keys, place, locality);
        }
        Map<String, Node.Mapping> rules = new LinkedHashMap<>();
        Map<String, Place> places = new LinkedHashMap<>();
        keys.mapping("rules")
                .ifPresent(all -> all.entries().forEach((id, node) -> {
                    places.put(id, all.placeOf(id));
                    rule(id, node).ifPresent(rule -> rules.put(id, rule));
                }));
        Optional<Node.Mapping> checklist = keys.mapping("checklist");
        keys.refuseOthers("a rule book");
        return new BookFile(
                layer,
                shownAs,
                title,
                sha256(text),
                buildsOn,
                inForce,
                locality,
                asBuilt,
                place,
                checklist,
                rules,
                places);
    }

    /** Rules rest on what a place is like, so a house book that changes it must say why; two of its tables have guards of their own. */
    private void guardPlace(Keys keys, Node.Mapping place, Locality locality) {
        if (keys.text("loosen_because").isEmpty() && !locality.equals(Locality.UNSAID)) {
            place.entries().keySet().stream()
                    .filter(key -> !key.equals(AsBuiltReader.KEY) && !key.equals(UtilityTables.MARKS))
                    .forEach(key -> keys.fault(
                            place.placeOf(key),
                            key
                                    + " is the county's to say, and rules rest on it; leave it out of the house book, or say"
                                    + " loosen_because: \"…\" at its top"));
        }
    }

    /** What a book says of its place and of the work as built: every key at its top that is not about the book itself. */
    private static Node.Mapping place(Node.Mapping book) {
        Map<String, Node> entries = new LinkedHashMap<>(book.entries());
        entries.keySet().removeAll(ABOUT);
        return new Node.Mapping(book.place(), entries, book.keyPlaces());
    }

    private Optional<Node.Mapping> rule(String id, Node node) {
        if (node instanceof Node.Mapping mapping) {
            return Optional.of(mapping);
        }
        faults.add(new Fault(node.place(), "rule " + id + ": found " + node.kind() + ", wanted keys with values"));
        return Optional.empty();
    }

    /** The digest of a file by its text: read strictly as UTF-8, the text has the bytes of the file. */
    private static String sha256(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
