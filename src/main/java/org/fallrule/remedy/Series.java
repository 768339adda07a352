package org.fallrule.remedy;

import java.util.Optional;
import java.util.function.IntFunction;
import java.util.function.Predicate;
import java.util.function.Supplier;

/**
 * Changes of one kind, each a step more than the one before: 0.01 ft lower, 0.02 ft lower.
 *
 * @param most the greatest number of steps
 * @param first how many steps are tried first
 * @param at the change of so many steps, from one on; none where the plan does not bear it
 */
record Series(int most, int first, IntFunction<Optional<Change>> at) {
    private static final double ROUNDING = 1e-9;

    Series(int most, IntFunction<Optional<Change>> at) {
        this(most, 1, at);
    }

    /** The same, of which so many steps are tried first: what a finding misses, where a step gains no more than its own size. */
    Series first(int steps) {
        return new Series(most, Math.max(1, Math.min(most, steps)), at);
    }

    /**
     * Steps of a size within a length.
     *
     * @param most the greatest number of steps, however long it is
     * @param metres the length that the plan bears
     */
    static Series within(int most, double metres, double step, IntFunction<Optional<Change>> at) {
        return new Series(Math.min(most, (int) Math.floor(metres / step + ROUNDING)), at);
    }

    /** A change that is made or not. */
    static Series single(Supplier<Optional<Change>> change) {
        return new Series(1, steps -> change.get());
    }

    /**
     * A change that will do, and how many steps it takes.
     *
     * @param steps so many steps; one less does not do
     */
    record Least(Change change, int steps) {}

    /**
     * The least change that will do, as far as more steps do more: steps are quadrupled until it does, and then halved between the
     * last that does not and the first that does, so that one step less does not do.
     */
    Optional<Least> least(Predicate<Change> does) {
        return least(does, Integer.MAX_VALUE);
    }

    /** The same, not looked for any further once it is sure to take so many steps or more. */
    Optional<Least> least(Predicate<Change> does, int below) {
        if (most < 1 || below <= 1) {
            return Optional.empty();
        }
        int failing = 0;
        int steps = first;
        Optional<Change> found = tried(steps, does);
        if (found.isPresent() && steps > 1) {
            return between(0, steps, steps - 1, found.get(), does, below);
        }
        while (found.isEmpty() && steps < Math.min(most, below - 1)) {
            failing = steps;
            steps = Math.min(most, steps * 4);
            found = tried(steps, does);
        }
        int lower = failing;
        int upper = steps;
        return found.flatMap(change -> between(lower, upper, (lower + upper) / 2, change, does, below));
    }

    /**
     * The least between two numbers of steps.
     *
     * @param lower does not do, or is none
     * @param upper does
     * @param next what is tried first between them
     */
    private Optional<Least> between(int lower, int upper, int next, Change change, Predicate<Change> does, int below) {
        int failing = lower;
        int steps = upper;
        int middle = next;
        Change found = change;
        while (steps - failing > 1 && failing < below - 1) {
            Optional<Change> less = tried(middle, does);
            if (less.isPresent()) {
                steps = middle;
                found = less.get();
            } else {
                failing = middle;
            }
            middle = (steps + failing) / 2;
        }
        return steps < below ? Optional.of(new Least(found, steps)) : Optional.empty();
    }

    private Optional<Change> tried(int steps, Predicate<Change> does) {
        return at.apply(steps).filter(does);
    }
}
