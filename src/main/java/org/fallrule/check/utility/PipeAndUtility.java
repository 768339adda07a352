package org.fallrule.check.utility;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.fallrule.analysis.Accuracy;
import org.fallrule.analysis.Corridor;
import org.fallrule.analysis.Crossing;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.analysis.UtilityCrossing;
import org.fallrule.check.Limits;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Length;
import org.fallrule.measure.Quantity;
import org.fallrule.network.OutsideDiameter;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Attribute;
import org.fallrule.site.Attributes;
import org.fallrule.site.Feature;
import org.locationtech.jts.geom.Geometry;

/**
 * One pipe of the drain and one utility.
 *
 * @param analysis the plan
 * @param run the pipe
 * @param utility the utility
 * @param sizeIfUnknown the utility's outside diameter where the plan gives none
 */
record PipeAndUtility(SiteAnalysis analysis, PipeRun run, Feature utility, Length sizeIfUnknown) {

    static PipeAndUtility of(SiteAnalysis analysis, PipeRun run, Feature utility, Quantity sizeIfUnknown) {
        return new PipeAndUtility(analysis, run, utility, new Length(sizeIfUnknown.si()));
    }

    Length size() {
        return size(utility, sizeIfUnknown);
    }

    static Length size(Feature utility, Length ifUnknown) {
        return OutsideDiameter.of(utility).map(OutsideDiameter::value).orElse(ifUnknown);
    }

    /** From the one's centreline to the other's, in metres, when their outsides touch. */
    double touching() {
        return size().metres() / 2 + run.size().map(OutsideDiameter::radius).orElse(0.0);
    }

    List<UtilityCrossing> crossings() {
        return UtilityCrossing.of(analysis, run, utility);
    }

    /** The part of the run's axis within so many metres of the utility's centreline; empty where the two lie farther apart. */
    Geometry runWithin(double metres) {
        return new Corridor(utility.geometry(), metres).partOf(run.axis());
    }

    /** The part of the run farther in plan than so many metres from where it, or a pipe that joins it, crosses the utility. */
    Geometry apartFromCrossings(double excused) {
        List<Crossing> excusing = new ArrayList<>();
        analysis.network().runs().stream()
                .filter(other -> other.joins(run))
                .forEach(other -> excusing.addAll(Crossing.of(other, utility)));
        return Crossing.apartFrom(excusing, run, excused);
    }

    /** What a limit may depend on: what the plan says of the pipe, and whether either of the two is encased. */
    static Attributes attributes(Feature pipe, Feature utility) {
        boolean encased = List.of(pipe, utility).stream()
                .anyMatch(each -> each.get(Attribute.ENCASED).orElse(false));
        return pipe.attributes().with(Attribute.ENCASED, encased);
    }

    Attributes attributes() {
        return attributes(run.pipe(), utility);
    }

    Optional<Observation> hold(Limits limits, Function<Limits.Answer.Asked, Observation> measure) {
        return limits.hold(run.pipe(), attributes(), measure);
    }

    /** A value that sizes go into: without the pipe's it can fail, but not meet. */
    Observation withSizes(Observation seen) {
        Observation noted = withSizeOfUtility(seen);
        return run.size().isPresent()
                ? noted
                : noted.with(noted.outcome() == Outcome.FAILS ? Outcome.FAILS : Outcome.CANNOT_TELL)
                        .lacking(new Missing("diameter of " + run.pipe().spoken(), "give diameter with its unit"));
    }

    Observation withSizeOfUtility(Observation seen) {
        return withSizeOf(utility, seen);
    }

    /** Says where the utility's size was taken from the rule. */
    static Observation withSizeOf(Feature utility, Observation seen) {
        return OutsideDiameter.of(utility).isEmpty()
                ? seen.noting("size of " + utility.spoken() + " is not given and taken from the rule")
                : seen;
    }

    /** Says how well a value is known and from what. */
    static Observation withAccuracy(Observation seen, Accuracy accuracy) {
        Observation noted = seen;
        for (String note : accuracy.notes(seen.outcome() == Outcome.BORDERLINE)) {
            noted = noted.noting(note);
        }
        return noted;
    }
}
