package org.fallrule.check.utility;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.Accuracy;
import org.fallrule.analysis.Crossing;
import org.fallrule.analysis.PlanDistance;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.analysis.WidestOfPlan;
import org.fallrule.check.Limits;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Length;
import org.fallrule.measure.Quantity;
import org.fallrule.network.OutsideDiameter;
import org.fallrule.network.PipeProfile;
import org.fallrule.network.PipeRun;
import org.fallrule.network.Station;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** One pipe of the drain and one utility: how they lie to each other. */
final class PipeAndUtility {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    private final SiteAnalysis analysis;
    private final PipeRun run;
    private final Feature utility;
    private final Length sizeIfUnknown;
    private final double excused;
    private final List<Crossing> crossings;

    /** The run's own crossings, and those of the pipes that join it end to end. */
    private final List<Crossing> excusing = new ArrayList<>();

    PipeAndUtility(SiteAnalysis analysis, PipeRun run, Feature utility, Quantity sizeIfUnknown, Quantity excused) {
        this.analysis = analysis;
        this.run = run;
        this.utility = utility;
        this.sizeIfUnknown = new Length(sizeIfUnknown.si());
        this.excused = excused.si();
        this.crossings = Crossing.of(run, utility);
        analysis.network().runs().stream()
                .filter(other -> other.joins(run))
                .forEach(other -> excusing.addAll(Crossing.of(other, utility)));
    }

    /** The plan distance of the run apart from its crossings; nothing when no such part is left or no limit is asked. */
    Optional<Observation> beside(Limits limits) {
        Geometry apart = Crossing.apartFrom(excusing, run, excused);
        if (apart.isEmpty()) {
            return Optional.empty();
        }
        return limits.hold(run.pipe(), run.pipe().attributes(), asked -> beside(apart, asked));
    }

    private Observation beside(Geometry apart, Limits.Answer.Asked asked) {
        PlanDistance distance = PlanDistance.between(run.pipe(), apart, utility);
        boolean sizeKnown = OutsideDiameter.of(utility).isPresent();
        Length gap = sizeKnown ? distance.gap() : distance.gap().minus(sizeIfUnknown.times(0.5));
        Observation seen = withSizes(beside(gap, asked, distance));
        return WidestOfPlan.standingFor(run.pipe(), analysis.site())
                .map(widest -> beside(gap.minus(widest.half()), asked, distance).noting(widest.spoken()))
                .filter(counted -> counted.outcome() == Outcome.MEETS)
                .map(this::withSizeOfUtility)
                .orElse(seen);
    }

    private Observation beside(Length gap, Limits.Answer.Asked asked, PlanDistance distance) {
        double accuracy = Accuracy.ofDistance(analysis, run.pipe(), utility).metres();
        return Observation.measured(run.pipe(), asked.against("plan distance beside", gap, accuracy))
                .against(utility)
                .at(distance.between());
    }

    /** The height between the two at each crossing. */
    List<Observation> across(Limits limits) {
        List<Observation> observations = new ArrayList<>();
        for (Crossing crossing : crossings) {
            limits.hold(run.pipe(), run.pipe().attributes(), asked -> across(crossing, asked))
                    .ifPresent(observations::add);
        }
        return observations;
    }

    private Observation across(Crossing crossing, Limits.Answer.Asked asked) {
        Optional<PipeProfile> profile = PipeProfile.of(run);
        Optional<UtilityLevel> level = UtilityLevel.at(analysis, utility, crossing.place(), sizeIfUnknown);
        Observation seen;
        if (profile.isPresent() && level.isPresent()) {
            Length gap = level.get()
                    .gapTo(
                            profile.get().topAt(crossing.station()),
                            profile.get().bottomAt(crossing.station()));
            double accuracy = Accuracy.ofHeight(analysis, run.pipe(), utility).metres();
            seen = withSizes(Observation.measured(run.pipe(), asked.against("height between them", gap, accuracy)));
        } else {
            seen = levelsMissing(profile.isEmpty(), level.isEmpty());
        }
        return seen.against(utility)
                .at(GEOMETRY.createPoint(crossing.place()))
                .noting("crossing at station " + new Station(crossing.station()));
    }

    private Observation levelsMissing(boolean ofPipe, boolean ofUtility) {
        Observation seen = Observation.plain(Outcome.CANNOT_TELL, run.pipe());
        if (ofPipe) {
            String names = namesOfMissing();
            seen = seen.lacking(new Missing(names + " of " + run.pipe().spoken(), "give " + names));
        }
        return ofUtility ? seen.lacking(UtilityLevel.missing(utility)) : seen;
    }

    /** {@code invert_up, invert_down and diameter}. */
    private String namesOfMissing() {
        List<String> names = new ArrayList<>();
        run.invertUp().ifPresentOrElse(known -> {}, () -> names.add(Attribute.INVERT_UP.name()));
        run.invertDown().ifPresentOrElse(known -> {}, () -> names.add(Attribute.INVERT_DOWN.name()));
        run.size().ifPresentOrElse(known -> {}, () -> names.add(Attribute.DIAMETER.name()));
        String last = names.remove(names.size() - 1);
        return names.isEmpty() ? last : String.join(", ", names) + " and " + last;
    }

    private Observation withSizes(Observation seen) {
        Observation noted = withSizeOfUtility(seen);
        if (run.size().isEmpty()) {
            return noted.with(noted.outcome() == Outcome.FAILS ? Outcome.FAILS : Outcome.CANNOT_TELL)
                    .lacking(new Missing("diameter of " + run.pipe().spoken(), "give diameter with its unit"));
        }
        return noted;
    }

    private Observation withSizeOfUtility(Observation seen) {
        return OutsideDiameter.of(utility).isPresent()
                ? seen
                : seen.noting("size of " + utility.spoken() + " is not given and taken from the rule");
    }
}
