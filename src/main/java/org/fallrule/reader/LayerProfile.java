package org.fallrule.reader;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.fallrule.document.Fault;
import org.fallrule.document.Keys;
import org.fallrule.document.Node;
import org.fallrule.document.Place;
import org.fallrule.measure.Unit;
import org.fallrule.site.Role;

/**
 * What a firm says once of the layers that its collector or office writes, for all of its sites: columns, units, values and
 * conditions, by role and by the name of the file. A site's own words count before it. It cannot build on another profile.
 */
public final class LayerProfile {
    /** A profile that says nothing. */
    static final LayerProfile NONE = new LayerProfile(Map.of(), List.of());

    private static final String FILE = "file";

    private final Map<String, Unit> units;
    private final List<Entry> entries;

    private LayerProfile(Map<String, Unit> units, List<Entry> entries) {
        this.units = Map.copyOf(units);
        this.entries = List.copyOf(entries);
    }

    /**
     * What it says of layers of a role.
     *
     * @param role the role
     * @param files the files it speaks of, such as {@code *.csv}; empty for every file
     * @param spec what it says, as of a layer
     * @param says the same as written
     */
    record Entry(Role role, Optional<String> files, LayerSpec spec, Node.Mapping says) {

        boolean speaksOf(String file) {
            return files.map(pattern -> matches(pattern, file)).orElse(true);
        }

        /** Whether a name is of a pattern's form, {@code *} for any letters and {@code ?} for one; capitals do not matter. */
        private static boolean matches(String pattern, String file) {
            String regex = Pattern.compile("[^*?]+")
                    .matcher(pattern)
                    .replaceAll(text -> java.util.regex.Matcher.quoteReplacement(Pattern.quote(text.group())))
                    .replace("*", ".*")
                    .replace("?", ".");
            Pattern form = Pattern.compile(regex, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE | Pattern.DOTALL);
            String name = file.substring(file.lastIndexOf('/') + 1);
            return form.matcher(file).matches() || form.matcher(name).matches();
        }
    }

    /** Reads a profile. Gathers every fault in it, each with its line there. */
    static LayerProfile of(Node.Mapping document, List<Fault> faults) {
        Keys keys = new Keys(document, faults);
        keys.text("title");
        LayerSpecReader reader = new LayerSpecReader(faults);
        Map<String, Unit> units = new UnitsReader(faults).units(keys);
        List<Entry> entries = new ArrayList<>();
        keys.mapping("layers")
                .ifPresent(layers -> layers.entries().forEach((word, node) -> {
                    Optional<Role> role = Role.named(word);
                    if (role.isEmpty()) {
                        faults.add(new Fault(layers.placeOf(word), "unknown role " + word + RoleWord.hint(word)));
                    }
                    role.ifPresent(known -> entries(known, node, reader, faults).forEach(entries::add));
                }));
        keys.refuseOthers("a profile of layers");
        return new LayerProfile(units, entries);
    }

    private static List<Entry> entries(Role role, Node node, LayerSpecReader reader, List<Fault> faults) {
        List<Entry> entries = new ArrayList<>();
        for (Node one : node instanceof Node.Sequence several ? several.items() : List.of(node)) {
            if (one instanceof Node.Mapping mapping) {
                Optional<String> files = mapping.get(FILE)
                        .filter(Node.Scalar.class::isInstance)
                        .map(pattern -> ((Node.Scalar) pattern).text());
                Node.Mapping whole = files.isPresent() ? mapping : withFile(mapping, "*");
                reader.layer(role, whole).ifPresent(spec -> entries.add(new Entry(role, files, spec, mapping)));
            } else {
                faults.add(new Fault(
                        one.place(), role.word() + ": found " + one.kind() + ", wanted keys such as fields and units"));
            }
        }
        return entries;
    }

    private static Node.Mapping withFile(Node.Mapping mapping, String file) {
        return mapping.overlaid(new Node.Mapping(
                mapping.place(), Map.of(FILE, new Node.Scalar(mapping.place(), file, false)), Map.of()));
    }

    /** The units of bare numbers, where the site says none. */
    Map<String, Unit> units() {
        return units;
    }

    /** What it says of layers, in the order written. */
    List<Entry> entries() {
        return entries;
    }

    /** What site.yaml says of a layer, with what the profile says of such layers under it. */
    Node applied(Role role, Node layer) {
        Optional<String> file = file(layer);
        if (file.isEmpty()) {
            return layer;
        }
        Node.Mapping own = layer instanceof Node.Mapping mapping
                ? mapping
                : new Node.Mapping(layer.place(), Map.of(FILE, layer), Map.of(FILE, layer.place()));
        Node.Mapping taken = Node.Mapping.empty(own.place());
        for (boolean named : new boolean[] {false, true}) {
            for (Entry entry : entries) {
                if (entry.role() == role && entry.files().isPresent() == named && entry.speaksOf(file.get())) {
                    taken = over(taken, entry.says());
                }
            }
        }
        return taken.entries().isEmpty() ? layer : over(withoutUnit(taken, own), own);
    }

    private static Optional<String> file(Node layer) {
        Optional<Node> file = layer instanceof Node.Mapping mapping ? mapping.get(FILE) : Optional.of(layer);
        return file.filter(node -> node instanceof Node.Scalar scalar && !scalar.blank())
                .map(node -> ((Node.Scalar) node).text());
    }

    /** Without {@code unit}, the short form of the unit of elevations, where the site says it the long way. */
    private static Node.Mapping withoutUnit(Node.Mapping taken, Node.Mapping own) {
        boolean says = own.get("units")
                .filter(units -> units instanceof Node.Mapping mapping
                        && mapping.get("elevation").isPresent())
                .isPresent();
        if (!says || taken.get("unit").isEmpty()) {
            return taken;
        }
        Map<String, Node> rest = new LinkedHashMap<>(taken.entries());
        rest.remove("unit");
        return new Node.Mapping(taken.place(), rest, taken.keyPlaces());
    }

    /** One laid over another, key by key and inside of keys too; what says nothing covers nothing. */
    private static Node.Mapping over(Node.Mapping under, Node.Mapping over) {
        Map<String, Node> merged = new LinkedHashMap<>();
        Map<String, Place> places = new LinkedHashMap<>();
        over.entries().forEach((key, node) -> {
            boolean silent = node instanceof Node.Scalar scalar && scalar.blank();
            Optional<Node> below = under.get(key);
            if (!silent || below.isEmpty()) {
                merged.put(
                        key,
                        node instanceof Node.Mapping mine && below.orElse(mine) instanceof Node.Mapping theirs
                                ? over(theirs, mine)
                                : node);
                places.put(key, over.placeOf(key));
            }
        });
        Node.Mapping laid = under.overlaid(new Node.Mapping(over.place(), merged, places));
        return new Node.Mapping(over.place(), laid.entries(), laid.keyPlaces());
    }
}
