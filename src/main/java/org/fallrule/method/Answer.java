package org.fallrule.method;

import java.util.Optional;
import java.util.function.Function;

/** What a method answers: a value, or why there is none. Nothing is carried beyond where a method or table holds. */
public sealed interface Answer<T> {

    /**
     * The answer.
     *
     * @param found the value
     */
    record Value<T>(T found) implements Answer<T> {}

    /**
     * No answer.
     *
     * @param why what is missing or lies outside, and where the method or table would hold
     */
    record None<T>(String why) implements Answer<T> {}

    static <T> Answer<T> of(T value) {
        return new Value<>(value);
    }

    static <T> Answer<T> none(String why) {
        return new None<>(why);
    }

    /** The value, if there is one. */
    default Optional<T> value() {
        return this instanceof Value<T> known ? Optional.of(known.found()) : Optional.empty();
    }

    /** Why there is no value; empty when there is one. */
    default String why() {
        return this instanceof None<T> none ? none.why() : "";
    }

    /** What another method makes of the value; without a value, the same reason. */
    default <R> Answer<R> then(Function<T, Answer<R>> next) {
        return this instanceof Value<T> known ? next.apply(known.found()) : none(why());
    }

    /** The value changed; without a value, the same reason. */
    default <R> Answer<R> map(Function<T, R> change) {
        return then(value -> of(change.apply(value)));
    }
}
