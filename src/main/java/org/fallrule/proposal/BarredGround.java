package org.fallrule.proposal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.Accuracy;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.Limits;
import org.fallrule.check.Selection;
import org.fallrule.measure.Length;
import org.fallrule.measure.Unit;
import org.fallrule.network.OutsideDiameter;
import org.fallrule.rulebook.Rule;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * The ground that rules bar to a feature wherever it stands, read from the terms of the rules: setbacks ({@code clearance}),
 * areas to lie inside or outside of ({@code within}, {@code outside}), root zones, and the footprint that a footing keeps
 * clear of trenches. A place is barred where the review would not say for sure that it meets the rule: the survey's accuracy
 * counts to the setback.
 */
final class BarredGround {
    /** Straight pieces to a quarter circle; the buffer is widened so that no chord comes nearer than the distance asked. */
    private static final int ARC_SEGMENTS = 16;

    private static final double CHORD = 1 / Math.cos(Math.PI / (4 * ARC_SEGMENTS));
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    private final SiteAnalysis analysis;
    private final Feature probe;
    private final boolean surely;
    private final Geometry around;
    private final List<Barred> barred = new ArrayList<>();

    /** @param surely whether the accuracy of the survey is to count */
    private BarredGround(SiteAnalysis analysis, Feature probe, boolean surely) {
        this.analysis = analysis;
        this.probe = probe;
        this.surely = surely;
        this.around = analysis.site()
                .ownLot()
                .map(lot -> lot.geometry().getEnvelope().buffer(1))
                .orElseGet(GEOMETRY::createPolygon);
    }

    /**
     * Ground that a rule bars.
     *
     * @param rule the rule
     * @param area where the feature may not stand, or a pipe's axis not run
     */
    record Barred(Rule rule, Geometry area) {}

    /** What each rule bars; rules that bar nothing are left out. */
    static List<Barred> of(SiteAnalysis analysis, List<Rule> rules, Feature probe, boolean surely) {
        BarredGround ground = new BarredGround(analysis, probe, surely);
        rules.forEach(rule -> ground.add(new RuleKeys(rule)));
        return List.copyOf(ground.barred);
    }

    private void add(RuleKeys rule) {
        switch (rule.rule().check().name()) {
            case "clearance" -> clearance(rule);
            case "within" -> within(rule);
            case "outside" -> outside(rule);
            case "root_zone" -> roots(rule);
            case "footing_plane" -> footings(rule);
            default -> {}
        }
    }

    private void bar(RuleKeys rule, Geometry area) {
        if (!area.isEmpty()) {
            barred.add(new Barred(rule.rule(), area));
        }
    }

    private void clearance(RuleKeys rule) {
        rule.selection("from")
                .filter(this::chooses)
                .ifPresent(from -> others(rule, "to")
                        .forEach(other ->
                                apart(rule, other, rule.limits("at_least").flatMap(limits -> asked(limits, probe)))));
        rule.selection("to")
                .filter(this::chooses)
                .ifPresent(to -> others(rule, "from")
                        .forEach(other ->
                                apart(rule, other, rule.limits("at_least").flatMap(limits -> asked(limits, other)))));
        rule.selection("from")
                .filter(this::chooses)
                .flatMap(from -> rule.limits("at_most"))
                .flatMap(limits -> asked(limits, probe))
                .ifPresent(most -> bar(
                        rule,
                        around.difference(union(others(rule, "to").stream()
                                .map(other -> outline(other).buffer(most + radius(other) - accuracy(other)))
                                .toList()))));
    }

    private void apart(RuleKeys rule, Feature other, Optional<Double> least) {
        least.map(metres -> metres + accuracy(other) + radius(other) + radius(probe))
                .filter(reach -> reach > 0)
                .map(reach -> outline(other).buffer(reach * CHORD, ARC_SEGMENTS))
                .map(near -> isOwnLot(other) ? near.union(around.difference(other.geometry())) : near)
                .ifPresent(area -> bar(rule, area));
    }

    private boolean isOwnLot(Feature other) {
        return other.role() == Role.LOT && other.get(Attribute.OWN).orElse(true);
    }

    private static Geometry outline(Feature feature) {
        return feature.role() == Role.LOT ? feature.geometry().getBoundary() : feature.geometry();
    }

