package org.fallrule.check.utility;

import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.Accuracy;
import org.fallrule.analysis.Corridor;
import org.fallrule.analysis.PlanDistance;
import org.fallrule.analysis.RunParts;
import org.fallrule.analysis.WidestOfPlan;
import org.fallrule.check.Limits;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Length;
import org.fallrule.measure.Unit;
import org.fallrule.network.OutsideDiameter;
import org.fallrule.network.Reach;
import org.locationtech.jts.geom.Geometry;

/** The plan distance between a pipe and a utility beside it. */
final class Beside {
    private final PipeAndUtility pair;
    private final Geometry apart;

    /** @param excused metres around a crossing within which no distance is asked */
    Beside(PipeAndUtility pair, double excused) {
        this.pair = pair;
        this.apart = pair.apartFromCrossings(excused);
    }

    /** Nothing where the run has no part apart from its crossings, or no limit is asked. */
    Optional<Observation> observe(Limits limits) {
        return apart.isEmpty() ? Optional.empty() : pair.hold(limits, this::measured);
    }

    private Observation measured(Limits.Answer.Asked asked) {
        PlanDistance distance = PlanDistance.between(pair.run().pipe(), apart, pair.utility());
        boolean sizeKnown = OutsideDiameter.of(pair.utility()).isPresent();
        Length gap = sizeKnown
                ? distance.gap()
                : distance.gap().minus(pair.sizeIfUnknown().times(0.5));
        Observation seen = pair.withSizes(against(asked, gap, distance));
        double limit = asked.limit().value().quantity().si();
        return WidestOfPlan.standingFor(pair.run().pipe(), pair.analysis().site())
                .map(widest ->
                        against(asked, gap.minus(widest.half()), distance).noting(widest.spoken()))
                .filter(counted -> counted.outcome() == Outcome.MEETS)
                .map(pair::withSizeOfUtility)
                .map(counted -> PipeAndUtility.withAccuracy(counted, accuracy()))
                .orElseGet(() -> PipeAndUtility.withAccuracy(tooNear(seen, limit), accuracy()));
    }

    private Observation against(Limits.Answer.Asked asked, Length gap, PlanDistance distance) {
        return Observation.measured(
                        pair.run().pipe(),
                        asked.against("plan distance beside", gap, accuracy().metres()))
                .against(pair.utility())
                .at(distance.between());
    }

    private Accuracy accuracy() {
        return Accuracy.ofDistance(pair.analysis(), pair.run().pipe(), pair.utility());
    }

    /** Where the run lies nearer than the limit, and how much of it. */
    private Observation tooNear(Observation seen, double limit) {
        if (seen.outcome() == Outcome.MEETS) {
            return seen;
        }
        Geometry near = new Corridor(pair.utility().geometry(), limit + pair.touching()).partOf(apart);
        List<Reach> reaches = RunParts.of(pair.run(), near);
        double length =
                reaches.stream().mapToDouble(reach -> reach.length().metres()).sum();
        return reaches.isEmpty()
                ? seen
                : seen.noting("nearer than that over " + pair.analysis().site().printed(new Length(length), Unit.FOOT)
                        + ", " + "station " + pair.analysis().stations(reaches));
    }
}
