package org.fallrule.check;

import java.util.List;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.filter.Truth;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;

/**
 * Features of one role that satisfy a condition.
 *
 * @param role the role
 * @param where the condition
 */
public record Selection(Role role, Condition where) {

    /** Whether a feature of the role satisfies the condition; unknown where the plan does not say enough of it. */
    public Truth chooses(Feature feature) {
        return where.test(feature.attributes());
    }

    /** Whether it satisfies the condition, or the plan does not say enough of it to tell. */
    public boolean mayChoose(Feature feature) {
        return chooses(feature) != Truth.FALSE;
    }

    /** The features that satisfy the condition, and those of which the plan does not say enough to tell. */
    public List<Feature> candidates(Site site) {
        return site.features(role).stream().filter(this::mayChoose).toList();
    }

    /** Those of them that an answer is wanted for. */
    public List<Feature> candidates(SiteAnalysis analysis) {
        return candidates(analysis.site()).stream().filter(analysis.asked()).toList();
    }

    /** What an undecided feature lacks. */
    public Missing lacking(Feature undecided) {
        String names = where.lacking(undecided.attributes());
        return new Missing(
                names + " of " + undecided.spoken(),
                "give " + names + " in " + undecided.origin().file());
    }

    /**
     * What is seen of a feature. Where the plan does not say whether it is one of these, that matters only where it would not
     * meet the rule, and then it cannot be told.
     */
    public Observation settled(Observation seen, Feature feature) {
        return chooses(feature) == Truth.TRUE || seen.outcome() == Outcome.MEETS
                ? seen
                : seen.with(Outcome.CANNOT_TELL).lacking(lacking(feature));
    }

    /** The same of a distance kept from a feature, with a note of what is not known where that does not matter. */
    public Observation settledByDistance(Observation seen, Feature feature) {
        return chooses(feature) != Truth.TRUE && seen.outcome() == Outcome.MEETS
                ? seen.noting(lacking(feature).what() + " is not given, but it is far enough away")
                : settled(seen, feature);
    }

    /** {@code walk with access = 'public'}. */
    public String spoken() {
        return where.text().isEmpty() ? role.spoken() : role.spoken() + " with " + where.text();
    }
}
