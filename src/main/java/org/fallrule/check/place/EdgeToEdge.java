package org.fallrule.check.place;

import java.util.List;
import java.util.stream.Stream;
import org.fallrule.analysis.Accuracy;
import org.fallrule.analysis.PlanDistance;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.analysis.WidestOfPlan;
import org.fallrule.check.Limits;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Length;
import org.fallrule.network.OutsideDiameter;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;

/**
 * The plan distance of two features from edge to edge.
 *
 * @param analysis the plan
 * @param subject the feature that is measured from
 * @param other the feature that is measured to
 */
record EdgeToEdge(SiteAnalysis analysis, Feature subject, Feature other) {

    /** The distance against a limit; a size that the plan does not give is counted as the widest of the plan where that settles it. */
    Observation held(Limits.Answer.Asked asked) {
        PlanDistance distance = PlanDistance.between(subject, other);
        Observation seen = held(asked, distance, distance.gap());
        List<Feature> unknown =
                Stream.of(subject, other).filter(EdgeToEdge::hasNoSize).toList();
        boolean atLeast = asked.limit().bound() == Bound.AT_LEAST;
        Outcome sure = atLeast ? Outcome.FAILS : Outcome.MEETS;
        if (unknown.isEmpty() || seen.outcome() == sure) {
            return seen;
        }
        List<WidestOfPlan> widest = unknown.stream()
                .flatMap(each -> WidestOfPlan.standingFor(each, analysis.site()).stream())
                .toList();
        Length gap = distance.gap();
        for (WidestOfPlan each : widest) {
            gap = gap.minus(each.half());
        }
        Observation counted = held(asked, distance, gap);
        if (!atLeast || widest.size() < unknown.size() || counted.outcome() != Outcome.MEETS) {
            return toCentreline(seen, unknown);
        }
        for (WidestOfPlan each : widest) {
            counted = counted.noting(each.spoken());
        }
        return counted;
    }

    private Observation held(Limits.Answer.Asked asked, PlanDistance distance, Length gap) {
        double accuracy = Accuracy.ofDistance(analysis, subject, other).metres();
        return Observation.measured(subject, asked.against("plan distance", gap, accuracy))
                .against(other)
                .at(distance.between());
    }

    private static boolean hasNoSize(Feature feature) {
        boolean isPipe = feature.role() == Role.PIPE || feature.role() == Role.UTILITY;
        return isPipe && OutsideDiameter.of(feature).isEmpty();
    }

    /** The edge of a pipe whose size is not known is nearer than its centreline: that makes one outcome sure, not the other. */
    private static Observation toCentreline(Observation seen, List<Feature> unknown) {
        Observation open = seen.with(Outcome.CANNOT_TELL);
        for (Feature feature : unknown) {
            open = open.lacking(new Missing("diameter of " + feature.spoken(), "give diameter with its unit"));
        }
        return open;
    }
}
