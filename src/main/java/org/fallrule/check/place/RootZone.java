package org.fallrule.check.place;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.Accuracy;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.Check;
import org.fallrule.check.CheckPage;
import org.fallrule.check.Limits;
import org.fallrule.check.Need;
import org.fallrule.check.Parameter;
import org.fallrule.check.Selection;
import org.fallrule.check.Terms;
import org.fallrule.finding.Measured;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Length;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.Range;
import org.fallrule.measure.Unit;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.locationtech.jts.geom.Geometry;

/** How much pipe runs through the root zones of trees. */
@AutoService(Check.class)
public final class RootZone implements Check {
    static final Parameter<Selection> OF = Parameter.features("of", "the trees", Role.TREE);
    static final Parameter<Quantity> PER_INCH = Parameter.quantity(
                    "radius_per_inch",
                    Dimension.LENGTH,
                    "radius of the root zone for each inch of trunk diameter at breast height")
            .within(Range.ABOVE_ZERO)
            .always();
    static final Parameter<Quantity> LEAST = Parameter.quantity(
            "radius_at_least", Dimension.LENGTH, "least radius, however thin the trunk; none when it is not given");
    static final Parameter<Limits> INSIDE = Parameter.limit(
                    "inside_at_most",
                    Bound.AT_MOST,
                    Dimension.LENGTH,
                    "greatest length of a pipe inside; may depend on the pipe, such as on perforated")
            .always();

    /** Straight pieces to a quarter circle: a root zone of 30 ft is right to 0.2 mm. */
    private static final int ARC_SEGMENTS = 128;

    @Override
    public String name() {
        return "root_zone";
    }

    @Override
    public CheckPage page() {
        return new CheckPage(
                "The length of each pipe's centreline inside of the root zone of each tree, a circle around its trunk.",
                "radius = root_radius where the plan gives it, else trunk_diameter in inches times radius_per_inch, else"
                        + " canopy_radius; never less than radius_at_least",
                "Radius by trunk diameter at breast height (4.5 ft): Vancouver (Washington) Municipal Code 20.170.100, 1 ft"
                        + " to the inch; 0.5 to 1.5 ft in other towns' codes. ANSI A300 and arborists' guides work the"
                        + " same way, from memory.",
                List.of(
                        "where the roots really are, and how deep",
                        "whether the pipe is bored below them or the trench is dug by hand",
                        "that species differ in what they bear",
                        "trees that the layer does not hold, such as the neighbour's"));
    }

    @Override
    public List<Parameter<?>> parameters() {
        return List.of(OF, PER_INCH, LEAST, INSIDE);
    }

    @Override
    public boolean looksAtHeights() {
        return false;
    }

    @Override
    public List<Need> needs(Terms terms) {
        return List.of(new Need.OfLayer(Role.PIPE), new Need.OfLayer(Role.TREE));
    }

    @Override
    public List<Observation> observe(SiteAnalysis analysis, Terms terms) {
        Selection trees = terms.get(OF);
        List<Observation> observations = new ArrayList<>();
        for (Feature tree : trees.candidates(analysis)) {
            observe(analysis, terms, tree).stream()
                    .map(seen -> trees.settled(seen, tree))
                    .forEach(observations::add);
        }
        return observations;
    }

    private static List<Observation> observe(SiteAnalysis analysis, Terms terms, Feature tree) {
        Optional<RootRadius> radius = RootRadius.of(analysis.site(), tree, terms.get(PER_INCH), terms.find(LEAST));
        if (radius.isEmpty()) {
            return List.of(Observation.cannotTell(
                    tree,
                    new Missing(
                            "trunk_diameter of " + tree.spoken(),
                            "give trunk_diameter, or else canopy_radius, in "
                                    + tree.origin().file())));
        }
        double reach = radius.get().value().metres() + Dimension.LENGTH.tolerance();
        List<PipeRun> near = analysis.runsAsked().stream()
                .filter(run -> run.axis()
                        .isWithinDistance(
                                tree.geometry(),
                                reach
                                        + Accuracy.ofDistance(analysis, run.pipe(), tree)
                                                .metres()))
                .toList();
        if (near.isEmpty()) {
            return clear(analysis, tree, radius.get());
        }
        Geometry zone =
                analysis.zones().around(tree.geometry(), radius.get().value().metres(), ARC_SEGMENTS);
        List<Observation> inside = new ArrayList<>();
        for (PipeRun run : near) {
            double accuracy = Accuracy.ofDistance(analysis, run.pipe(), tree).metres();
            Inside seen = Inside.of(analysis.zones(), run.axis(), zone, accuracy);
            if (!seen.isClear()) {
                held(terms, run, tree, seen, radius.get()).ifPresent(inside::add);
            }
        }
        return inside.isEmpty() ? clear(analysis, tree, radius.get()) : inside;
    }

    private static Optional<Observation> held(
            Terms terms, PipeRun run, Feature tree, Inside inside, RootRadius radius) {
        return terms.get(INSIDE)
                .hold(
                        run.pipe(),
                        run.pipe().attributes(),
                        asked -> Observation.measured(
                                run.pipe(),
                                asked.against("length in the root zone", inside.length(), inside.accuracy())))
                .map(seen -> seen.against(tree).at(inside.where()).noting(radius.spoken()));
    }

    /** No pipe that a limit is asked of reaches into the root zone: the nearest pipe is told. */
    private static List<Observation> clear(SiteAnalysis analysis, Feature tree, RootRadius radius) {
        return analysis.network().runs().stream()
                .min(Comparator.comparingDouble(run -> run.axis().distance(tree.geometry())))
                .map(run -> Observation.measured(run.pipe(), distance(run, tree))
                        .against(tree)
                        .noting(radius.spoken()))
                .stream()
                .toList();
    }

    private static Measured distance(PipeRun run, Feature tree) {
        return Measured.fact("plan distance to the trunk", new Length(run.axis().distance(tree.geometry())));
    }

    /**
     * The radius of a tree's root zone.
     *
     * @param plan the plan
     * @param value the radius
     * @param from what it is taken from
     */
    private record RootRadius(Site plan, Length value, String from) {

        static Optional<RootRadius> of(Site plan, Feature tree, Quantity perInch, Optional<Quantity> least) {
            Optional<RootRadius> stated =
                    tree.get(Attribute.ROOT_RADIUS).map(radius -> new RootRadius(plan, radius, "as the plan gives it"));
            return stated.or(() -> tree.get(Attribute.TRUNK_DIAMETER).map(trunk -> ofTrunk(plan, trunk, perInch)))
                    .or(() -> tree.get(Attribute.CANOPY_RADIUS)
                            .map(crown -> new RootRadius(plan, crown, "its crown's, the trunk is not given")))
                    .map(radius -> radius.noLessThan(least));
        }

        private static RootRadius ofTrunk(Site plan, Length trunk, Quantity perInch) {
            return new RootRadius(
                    plan, new Length(trunk.in(Unit.INCH) * perInch.si()), "trunk " + plan.printed(trunk, Unit.INCH));
        }

        private RootRadius noLessThan(Optional<Quantity> least) {
            return least.filter(radius -> radius.si() > value.metres())
                    .map(radius -> new RootRadius(plan, new Length(radius.si()), from + ", the least counts"))
                    .orElse(this);
        }

        String spoken() {
            return "root zone of " + plan.printed(value, Unit.FOOT) + " radius (" + from + ")";
        }
    }
}
