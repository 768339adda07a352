package org.fallrule.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Unit;
import org.fallrule.site.Attribute;

/** The quantities whose numbers have no unit anywhere. A unit is never guessed from the size of a number. */
final class UnitNeeds {
    private static final int SHOWN = 2;

    private final Map<String, List<String>> columns = new LinkedHashMap<>();

    /** What site.yaml calls the unit of an attribute's bare numbers: kinds of elevations, diameters and depths share one. */
    static String key(Attribute<?> attribute) {
        if (attribute.dimension().equals(Optional.of(Dimension.ELEVATION))) {
            return Attribute.ELEVATION.name();
        }
        if (attribute == Attribute.OUTSIDE_DIAMETER) {
            return Attribute.DIAMETER.name();
        }
        boolean isDepth = attribute == Attribute.DEPTH_UP || attribute == Attribute.DEPTH_DOWN;
        return isDepth ? Attribute.DEPTH.name() : attribute.name();
    }

    /** @param column the column, where it is, and some of its numbers */
    void add(String key, String column) {
        columns.computeIfAbsent(key, any -> new ArrayList<>()).add(column);
    }

    /** A line under {@code units} for each, answered or open. */
    List<Statement> settled(Ledger ledger) {
        List<Statement> units = new ArrayList<>();
        columns.forEach((key, found) -> {
            Dimension dimension =
                    Attribute.named(key).flatMap(Attribute::dimension).orElseThrow();
            List<String> choices = Arrays.stream(Unit.values())
                    .filter(unit -> unit.dimension() == dimension)
                    .map(Unit::symbol)
                    .toList();
            String some = String.join("; ", found.stream().limit(SHOWN).toList()) + (found.size() > SHOWN ? "; …" : "");
            String asks = "the unit of " + key.replace('_', ' ') + "s: " + some;
            units.add(ledger.ask(Question.choice("units." + key, asks, choices))
                    .map(answer -> Statement.certain(key, answer))
                    .orElseGet(() -> Statement.open(key, String.join(", ", choices) + "? " + some)));
        });
        return units;
    }
}
