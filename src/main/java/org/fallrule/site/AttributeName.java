package org.fallrule.site;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.Unit;

/**
 * An attribute as a filter names it. A word, a flag or a ratio goes by its own name; a quantity by its name and a unit, such as
 * {@code diameter_in}, {@code rim_ft} or {@code grate_open_area_sq_in}, so that a bare number in a filter always has a unit.
 *
 * @param attribute what is named
 * @param unit the unit that numbers stand in, for a quantity
 */
public record AttributeName(Attribute<?> attribute, Optional<Unit> unit) {

    /** Resolves a name from a filter. */
    public static Optional<AttributeName> parse(String name) {
        return Attribute.named(name)
                .filter(AttributeName::hasNoUnit)
                .map(AttributeName::plain)
                .or(() -> withUnit(name));
    }

    private static boolean hasNoUnit(Attribute<?> attribute) {
        return attribute.dimension().filter(each -> each != Dimension.RATIO).isEmpty();
    }

    private static AttributeName plain(Attribute<?> attribute) {
        return new AttributeName(attribute, attribute.dimension().map(ratio -> Unit.ONE));
    }

    private static Optional<AttributeName> withUnit(String name) {
        return Arrays.stream(Unit.values())
                .filter(unit -> unit != Unit.ONE && name.endsWith(ending(unit)))
                .flatMap(unit -> Attribute.named(
                                name.substring(0, name.length() - ending(unit).length()))
                        .stream()
                        .filter(a -> a.dimension().equals(Optional.of(unit.dimension())))
                        .map(a -> new AttributeName(a, Optional.of(unit))))
                .findFirst();
    }

    /** How a name ends that has a unit: {@code _sq_in}, as a filter would take {@code sq in} for two words. */
    private static String ending(Unit unit) {
        return "_" + unit.symbol().replaceAll("[ /]", "_");
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
            if (hasNoUnit(attribute)) {
                names.add(attribute.name());
            } else {
                Arrays.stream(Unit.values())
                        .filter(unit -> attribute.dimension().equals(Optional.of(unit.dimension())))
                        .forEach(unit -> names.add(attribute.name() + ending(unit)));
            }
        }
        return names;
    }
}