    private void within(RuleKeys rule) {
        rule.selection("subject")
                .filter(this::chooses)
                .flatMap(subject -> rule.limits("reach_at_most"))
                .flatMap(limits -> asked(limits, probe))
                .ifPresent(reach -> bar(
                        rule,
                        around.difference(union(others(rule, "area").stream()
                                .map(area -> area.geometry().buffer(reach - accuracy(area)))
                                .toList()))));
    }

    private void outside(RuleKeys rule) {
        rule.selection("subject")
                .filter(this::chooses)
                .flatMap(subject -> rule.limits("inside_at_most"))
                .flatMap(limits -> asked(limits, probe))
                .ifPresent(inside -> others(rule, "area").stream()
                        .filter(area -> area.geometry().getDimension() == 2)
                        .forEach(area -> bar(rule, area.geometry().buffer(accuracy(area) - pointLimit(inside)))));
    }

    /** Of a line the limit is a length along it, which no single place has. */
    private double pointLimit(double inside) {
        return probe.role() == Role.PIPE ? 0 : inside;
    }

    private void roots(RuleKeys rule) {
        if (probe.role() == Role.PIPE
                && rule.limits("inside_at_most")
                        .flatMap(limits -> asked(limits, probe))
                        .isPresent()) {
            others(rule, "of")
                    .forEach(tree -> rootRadius(rule, tree)
                            .ifPresent(radius -> bar(
                                    rule, tree.geometry().buffer((radius + accuracy(tree)) * CHORD, ARC_SEGMENTS))));
        }
    }

    /** As the check has it: the radius given, else by the trunk, else the crown's; no less than the least. */
    static Optional<Double> rootRadius(RuleKeys rule, Feature tree) {
        double least = rule.si("radius_at_least").orElse(0.0);
        return tree.get(Attribute.ROOT_RADIUS)
                .map(Length::metres)
                .or(() -> tree.get(Attribute.TRUNK_DIAMETER)
                        .flatMap(trunk -> rule.si("radius_per_inch").map(each -> each * trunk.in(Unit.INCH))))
                .or(() -> tree.get(Attribute.CANOPY_RADIUS).map(Length::metres))
                .map(radius -> Math.max(radius, least));
    }

    /** Beside a footing the trench's own half width is the least; how much more a deep one needs hangs on its depth. */
    private void footings(RuleKeys rule) {
        if (probe.role() == Role.PIPE) {
            double trench = radius(probe) + rule.si("trench_beside").orElse(0.0);
            others(rule, "to")
                    .forEach(building ->
                            bar(rule, building.geometry().buffer((trench + accuracy(building)) * CHORD, ARC_SEGMENTS)));
        }
    }

    private boolean chooses(Selection selection) {
        return selection.role() == probe.role() && selection.mayChoose(probe);
    }

    private List<Feature> others(RuleKeys rule, String key) {
        return rule.selection(key).stream()
                .flatMap(selection -> selection.candidates(analysis.site()).stream())
                .filter(other -> !other.role().isOfDrain() || other.role() == Role.INLET)
                .toList();
    }

    private double accuracy(Feature other) {
        return surely ? Accuracy.ofDistance(analysis, probe, other).metres() : 0;
    }

    private static double radius(Feature feature) {
        boolean isPipe = feature.role() == Role.PIPE || feature.role() == Role.UTILITY;
        return isPipe ? OutsideDiameter.of(feature).map(OutsideDiameter::radius).orElse(0.0) : 0;
    }

    private static Geometry union(List<Geometry> areas) {
        return GEOMETRY.createGeometryCollection(areas.toArray(new Geometry[0])).union();
    }

    /** The limit for something in SI; where the plan does not say what the limit depends on, the strictest there is. */
    static Optional<Double> asked(Limits limits, Feature subject) {
        Limits.Answer answer = limits.of(subject.attributes());
        if (answer instanceof Limits.Answer.Asked asked) {
            return Optional.of(asked.limit().value().quantity().si());
        }
        return answer instanceof Limits.Answer.Undecided
                ? limits.cases().stream()
                        .flatMap(each -> each.limit().stream())
                        .map(limit -> limit.value().quantity().si())
                        .max(Double::compare)
                : Optional.empty();
    }
}
