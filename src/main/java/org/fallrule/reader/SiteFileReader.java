package org.fallrule.reader;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.document.Fault;
import org.fallrule.document.Keys;
import org.fallrule.document.Node;
import org.fallrule.document.Place;
import org.fallrule.document.Yaml;
import org.fallrule.locality.Storm;
import org.fallrule.locality.StormReader;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Length;
import org.fallrule.measure.Unit;
import org.fallrule.measure.UnreadableQuantity;
import org.fallrule.measure.Written;
import org.fallrule.site.Role;
import org.fallrule.site.Survey;
import org.fallrule.site.Waiver;

/** Reads site.yaml. Gathers every fault in it. */
final class SiteFileReader {
    private final List<Fault> faults;

    SiteFileReader(List<Fault> faults) {
        this.faults = faults;
    }

    /**
     * Reads it.
     *
     * @param folder the site folder
     */
    SiteFile read(String text, Path folder, String shownAs) {
        Keys keys = new Keys(Yaml.parse(text, shownAs), faults);
        Optional<String> name = keys.text("site");
        Optional<Node.Scalar> county = keys.scalar("county");
        Optional<Node.Scalar> house = keys.scalar("house");
        Optional<Node.Scalar> crs = keys.scalar("crs");
        Optional<String> datum = keys.text("datum");
        Optional<Node.Scalar> from = keys.scalar(ProfileFile.KEY);
        LayerProfile profile = ProfileFile.read(folder, from, faults);
        LayerSpecReader layerReader = new LayerSpecReader(faults, profile);
        Map<String, Unit> units = new LinkedHashMap<>(profile.units());
        units.putAll(new UnitsReader(faults).units(keys));
        Survey survey = keys.mapping("survey").map(this::survey).orElse(Survey.UNKNOWN);
        Map<Role, Place> absent = absent(keys);
        List<LayerSpec> layers = keys.mapping("layers").map(layerReader::layers).orElse(List.of());
        List<Waiver> waivers = waivers(keys);
        Storm storm = keys.mapping("storm").map(this::storm).orElse(Storm.UNSAID);
        keys.refuseOthers("site.yaml");
        refuseAbsent(layers, absent, faults);
        return new SiteFile(name, county, house, crs, datum, units, survey, absent, layers, waivers, storm, from);
    }

    /** Refuses layers of roles that are stated absent. */
    static void refuseAbsent(List<LayerSpec> layers, Map<Role, Place> absent, List<Fault> faults) {
        for (LayerSpec layer : layers) {
            if (absent.containsKey(layer.role())) {
                faults.add(new Fault(
                        layer.place(),
                        layer.role().word() + " is stated absent and given as a layer; keep one of the two"));
            }
        }
    }

    Map<Role, Place> absent(Keys keys) {
        Map<Role, Place> absent = new EnumMap<>(Role.class);
        for (Node.Scalar word : keys.scalars("absent")) {
            RoleWord.read(word, faults).ifPresent(role -> absent.put(role, word.place()));
        }
        return absent;
    }

    Survey survey(Node.Mapping mapping) {
        Keys keys = new Keys(mapping, faults);
        Optional<LocalDate> date = keys.scalar("date").flatMap(this::date);
        Optional<String> source = keys.text("source");
        Optional<Length> horizontal = keys.scalar("horizontal_accuracy").flatMap(this::length);
        Optional<Length> vertical = keys.scalar("vertical_accuracy").flatMap(this::length);
        keys.refuseOthers("survey");
        return new Survey(date, source, horizontal, vertical);
    }

    /** The rain that the site states for itself; its basis is one line of text. */
    Storm storm(Node.Mapping mapping) {
        return new StormReader(faults, this::line).read(mapping);
    }

    private Optional<String> line(Node node) {
        if (node instanceof Node.Scalar scalar) {
            return Optional.of(scalar.text());
        }
        faults.add(new Fault(
                node.place(), "basis: found " + node.kind() + ", wanted one line that says who gives these figures"));
        return Optional.empty();
    }

    private List<Waiver> waivers(Keys keys) {
        List<Waiver> waivers = new ArrayList<>();
        for (Node node : keys.list("waivers")) {
            if (node instanceof Node.Mapping mapping) {
                waiver(mapping).ifPresent(waivers::add);
            } else {
                faults.add(new Fault(node.place(), "waivers: found " + node.kind() + ", wanted keys with values"));
            }
        }
        return waivers;
    }

    private Optional<Waiver> waiver(Node.Mapping mapping) {
        Keys keys = new Keys(mapping, faults);
        Optional<Node.Scalar> rule = keys.required("rule", "the id of the rule that is waived");
        Optional<String> feature = keys.text("feature");
        Optional<Node.Scalar> by = keys.required("by", "who granted it");
        Optional<LocalDate> date = keys.required("date", "the day it was granted, such as 2026-06-01")
                .flatMap(this::date);
        Optional<Node.Scalar> reason = keys.required("reason", "why it was granted");
        Optional<LocalDate> until = keys.scalar("until").flatMap(this::date);
        keys.refuseOthers("a waiver");
        if (rule.isEmpty() || by.isEmpty() || date.isEmpty() || reason.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Waiver(
                rule.get().text(),
                feature,
                by.get().text(),
                date.get(),
                reason.get().text(),
                until,
                mapping.place()));
    }

    private Optional<LocalDate> date(Node.Scalar scalar) {
        try {
            return Optional.of(LocalDate.parse(scalar.text()));
        } catch (DateTimeParseException e) {
            faults.add(new Fault(scalar.place(), scalar.kind() + " is not a date; write it like 2026-06-01"));
            return Optional.empty();
        }
    }

    private Optional<Length> length(Node.Scalar scalar) {
        try {
            double metres =
                    Written.parse(scalar.text(), Dimension.LENGTH).quantity().si();
            if (metres < 0) {
                faults.add(new Fault(scalar.place(), scalar.kind() + " is negative; an accuracy is zero or more"));
            }
            return Optional.of(new Length(metres));
        } catch (UnreadableQuantity e) {
            faults.add(new Fault(scalar.place(), e.says()));
            return Optional.empty();
        }
    }
}
