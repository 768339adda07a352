package org.fallrule.check.pipe;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.PlanDistance;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.Check;
import org.fallrule.check.CheckPage;
import org.fallrule.check.Need;
import org.fallrule.check.Parameter;
import org.fallrule.check.Selection;
import org.fallrule.check.Terms;
import org.fallrule.check.WorthTelling;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.Range;
import org.fallrule.network.PipeProfile;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;

/** Whether the trench keeps out of the ground under a building's footing. */
@AutoService(Check.class)
public final class FootingPlane implements Check {
    static final Parameter<Selection> TO = Parameter.features("to", "the buildings with footings", Role.BUILDING);
    static final Parameter<Quantity> ANGLE = Parameter.quantity(
                    "angle", Dimension.ANGLE, "how steeply the plane falls from the footing, from the horizontal")
            .within(Range.between("1 deg", "90 deg", Dimension.ANGLE))
            .always();
    static final Parameter<Quantity> LOOK_WITHIN = Parameter.quantity(
                    "look_within",
                    Dimension.LENGTH,
                    "plan distance from a building within which the plan must say how deep its footing lies")
            .within(Range.ABOVE_ZERO)
            .always();
    static final Parameter<Quantity> BESIDE = Parameter.quantity(
            "trench_beside",
            Dimension.LENGTH,
            "how far the trench reaches beyond the pipe's outside on either side; none when it is not given");
    static final Parameter<Quantity> BEDDING = Parameter.quantity(
            "bedding", Dimension.LENGTH, "how far the trench is dug below the pipe; none when it is not given");

    @Override
    public String name() {
        return "footing_plane";
    }

    @Override
    public CheckPage page() {
        return new CheckPage(
                "The plan distance from each pipe's trench to a building, where it comes nearest to the plane that falls"
                        + " away from the bottom outer edge of the footing; the trench's bottom must stay outside. The"
                        + " building's edge is taken as the footing's, and the trench counts in whatever direction it"
                        + " runs. Of a building farther away than look_within nothing is said unless the trench is"
                        + " inside of the plane, and its footing need not be known.",
                "distance >= (bottom of footing - bottom of trench) / tan(angle); bottom of footing = footing_bottom, else"
                        + " ground as it is at the building's edge - footing_depth; bottom of trench = invert - wall - bedding;"
                        + " distance = centreline to building - half outside diameter - trench_beside",
                "IPC 307, IRC P2604.4 and UPC 314.1: a trench beside a footing stays outside of a plane of 45 degrees from"
                        + " the footing's bottom outer edge.",
                List.of(
                        "how far the footing stands out from the wall",
                        "basements, piers and footings that step",
                        "soil that holds less than the plane takes for granted"));
    }

    @Override
    public List<Parameter<?>> parameters() {
        return List.of(TO, ANGLE, LOOK_WITHIN, BESIDE, BEDDING);
    }

    @Override
    public List<Need> needs(Terms terms) {
        return List.of(new Need.OfLayer(Role.PIPE), new Need.OfLayer(Role.BUILDING));
    }

    @Override
    public List<Observation> observe(SiteAnalysis analysis, Terms terms) {
        Selection to = terms.get(TO);
        List<Observation> observations = new ArrayList<>();
        List<Feature> known = new ArrayList<>();
        for (Feature building : to.candidates(analysis.site())) {
            if (building.get(Attribute.FOOTING_BOTTOM).isPresent()
                    || building.get(Attribute.FOOTING_DEPTH).isPresent()) {
                known.add(building);
            } else {
                footingMissing(analysis, terms, building)
                        .map(seen -> to.settled(seen, building))
                        .ifPresent(observations::add);
            }
        }
        for (PipeRun run : analysis.runsAsked()) {
            List<Observation> seen = known.stream()
                    .flatMap(building ->
                            observe(analysis, terms, run, building).map(each -> to.settled(each, building)).stream())
                    .toList();
            observations.addAll(WorthTelling.of(seen, Comparator.comparingDouble(FootingPlane::margin)));
        }
        return observations;
    }

    /** Said once for a building, with the pipes that run near to it; nothing when none does. */
    private static Optional<Observation> footingMissing(SiteAnalysis analysis, Terms terms, Feature building) {
        List<String> near = analysis.network().runs().stream()
                .filter(run -> isNear(terms, run, building))
                .map(PipeRun::id)
                .toList();
        if (near.isEmpty()) {
            return Optional.empty();
        }
        Missing missing = new Missing(
                "how deep the footing of " + building.spoken() + " lies",
                "give footing_bottom, its elevation, or footing_depth, its depth below the ground, in "
                        + building.origin().file());
        return Optional.of(Observation.cannotTell(building, missing)
                .noting("within "
                        + analysis.site().printed(terms.get(LOOK_WITHIN).si()) + " of pipe "
                        + String.join(", ", near)));
    }

    private static boolean isNear(Terms terms, PipeRun run, Feature building) {
        return PlanDistance.between(run.pipe(), building).gap().metres()
                <= terms.get(LOOK_WITHIN).si() + Dimension.LENGTH.tolerance();
    }

    private static Optional<Observation> observe(SiteAnalysis analysis, Terms terms, PipeRun run, Feature building) {
        boolean near = isNear(terms, run, building);
        Observation seen = PipeProfile.of(run)
                .map(profile -> held(analysis, terms, run, profile, building))
                .orElseGet(() -> ProfileMissing.of(run).against(building));
        return near || seen.outcome() == Outcome.FAILS || seen.outcome() == Outcome.BORDERLINE
                ? Optional.of(seen)
                : Optional.empty();
    }

    private static Observation held(
            SiteAnalysis analysis, Terms terms, PipeRun run, PipeProfile profile, Feature building) {
        Trench trench = new Trench(analysis, run, profile, terms.find(BEDDING));
        double beside = terms.find(BESIDE).map(Quantity::si).orElse(0.0);
        BearingPlane plane =
                new BearingPlane(analysis, building, terms.get(ANGLE).si());
        Missing ground = new Missing(
                "ground at the edge of " + building.spoken() + " beside "
                        + run.pipe().spoken(),
                "take spot elevations along the wall, or give footing_bottom");
        Observation seen = plane.nearest(run, profile, trench, beside)
                .map(place -> place.observation(analysis))
                .orElseGet(() -> Observation.plain(Outcome.MEETS, run.pipe()));
        boolean open = seen.measured().isEmpty()
                || (seen.outcome() == Outcome.MEETS
                        && plane.isOpenWithin(terms.get(LOOK_WITHIN).si(), run, profile));
        return (open ? seen.with(Outcome.CANNOT_TELL).lacking(ground) : seen).against(building);
    }

    /** By how many metres a trench keeps its distance. */
    private static double margin(Observation seen) {
        return seen.measured()
                .map(measured -> -measured.limit().orElseThrow().shortfall(measured.value()))
                .orElse(Double.MAX_VALUE);
    }
}
