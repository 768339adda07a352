package org.fallrule.proposal;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.analysis.Accuracy;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.measure.Length;
import org.fallrule.network.OutsideDiameter;
import org.fallrule.rulebook.Rule;
import org.fallrule.site.Attribute;
import org.fallrule.site.Attributes;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Coordinate;

/** What the rules of a book ask of a line in height: slope, cover, and what it keeps of the utilities that it crosses. Metres. */
final class LineRules {
    /** Stands for a pipe far from any outfall. */
    private static final Length FAR = new Length(1e6);

    /** How closely the end of the shallow last run is looked for. */
    private static final double STEP = 0.05;

    /** A last run longer than this is no last run. */
    private static final double LONGEST_LAST_RUN = 10;

    private final SiteAnalysis analysis;
    private final List<RuleKeys> rules;
    private final boolean surely;

    /** @param surely whether the accuracy of survey and marks is to count */
    LineRules(SiteAnalysis analysis, List<Rule> rules, boolean surely) {
        this.analysis = analysis;
        this.rules = rules.stream().map(RuleKeys::new).toList();
        this.surely = surely;
    }

    /** The least slope of a pipe. */
    double leastSlope(Feature pipe) {
        return Math.max(
                0,
                Stream.concat(asked("slope", "at_least", pipe), asked("fall_available", "slope_at_least", pipe))
                        .max(Double::compare)
                        .orElse(0.0));
    }

    /** The greatest slope of a pipe; beyond all measure where none is asked. */
    double greatestSlope(Feature pipe) {
        return asked("slope", "at_most", pipe).min(Double::compare).orElse(Double.MAX_VALUE);
    }

    private Stream<Double> asked(String check, String key, Feature pipe) {
        return rules.stream()
                .filter(rule -> rule.isOf(check))
                .flatMap(rule -> rule.limits(key).stream())
                .flatMap(limits -> BarredGround.asked(limits, pipe).stream());
    }

    /**
     * The least cover of a pipe at a place; empty where none is asked.
     *
     * @param toOutfall metres still to run to a daylight outfall
     */
    Optional<Double> cover(Feature pipe, Coordinate place, double toOutfall) {
        Attributes attributes = pipe.attributes().with(Attribute.TO_OUTFALL, new Length(toOutfall));
        Feature there = new Feature(
                Role.PIPE,
                pipe.id(),
                pipe.geometry(),
                analysis.surfaces()
                        .at(place)
                        .map(above -> attributes.with(Attribute.ABOVE, above))
                        .orElse(attributes),
                pipe.origin());
        double accuracy = surely ? Accuracy.ofHeightAtGround(analysis, pipe).metres() : 0;
        return asked("cover", "at_least", there).max(Double::compare).map(least -> least + accuracy);
    }

    /** How long the last run before a daylight outfall is of which no cover is asked. */
    double lastRun(Feature pipe, Coordinate place) {
        if (cover(pipe, place, FAR.metres()).isEmpty()) {
            return LONGEST_LAST_RUN;
        }
        double metres = 0;
        while (metres + STEP <= LONGEST_LAST_RUN
                && cover(pipe, place, metres + STEP).isEmpty()) {
            metres += STEP;
        }
        return metres;
    }

    /** What lies on the ground at a place; empty where the plan leaves it open. */
    String above(Coordinate place) {
        return analysis.surfaces().at(place).orElse("");
    }

    /** The cover to allow at an inlet by the rules on the fall; the cover far from the outfall where they say none. */
    double coverAtInlet(Feature pipe, Coordinate place) {
        double byFall = rules.stream()
                .filter(rule -> rule.isOf("fall_available"))
                .flatMap(rule -> rule.si("cover_at_inlet").stream())
                .max(Double::compare)
                .orElse(0.0);
        return Math.max(byFall, cover(pipe, place, FAR.metres()).orElse(0.0));
    }

    static double far() {
        return FAR.metres();
    }

    /**
     * The levels of the pipe's outside bottom and top that a crossing bars.
     *
     * @param overFrom the least level of its bottom, if it passes over
     * @param underTo the greatest level of its top, if it passes under
     */
    record Window(double overFrom, double underTo) {}

    /** What a utility of a known level keeps clear of itself; empty where no height is asked. */
    Optional<Window> window(Feature pipe, Feature utility, double top) {
        return rules.stream()
                .filter(rule -> rule.isOf("separation") && concerns(rule, utility))
                .flatMap(rule -> window(rule, pipe, utility, top).stream())
                .reduce(LineRules::tighter);
    }

    private static Window tighter(Window one, Window other) {
        return new Window(Math.max(one.overFrom, other.overFrom), Math.min(one.underTo, other.underTo));
    }

