package org.fallrule.site;

import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The attribute values of one feature, typed by their {@link Attribute}. What the plan does not say is not in here. A feature has a
 * few, of which checks make others by the thousand: names and values lie side by side, to be gone over and copied.
 */
public final class Attributes {
    private static final Attributes NONE = new Attributes(new Attribute<?>[0], new Object[0]);

    private final Attribute<?>[] names;
    private final Object[] values;

    private Attributes(Attribute<?>[] names, Object[] values) {
        this.names = names;
        this.values = values;
    }

    public static Attributes none() {
        return NONE;
    }

    /** These attributes and one more; a value already there is replaced. */
    public <T> Attributes with(Attribute<T> attribute, T value) {
        int at = indexOf(attribute);
        if (at >= 0) {
            Object[] changed = values.clone();
            changed[at] = attribute.type().cast(value);
            return new Attributes(names, changed);
        }
        Attribute<?>[] more = Arrays.copyOf(names, names.length + 1);
        Object[] ofMore = Arrays.copyOf(values, more.length);
        more[names.length] = attribute;
        ofMore[names.length] = attribute.type().cast(value);
        return new Attributes(more, ofMore);
    }

    /**
     * What a map says, in its order.
     *
     * @throws ClassCastException if a value is not of its attribute's type
     */
    public static Attributes of(Map<Attribute<?>, Object> values) {
        return new Attributes(
                values.keySet().toArray(Attribute<?>[]::new),
                values.entrySet().stream()
                        .map(each -> (Object) each.getKey().type().cast(each.getValue()))
                        .toArray());
    }

    /** These attributes but for some. */
    public Attributes without(Predicate<Attribute<?>> dropped) {
        Map<Attribute<?>, Object> kept = new LinkedHashMap<>(asMap());
        return kept.keySet().removeIf(dropped) ? of(kept) : this;
    }

    /** What several features all say, and say alike. */
    public static Attributes alike(List<Feature> several) {
        if (several.isEmpty()) {
            return NONE;
        }
        Attributes first = several.get(0).attributes();
        return first.without(attribute -> several.stream()
                .anyMatch(each -> !each.attributes().get(attribute).equals(first.get(attribute))));
    }

    public <T> Optional<T> get(Attribute<T> attribute) {
        int at = indexOf(attribute);
        return at < 0 ? Optional.empty() : Optional.of(attribute.type().cast(values[at]));
    }

    public boolean has(Attribute<?> attribute) {
        return indexOf(attribute) >= 0;
    }

    @SuppressWarnings("ReferenceEquality") // there is one of each
    private int indexOf(Attribute<?> attribute) {
        for (int at = 0; at < names.length; at++) {
            if (names[at] == attribute) {
                return at;
            }
        }
        return -1;
    }

    public Map<Attribute<?>, Object> asMap() {
        Map<Attribute<?>, Object> map = new LinkedHashMap<>();
        for (int at = 0; at < names.length; at++) {
            map.put(names[at], values[at]);
        }
        return Collections.unmodifiableMap(map);
    }

    @Override
    public String toString() {
        return asMap().toString();
    }
}
