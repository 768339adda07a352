package org.fallrule.reader;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.fallrule.document.Fault;
import org.fallrule.document.Keys;
import org.fallrule.document.Nearest;
import org.fallrule.document.Node;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Unit;
import org.fallrule.site.Attribute;
import org.fallrule.site.Role;

/** Reads the units that bare numbers stand in: by attribute, or {@code elevation} for every elevation and Z. */
final class UnitsReader {
    private final List<Fault> faults;

    UnitsReader(List<Fault> faults) {
        this.faults = faults;
    }

    /** The units under {@code units}. A blank says nothing. */
    Map<String, Unit> units(Keys keys) {
        Map<String, Unit> units = new LinkedHashMap<>();
        keys.texts("units").forEach((name, word) -> unit(name, word).ifPresent(unit -> units.put(name, unit)));
        return units;
    }

    /** The units of a layer, which may say that of its elevations under {@code unit} for short. */
    Map<String, Unit> ofLayer(Role role, Keys keys) {
        Map<String, Unit> units = units(keys);
        String elevation = Attribute.ELEVATION.name();
        if (Attribute.of(role).contains(Attribute.ELEVATION)) {
            keys.scalar("unit").flatMap(word -> unit(elevation, word)).ifPresent(unit -> units.put(elevation, unit));
        }
        return units;
    }

    private Optional<Unit> unit(String name, Node.Scalar word) {
        Optional<Dimension> dimension = Attribute.named(name).flatMap(Attribute::dimension);
        if (dimension.isEmpty()) {
            faults.add(new Fault(
                    word.place(),
                    "units: " + name + " is not a quantity" + Nearest.hint(name, measured()) + " Known: "
                            + String.join(", ", measured())));
            return Optional.empty();
        }
        if (word.blank()) {
            return Optional.empty();
        }
        Optional<Unit> unit = Unit.named(word.text(), dimension.get());
        if (unit.isEmpty()) {
            faults.add(new Fault(
                    word.place(),
                    "unknown unit " + word.text() + " of " + name + "; use " + Unit.symbolsOf(dimension.get())));
        }
        return unit;
    }

    private static Set<String> measured() {
        Set<String> names = new TreeSet<>();
        Attribute.all().stream()
                .filter(attribute -> attribute.dimension().isPresent())
                .forEach(attribute -> names.add(attribute.name()));
        return names;
    }
}
