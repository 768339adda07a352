package org.fallrule.filter;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** A condition over named values: texts, flags and numbers. */
public sealed interface Filter {

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
            Truth all = Truth.TRUE;
            for (int i = 0; i < parts.size() && all != Truth.FALSE; i++) {
                all = all.and(parts.get(i).test(values));
            }
            return all;
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
            Truth any = Truth.FALSE;
            for (int i = 0; i < parts.size() && any != Truth.TRUE; i++) {
                any = any.or(parts.get(i).test(values));
            }
            return any;
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
        /** Two are the same when they are written the same; a {@link Pattern} is equal only to itself. */
        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof Like like
                    && name.equals(like.name)
                    && pattern.pattern().equals(like.pattern.pattern())
                    && pattern.flags() == like.pattern.flags();
        }

        @Override
        public int hashCode() {
            return Objects.hash(name, pattern.pattern(), pattern.flags());
        }

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
}
