package org.fallrule.check;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.fallrule.site.Attribute;

/** What a rule tells its check: a value for each parameter that the rule gives. */
public final class Terms {
    private final Map<String, Object> values;

    private Terms(Map<String, Object> values) {
        this.values = values;
    }

    public static Terms none() {
        return new Terms(Map.of());
    }

    public <T> Terms with(Parameter<T> parameter, T value) {
        Map<String, Object> more = new LinkedHashMap<>(values);
        more.put(parameter.name(), parameter.type().cast(value));
        return new Terms(more);
    }

    /** Whether they name one of some attributes, in a condition or by itself. */
    public boolean read(Set<Attribute<?>> attributes) {
        return values.values().stream()
                .anyMatch(value -> value instanceof AttributeList list
                        ? list.all().stream().anyMatch(attributes::contains)
                        : conditions(value).anyMatch(each -> each.reads(attributes)));
    }

    private static Stream<Condition> conditions(Object value) {
        if (value instanceof Selection selection) {
            return Stream.of(selection.where());
        }
        if (value instanceof Condition condition) {
            return Stream.of(condition);
        }
        return value instanceof Limits limits ? limits.cases().stream().map(Limits.Case::when) : Stream.of();
    }

    /** The value of a parameter that every rule gives. */
    public <T> T get(Parameter<T> parameter) {
        return find(parameter)
                .orElseThrow(
                        () -> new IllegalStateException("the rule book let a rule pass without " + parameter.name()));
    }

    public <T> Optional<T> find(Parameter<T> parameter) {
        return Optional.ofNullable(parameter.type().cast(values.get(parameter.name())));
    }
}
