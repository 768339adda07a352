package org.fallrule.rulebook;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.document.Fault;
import org.fallrule.document.Keys;
import org.fallrule.document.Node;
import org.fallrule.document.Place;
import org.fallrule.finding.Basis;
import org.fallrule.locality.ExpectedCover;
import org.fallrule.locality.MarkAccuracy;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Length;
import org.fallrule.measure.Written;

/** Reads what a rule book says of utilities apart from its rules: how well marks are known, how deep each kind lies. */
final class UtilityTables {
    /** Says how well marks are known. */
    static final String MARKS = "mark_accuracy";

    private static final List<String> QUALITIES = List.of("A", "B", "C", "D");
    private static final List<String> KINDS = List.of(
            "gas",
            "electric",
            "communication",
            "water_main",
            "water_service",
            "sanitary",
            "reclaimed",
            "irrigation",
            "storm",
            "lighting",
            "propane");
    private static final List<String> SURFACES = List.of("lawn", "walk", "drive", "street");

    private final List<Fault> faults;
    private final ValueReader values;

    UtilityTables(List<Fault> faults) {
        this.faults = faults;
        this.values = new ValueReader(faults);
    }

    MarkAccuracy accuracy(Node.Mapping mapping) {
        Keys keys = new Keys(mapping, faults);
        Map<String, MarkAccuracy.Known> rows = new LinkedHashMap<>();
        for (String quality : QUALITIES) {
            keys.mapping(quality).ifPresent(row -> {
                Keys of = new Keys(row, faults);
                of.required("horizontal", "within how much of the mark the line lies in plan");
                Optional<Written> horizontal = length(of, "horizontal");
                Optional<Written> vertical = length(of, "vertical");
                Place place = mapping.placeOf(quality);
                rows.put(
                        quality,
                        new MarkAccuracy.Known(
                                horizontal, vertical, basis(of, place, MARKS + " of " + quality), place));
                of.refuseOthers(MARKS);
            });
        }
        keys.refuseOthers(MARKS);
        return new MarkAccuracy(rows);
    }

    ExpectedCover cover(Node.Mapping mapping) {
        Keys keys = new Keys(mapping, faults);
        Map<String, ExpectedCover.Kind> rows = new LinkedHashMap<>();
        for (String kind : KINDS) {
            keys.mapping(kind).ifPresent(row -> {
                Keys of = new Keys(row, faults);
                Place place = mapping.placeOf(kind);
                Map<String, ExpectedCover.Band> under =
                        of.mapping("under").map(this::under).orElse(Map.of());
                String basis = basis(of, place, "expected_cover of " + kind);
                band(of, place).ifPresent(usual -> rows.put(kind, new ExpectedCover.Kind(usual, under, basis, place)));
                of.refuseOthers("expected_cover");
            });
        }
        keys.refuseOthers("expected_cover");
        return new ExpectedCover(rows);
    }

    private Map<String, ExpectedCover.Band> under(Node.Mapping mapping) {
        Keys keys = new Keys(mapping, faults);
        Map<String, ExpectedCover.Band> bands = new LinkedHashMap<>();
        for (String surface : SURFACES) {
            keys.mapping(surface).ifPresent(row -> {
                Keys of = new Keys(row, faults);
                band(of, mapping.placeOf(surface)).ifPresent(band -> bands.put(surface, band));
                of.refuseOthers("under");
            });
        }
        keys.refuseOthers("under");
        return bands;
    }

    private Optional<ExpectedCover.Band> band(Keys keys, Place place) {
        Optional<Length> from = required(keys, "from");
        Optional<Length> to = required(keys, "to");
        if (from.isPresent() && to.isPresent() && from.get().compareTo(to.get()) > 0) {
            faults.add(new Fault(place, "from is deeper than to; give the least cover first"));
            return Optional.empty();
        }
        return from.flatMap(least -> to.map(greatest -> new ExpectedCover.Band(least, greatest)));
    }

    private Optional<Length> required(Keys keys, String key) {
        return keys.required(key, "a cover such as 24 in")
                .flatMap(text -> values.written(text, Dimension.LENGTH))
                .map(written -> new Length(written.quantity().si()));
    }

    private Optional<Written> length(Keys keys, String key) {
        return keys.scalar(key).flatMap(text -> values.written(text, Dimension.LENGTH));
    }

    /** What a figure rests on, which is to be said here as in a rule: {@code common practice}, {@code ASCE 38-22}. */
    private String basis(Keys keys, Place place, String what) {
        return new BasisReader(faults)
                .required(keys, place, what)
                .map(UtilityTables::spoken)
                .orElse("");
    }

    private static String spoken(Basis basis) {
        if (basis.kind() == Basis.Kind.PRACTICE) {
            return "common practice";
        }
        return basis.document().orElse("")
                + basis.section().map(section -> " " + section).orElse("");
    }
}
