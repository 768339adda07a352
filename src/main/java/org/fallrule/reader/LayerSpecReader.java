package org.fallrule.reader;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.document.Fault;
import org.fallrule.document.Keys;
import org.fallrule.document.Nearest;
import org.fallrule.document.Node;
import org.fallrule.document.UnusableInput;
import org.fallrule.filter.Ecql;
import org.fallrule.filter.Filter;
import org.fallrule.measure.Unit;
import org.fallrule.site.Attribute;
import org.fallrule.site.Role;

/** Reads what site.yaml says of layers. */
final class LayerSpecReader {
    private final List<Fault> faults;

    private final LayerProfile profile;

    LayerSpecReader(List<Fault> faults) {
        this(faults, LayerProfile.NONE);
    }

    /** @param profile what layers take that do not say themselves */
    LayerSpecReader(List<Fault> faults, LayerProfile profile) {
        this.faults = faults;
        this.profile = profile;
    }

    List<LayerSpec> layers(Node.Mapping layers) {
        List<LayerSpec> specs = new ArrayList<>();
        layers.entries().forEach((word, node) -> {
            Optional<Role> role = RoleWord.read(word, layers.placeOf(word), faults);
            role.ifPresent(known -> each(node)
                    .forEach(one -> layer(known, profile.applied(known, one)).ifPresent(specs::add)));
        });
        refuseRastersBesideOthers(specs);
        return specs;
    }

    /** Of two grounds neither is known to be the right one. What is graded by hand over a proposed raster is meant to lie over it. */
    private void refuseRastersBesideOthers(List<LayerSpec> specs) {
        for (LayerSpec raster : specs) {
            long others = specs.stream()
                    .filter(spec -> !spec.equals(raster) && spec.role() == raster.role())
                    .filter(spec -> spec.role() != Role.PROPOSED_GROUND || GroundRasters.isOne(spec))
                    .count();
            if (GroundRasters.isOne(raster) && others > 0) {
                faults.add(new Fault(
                        raster.place(),
                        raster.role().word() + " is given by " + raster.file() + " and by another file; keep one"));
            }
        }
    }

    /** A role may come from several files. */
    private static List<Node> each(Node node) {
        return node instanceof Node.Sequence several && !several.items().isEmpty() ? several.items() : List.of(node);
    }

    Optional<LayerSpec> layer(Role role, Node node) {
        if (node instanceof Node.Scalar file && !file.text().isBlank()) {
            return Optional.of(LayerSpec.plain(role, file.text(), file.place()));
        }
        if (node instanceof Node.Mapping mapping) {
            return keyed(role, mapping);
        }
        faults.add(new Fault(node.place(), role.word() + ": found " + found(node) + ", wanted a file's name"));
        return Optional.empty();
    }

    private Optional<LayerSpec> keyed(Role role, Node.Mapping mapping) {
        Keys keys = new Keys(mapping, faults);
        Optional<Node.Scalar> file = keys.required("file", "the layer's file");
        Optional<Node.Scalar> table = keys.scalar("table");
        Optional<Node.Scalar> crs = keys.scalar("crs");
        Optional<Node.Scalar> datum = keys.scalar("datum");
        Map<Attribute<?>, Node.Scalar> fields = attributes(role, keys, "fields");
        Map<Attribute<?>, Node.Scalar> all = attributes(role, keys, "all");
        all.values().removeIf(Node.Scalar::blank);
        Map<String, Unit> units = new UnitsReader(faults).ofLayer(role, keys);
        Map<Attribute<?>, Map<String, String>> values = values(role, keys);
        Optional<Node.Scalar> where = keys.scalar("where");
        Filter filter = where.map(this::filter).orElse(new Filter.Always());
        keys.refuseOthers("the layer " + role.word());
        return file.map(name -> new LayerSpec(
                role,
                name.text(),
                table,
                crs,
                datum,
                fields,
                units,
                values,
                all,
                filter,
                where.map(Node.Scalar::text).orElse(""),
                name.place()));
    }

    private static String found(Node node) {
        return node instanceof Node.Scalar ? "nothing" : node.kind();
    }

    private Filter filter(Node.Scalar where) {
        try {
            return Ecql.parse(where.text(), where.place());
        } catch (UnusableInput e) {
            faults.addAll(e.faults());
            return new Filter.Always();
        }
    }

    private Map<Attribute<?>, Node.Scalar> attributes(Role role, Keys keys, String key) {
        Map<Attribute<?>, Node.Scalar> found = new LinkedHashMap<>();
        keys.texts(key)
                .forEach(
                        (name, text) -> attribute(role, name, text).ifPresent(attribute -> found.put(attribute, text)));
        return found;
    }

    private Optional<Attribute<?>> attribute(Role role, String name, Node at) {
        Optional<Attribute<?>> attribute = Attribute.named(name).filter(Attribute.of(role)::contains);
        if (attribute.isEmpty()) {
            List<String> known =
                    Attribute.of(role).stream().map(Attribute::name).toList();
            faults.add(new Fault(
                    at.place(),
                    "a " + role.spoken() + " has no attribute " + name + Nearest.hint(name, known) + " Known: "
                            + String.join(", ", known)));
        }
        return attribute;
    }

    private Map<Attribute<?>, Map<String, String>> values(Role role, Keys keys) {
        Map<Attribute<?>, Map<String, String>> values = new LinkedHashMap<>();
        keys.mapping("values").ifPresent(all -> {
            Keys inner = new Keys(all, faults);
            all.entries()
                    .forEach((name, node) -> attribute(role, name, node).ifPresent(attribute -> {
                        Map<String, String> words = new LinkedHashMap<>();
                        inner.texts(name).forEach((raw, word) -> words.put(raw, word.text()));
                        values.put(attribute, words);
                    }));
        });
        return values;
    }
}
