package org.fallrule.check;

import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import org.fallrule.document.Place;
import org.fallrule.filter.Truth;
import org.fallrule.finding.Measured;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.measure.Limit;
import org.fallrule.measure.Quantity;
import org.fallrule.site.Attributes;
import org.fallrule.site.Feature;

/**
 * A limit, or a list of limits each with a condition, of which the first whose condition holds counts.
 *
 * @param cases the limits in the order written
 */
public record Limits(List<Case> cases) {

    public Limits {
        cases = List.copyOf(cases);
    }

    /** A limit under a condition, or that none is asked under it, and the line that set it. */
    public record Case(Condition when, Optional<Limit> limit, Place setBy) {}

    /** What a feature is held against. */
    public sealed interface Answer {
        /** This limit. */
        record Asked(Limit limit, Place setBy) implements Answer {
            /** A value to be held against this limit. */
            public Measured against(String of, Quantity value, double accuracy) {
                return new Measured(of, value, accuracy, Optional.of(limit), Optional.of(setBy));
            }
        }

        /** No limit: no condition holds, or the one that does asks none. */
        record NotAsked() implements Answer {}

        /** The plan does not say what the limit depends on; {@code lacking} names it. */
        record Undecided(String lacking) implements Answer {
            public Missing missing(Feature subject) {
                return new Missing(
                        lacking + " of " + subject.spoken() + ", on which the limit depends",
                        "give " + lacking + " in " + subject.origin().file());
            }
        }
    }

    /** The limit for something with these attributes. */
    public Answer of(Attributes attributes) {
        for (Case each : cases) {
            Truth truth = each.when().test(attributes);
            if (truth == Truth.TRUE) {
                return each.limit()
                        .<Answer>map(limit -> new Answer.Asked(limit, each.setBy()))
                        .orElseGet(Answer.NotAsked::new);
            }
            if (truth == Truth.UNKNOWN) {
                return new Answer.Undecided(lacking(attributes));
            }
        }
        return new Answer.NotAsked();
    }

    /**
     * Holds something against the limit for it: what {@code measure} makes of that limit, {@code cannot_tell} where the plan
     * does not say what the limit depends on, nothing where no limit is asked.
     */
    public Optional<Observation> hold(
            Feature subject, Attributes attributes, Function<Answer.Asked, Observation> measure) {
        Answer answer = of(attributes);
        if (answer instanceof Answer.Asked asked) {
            return Optional.of(measure.apply(asked));
        }
        if (answer instanceof Answer.Undecided undecided) {
            return Optional.of(Observation.cannotTell(subject, undecided.missing(subject)));
        }
        return Optional.empty();
    }

    private String lacking(Attributes attributes) {
        TreeSet<String> names = new TreeSet<>();
        cases.forEach(each -> names.add(each.when().lacking(attributes)));
        names.remove("");
        return String.join(", ", names);
    }
}
