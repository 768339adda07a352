package org.fallrule.remedy;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;

/**
 * Grates and covers where the ground is changed around them: they go up with it, as far as the plan proposes them. No rule asks
 * that they lie open, as it is what they are.
 *
 * @param at the submitted plan
 * @param changed the plan with other ground
 */
record Rims(Situation at, SiteAnalysis changed) {
    private static final double ROUNDING = 1e-6;

    /** The changed plan, every covered rim raised to the ground again, by a whole number of steps. */
    Site raised() {
        Edits edits = new Edits(changed.site(), changed.network());
        covered()
                .filter(Feature::isDesigned)
                .forEach(structure -> edits.set(
                        structure,
                        Attribute.RIM,
                        structure.get(Attribute.RIM).orElseThrow().plus(new Length(rise(structure)))));
        return edits.site();
    }

    /** {@code , the rim of inlet CB-2 0.07 ft higher with it}; nothing where none is covered. */
    String says() {
        return covered()
                .filter(Feature::isDesigned)
                .map(structure -> ", the rim of " + structure.spoken() + " "
                        + at.shown().height(rise(structure)) + " higher with it")
                .collect(Collectors.joining());
    }

    private double rise(Feature structure) {
        double step = at.shown().heightStep();
        return step
                * Math.ceil(
                        (below(changed, structure).orElse(0.0) - allowed(at.analysis(), structure)) / step - ROUNDING);
    }

    private Stream<Feature> covered() {
        return covered(at.analysis(), changed);
    }

    /** The first basin or cleanout whose rim other ground covers. */
    static Optional<Drawback> drawback(SiteAnalysis submitted, SiteAnalysis changed) {
        return submitted.ground().equals(changed.ground())
                ? Optional.empty()
                : covered(submitted, changed)
                        .map(structure -> new Drawback.Buried(
                                structure.spoken(),
                                new Length(below(changed, structure).orElse(0.0))))
                        .<Drawback>map(buried -> buried)
                        .findFirst();
    }

    /** The basins and cleanouts that the ground lies higher over than it did, and above their rims; downspouts stand in it. */
    private static Stream<Feature> covered(SiteAnalysis submitted, SiteAnalysis changed) {
        return Stream.of(Role.INLET, Role.CLEANOUT)
                .flatMap(role -> changed.site().features(role).stream())
                .filter(structure -> !structure.get(Attribute.KIND).orElse("").equals("downspout"))
                .filter(structure -> below(changed, structure)
                        .filter(depth -> depth > allowed(submitted, structure) + Dimension.LENGTH.tolerance())
                        .isPresent());
    }

    /** As deep as the rim of a structure lies in the submitted plan, where it lies below the ground there. */
    private static double allowed(SiteAnalysis submitted, Feature structure) {
        List<Feature> were = submitted.site().features(structure.role());
        return were.stream()
                .filter(each -> each.id().equals(structure.id()))
                .findFirst()
                .flatMap(each -> below(submitted, each))
                .map(depth -> Math.max(0, depth))
                .orElse(0.0);
    }

    /** Metres from the finished ground down to a rim; negative above it. */
    private static Optional<Double> below(SiteAnalysis analysis, Feature structure) {
        Optional<Elevation> rim = structure.get(Attribute.RIM);
        return rim.flatMap(level -> analysis.ground()
                .flatMap(ground -> ground.elevationAt(structure.geometry().getCoordinate()))
                .map(here -> here.above(level).metres()));
    }
}
