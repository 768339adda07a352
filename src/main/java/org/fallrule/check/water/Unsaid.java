package org.fallrule.check.water;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.method.Answer;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;

/** What the checks of the water say when the plan leaves something out. */
final class Unsaid {
    private Unsaid() {}

    /** A value that could not be worked out. */
    static Observation of(Feature subject, String what, Answer<?> answer) {
        return Observation.cannotTell(
                subject, new Missing(what + " (" + answer.why() + ")", "give what is named there"));
    }

    /** Attributes that a feature does not have, all at once; empty when it has them all. */
    static Optional<Observation> lacking(Feature subject, Attribute<?>... wanted) {
        return Stream.of(wanted)
                .filter(attribute -> subject.get(attribute).isEmpty())
                .map(attribute -> Observation.cannotTell(subject, attribute(subject, attribute)))
                .reduce((one, other) -> one.lacking(other.missing().get(0)));
    }

    private static Missing attribute(Feature subject, Attribute<?> attribute) {
        return new Missing(
                attribute.meaning() + ", of " + subject.spoken(),
                "give " + attribute.name() + " in " + subject.origin().file());
    }

    /**
     * The same where the flow is only a part of what may come: what fails under a part of the water fails under all of it, but
     * what meets may not.
     *
     * @param cut the inlets whose area reaches beyond the known ground
     */
    static Observation underMoreWater(Observation seen, Set<Feature> cut) {
        Observation open = seen;
        for (Feature inlet : cut) {
            Missing area = new Missing(
                    "how much more drains to " + inlet.spoken() + " from beyond the ground given",
                    "give ground up to the divide, or draw a drainage_area with drains_to: " + inlet.id());
            open = seen.outcome() == Outcome.MEETS
                    ? open.with(Outcome.CANNOT_TELL).lacking(area)
                    : open.noting(area.what() + " is not known");
        }
        return open;
    }
}
