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

    /** What the two kinds of feet are; said once wherever the survey foot is asked for or written. */
    static void explain(Ledger ledger) {
        ledger.tellOnce(
                "ft is the international foot of 0.3048 m; ft_us is the US survey foot of 1200/3937 m, 2 millionths"
                        + " longer, in which many state plane coordinates are. In a height of 500 ft the two differ by 0.001 ft");
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
            boolean twoFeet = choices.contains(Unit.SURVEY_FOOT.symbol());
            String asks = "the unit of " + key.replace('_', ' ') + "s"
                    + (twoFeet ? " (ft_us is the US survey foot)" : "") + ": " + some;
            if (twoFeet) {
                explain(ledger);
            }
            units.add(ledger.ask(Question.choice("units." + key, asks, choices))
                    .map(answer -> Statement.certain(key, answer))
                    .orElseGet(() -> Statement.open(key, String.join(", ", choices) + "? " + some)));
        });
        return units;
    }
}