    private Optional<Window> window(RuleKeys rule, Feature pipe, Feature utility, double top) {
        Optional<Double> across = height(rule, "across_at_least", pipe, utility);
        Optional<Double> over = height(rule, "over_at_least", pipe, utility).or(() -> across);
        Optional<Double> under = height(rule, "under_at_least", pipe, utility).or(() -> across);
        Optional<Double> utilityOver = height(rule, "utility_over_at_least", pipe, utility);
        if (over.isEmpty() && under.isEmpty() && utilityOver.isEmpty()) {
            return Optional.empty();
        }
        double accuracy = surely ? Accuracy.ofHeight(analysis, pipe, utility).metres() : 0;
        double bottom = top - size(rule, utility);
        double least = Math.max(under.orElse(0.0), utilityOver.orElse(0.0));
        return Optional.of(new Window(
                utilityOver.isPresent() ? Double.MAX_VALUE : top + over.orElse(0.0) + accuracy,
                bottom - least - accuracy));
    }

    private static Optional<Double> height(RuleKeys rule, String key, Feature pipe, Feature utility) {
        boolean encased = Stream.of(pipe, utility)
                .anyMatch(each -> each.get(Attribute.ENCASED).orElse(false));
        return rule.limits(key).flatMap(limits -> BarredGround.asked(limits, withEncasing(pipe, encased)));
    }

    private static Feature withEncasing(Feature pipe, boolean encased) {
        return new Feature(
                pipe.role(),
                pipe.id(),
                pipe.geometry(),
                pipe.attributes().with(Attribute.ENCASED, encased),
                pipe.origin());
    }

    private static boolean concerns(RuleKeys rule, Feature utility) {
        return rule.selection("from").filter(from -> from.mayChoose(utility)).isPresent();
    }

    private static double size(RuleKeys rule, Feature utility) {
        return OutsideDiameter.of(utility)
                .map(size -> size.value().metres())
                .or(() -> rule.si("size_if_unknown"))
                .orElse(0.0);
    }

    /**
     * A strip along a utility through which the line may only pass across.
     *
     * @param rule the rule that asks it
     * @param utility the utility
     * @param half from its centreline to where a pipe's axis is free, metres
     * @param least least angle of a crossing, radians
     */
    record Corridor(Rule rule, Feature utility, double half, double least) {}

    /** The strips along utilities. A crossing has to be so steep that it is over within what the rule excuses near a crossing. */
    List<Corridor> corridors(Feature pipe, double squarest) {
        double radius = OutsideDiameter.of(pipe).map(OutsideDiameter::radius).orElse(0.0);
        return rules.stream()
                .filter(rule -> rule.isOf("separation"))
                .flatMap(rule -> analysis.site().features(Role.UTILITY).stream()
                        .filter(utility -> concerns(rule, utility))
                        .flatMap(utility -> height(rule, "beside_at_least", pipe, utility)
                                .map(beside -> corridor(rule, pipe, utility, beside + radius, squarest))
                                .stream()))
                .toList();
    }

    private Corridor corridor(RuleKeys rule, Feature pipe, Feature utility, double apart, double squarest) {
        double accuracy = surely ? Accuracy.ofDistance(analysis, pipe, utility).metres() : 0;
        double half = apart + size(rule, utility) / 2 + accuracy;
        double excused = rule.si("near_crossing").orElse(0.0);
        double byRule = rules.stream()
                .filter(each -> each.isOf("crossing_angle") && concerns(each, utility))
                .flatMap(each -> each.limits("at_least").stream())
                .flatMap(limits -> BarredGround.asked(limits, pipe).stream())
                .max(Double::compare)
                .orElse(0.0);
        double withinExcused = excused > 0 ? Math.asin(Math.min(1, half / excused)) : squarest;
        return new Corridor(rule.rule(), utility, half, Math.min(squarest, Math.max(byRule, withinExcused)));
    }

    /** The width around a utility, from its centreline to the pipe's, within which the trench is dug by hand. */
    Optional<Double> handDig(Feature pipe, Feature utility) {
        double radius = OutsideDiameter.of(pipe).map(OutsideDiameter::radius).orElse(0.0);
        return rules.stream()
                .filter(rule -> rule.isOf("hand_dig") && concerns(rule, utility))
                .flatMap(rule -> rule.si("zone").map(zone -> zone + radius + size(rule, utility) / 2).stream())
                .max(Double::compare);
    }

    /** The radius of a tree's root zone, by whichever rule asks the most. */
    Optional<Double> rootZone(Feature tree) {
        return rules.stream()
                .filter(rule -> rule.isOf("root_zone"))
                .flatMap(rule -> BarredGround.rootRadius(rule, tree).stream())
                .max(Double::compare);
    }

    /** A limit of a check on how far apart something may be, the least of all rules; beyond all measure where none is asked. */
    double least(String check, String key, Feature pipe) {
        return asked(check, key, pipe).min(Double::compare).orElse(Double.MAX_VALUE);
    }

    /** The rules of a check. */
    Stream<RuleKeys> of(String check) {
        return rules.stream().filter(rule -> rule.isOf(check));
    }
}
