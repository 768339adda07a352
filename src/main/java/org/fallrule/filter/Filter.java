package org.fallrule.filter;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;

/** A condition over named values: texts, flags and numbers. */
public sealed interface Filter {

    /** Two numbers nearer to each other than this part of themselves are equal. */
    double SAME_NUMBER = 1e-6;

    /**
     * Whether the condition holds.
     *
     * @param values the value of a name: {@link String}, {@link Boolean} or {@link Number}; empty when not known
     */
    Truth test(Function<String, Optional<Object>> values);

    /** The names that the condition asks for. */
    Set<String> names();

    /** Holds for everything. */
    record Always() implements Filter {
        @Override
        public Truth test(Function<String, Optional<Object>> values) {
            return Truth.TRUE;
        }

        @Override
        public Set<String> names() {
            return Set.of();
        }
    }

    /** All of the parts hold. */
    record AllOf(List<Filter> parts) implements Filter {
        @Override
        public Truth test(Function<String, Optional<Object>> values) {
            return parts.stream().map(part -> part.test(values)).reduce(Truth.TRUE, Truth::and);
        }

        @Override
        public Set<String> names() {
            return namesOf(parts);
        }
    }

    /** One of the parts holds. */
    record AnyOf(List<Filter> parts) implements Filter {
        @Override
        public Truth test(Function<String, Optional<Object>> values) {
            return parts.stream().map(part -> part.test(values)).reduce(Truth.FALSE, Truth::or);
        }

        @Override
        public Set<String> names() {
            return namesOf(parts);
        }
    }

    /** The part does not hold. */
    record Not(Filter part) implements Filter {
        @Override
        public Truth test(Function<String, Optional<Object>> values) {
            return part.test(values).not();
        }

        @Override
        public Set<String> names() {
            return part.names();
        }
    }

    /** The value of a name stands in a relation to another value. */
    record Compared(String name, Relation relation, Object to) implements Filter {
        @Override
        public Truth test(Function<String, Optional<Object>> values) {
            return values.apply(name).map(value -> relation.between(value, to)).orElse(Truth.UNKNOWN);
        }

        @Override
        public Set<String> names() {
            return Set.of(name);
        }
    }

    /** The value of a name, as text, has the form of a pattern. */
    record Like(String name, Pattern pattern) implements Filter {
        @Override
        public Truth test(Function<String, Optional<Object>> values) {
            return values.apply(name)
                    .map(value ->
                            Truth.of(pattern.matcher(String.valueOf(value)).matches()))
                    .orElse(Truth.UNKNOWN);
        }

        @Override
        public Set<String> names() {
            return Set.of(name);
        }
    }

    /** No value is known for a name; this is always true or false. */
    record IsMissing(String name) implements Filter {
        @Override
        public Truth test(Function<String, Optional<Object>> values) {
            return Truth.of(values.apply(name).isEmpty());
        }

        @Override
        public Set<String> names() {
            return Set.of(name);
        }
    }

    private static Set<String> namesOf(List<Filter> parts) {
        Set<String> names = new LinkedHashSet<>();
        parts.forEach(part -> names.addAll(part.names()));
        return names;
    }

    /** The relations of two values. Texts are compared letter by letter, numbers up to {@link #SAME_NUMBER}. */
    enum Relation {
        EQUAL,
        LESS,
        AT_MOST,
        MORE,
        AT_LEAST;

        Truth between(Object value, Object to) {
            if (value instanceof Number number && to instanceof Number limit) {
                return Truth.of(holds(order(number.doubleValue(), limit.doubleValue())));
            }
            if (value instanceof Number != to instanceof Number) {
                return this == EQUAL ? Truth.of(String.valueOf(value).equals(String.valueOf(to))) : Truth.UNKNOWN;
            }
            return Truth.of(holds(String.valueOf(value).compareTo(String.valueOf(to))));
        }

        private static int order(double value, double to) {
            double same = SAME_NUMBER * Math.max(Math.abs(value), Math.abs(to));
            return Math.abs(value - to) <= same ? 0 : Double.compare(value, to);
        }

        private boolean holds(int order) {
            return switch (this) {
                case EQUAL -> order == 0;
                case LESS -> order < 0;
                case AT_MOST -> order <= 0;
                case MORE -> order > 0;
                case AT_LEAST -> order >= 0;
            };
        }
    }
}
