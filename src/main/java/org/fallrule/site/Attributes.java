package org.fallrule.site;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;

/** The attribute values of one feature, typed by their {@link Attribute}. What the plan does not say is not in here. */
public final class Attributes {
    private static final Attributes NONE = new Attributes(Map.of());

    private final Map<Attribute<?>, Object> values;

    private Attributes(Map<Attribute<?>, Object> values) {
        this.values = values;
    }

    public static Attributes none() {
        return NONE;
    }

    /** These attributes and one more; a value already there is replaced. */
    public <T> Attributes with(Attribute<T> attribute, T value) {
        Map<Attribute<?>, Object> more = new LinkedHashMap<>(values);
        more.put(attribute, attribute.type().cast(value));
        return new Attributes(Collections.unmodifiableMap(more));
    }

    /**
     * What a map says, in its order.
     *
     * @throws ClassCastException if a value is not of its attribute's type
     */
    public static Attributes of(Map<Attribute<?>, Object> values) {
        Map<Attribute<?>, Object> typed = new LinkedHashMap<>();
        values.forEach(
                (attribute, value) -> typed.put(attribute, attribute.type().cast(value)));
        return new Attributes(Collections.unmodifiableMap(typed));
    }

    /** These attributes but for some. */
    public Attributes without(Predicate<Attribute<?>> dropped) {
        Map<Attribute<?>, Object> kept = new LinkedHashMap<>(values);
        return kept.keySet().removeIf(dropped) ? new Attributes(Collections.unmodifiableMap(kept)) : this;
    }

    /** What several features all say, and say alike. */
    public static Attributes alike(List<Feature> several) {
        if (several.isEmpty()) {
            return NONE;
        }
        Attributes first = several.get(0).attributes();
        return first.without(attribute -> several.stream()
                .anyMatch(
                        each -> !Objects.equals(each.attributes().values.get(attribute), first.values.get(attribute))));
    }

    public <T> Optional<T> get(Attribute<T> attribute) {
        return Optional.ofNullable(attribute.type().cast(values.get(attribute)));
    }

    public boolean has(Attribute<?> attribute) {
        return values.containsKey(attribute);
    }

    public Map<Attribute<?>, Object> asMap() {
        return values;
    }

    @Override
    public String toString() {
        return values.toString();
    }
}
