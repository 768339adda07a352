package org.fallrule.site;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.Unit;

/**
 * An attribute as a filter names it. A word or flag goes by its own name; a quantity by its name and a unit, such as
 * {@code diameter_in} or {@code rim_ft}, so that a bare number in a filter always has a unit.
 *
 * @param attribute what is named
 * @param unit the unit that numbers stand in, for a quantity
 */
public record AttributeName(Attribute<?> attribute, Optional<Unit> unit) {

    /** Resolves a name from a filter. */
    public static Optional<AttributeName> parse(String name) {
        Optional<Attribute<?>> plain =
                Attribute.named(name).filter(a -> a.dimension().isEmpty());
        return plain.map(a -> new AttributeName(a, Optional.empty())).or(() -> withUnit(name));
    }

    private static Optional<AttributeName> withUnit(String name) {
        return Arrays.stream(Unit.values())
                .filter(unit -> name.endsWith("_" + unit.symbol()))
                .flatMap(unit -> Attribute.named(
                                name.substring(0, name.length() - unit.symbol().length() - 1))
                        .stream()
                        .filter(a -> a.dimension().equals(Optional.of(unit.dimension())))
                        .map(a -> new AttributeName(a, Optional.of(unit))))
                .findFirst();
    }

    /** The value that a filter compares: a {@link String}, a {@link Boolean}, or a {@link Double} in {@link #unit}. */
    public Optional<Object> in(Attributes attributes) {
        return attributes
                .get(attribute)
                .map(value -> value instanceof Quantity quantity ? (Object) quantity.in(unit.orElseThrow()) : value);
    }

    /** Every name that a filter may use, for messages and completion. */
    public static List<String> all() {
        List<String> names = new ArrayList<>();
        for (Attribute<?> attribute : Attribute.all()) {
            if (attribute.dimension().isEmpty()) {
                names.add(attribute.name());
            }
            attribute
                    .dimension()
                    .ifPresent(dimension -> Arrays.stream(Unit.values())
                            .filter(unit -> unit.dimension() == dimension)
                            .forEach(unit -> names.add(attribute.name() + "_" + unit.symbol())));
        }
        return names;
    }
}
