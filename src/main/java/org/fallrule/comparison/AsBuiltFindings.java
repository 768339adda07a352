package org.fallrule.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Measured;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.measure.Printed;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.Slope;
import org.fallrule.measure.Unit;
import org.fallrule.network.PipeRun;
import org.fallrule.rulebook.AsBuiltTolerances;
import org.fallrule.rulebook.AsBuiltTolerances.Measure;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Geometry;

/**
 * The work as built held against its design, with the tolerances of the rule book: each invert, rim, slope and place that the
 * design gives. What was not measured cannot be told.
 */
final class AsBuiltFindings {
    private final SiteAnalysis design;
    private final BuiltWork built;
    private final AsBuiltTolerances tolerances;
    private final Unit heights;
    private final List<Finding> findings = new ArrayList<>();

    private AsBuiltFindings(SiteAnalysis design, BuiltWork built, AsBuiltTolerances tolerances) {
        this.design = design;
        this.built = built;
        this.tolerances = tolerances;
        this.heights = design.site().metric() ? Unit.ELEVATION_METRE : Unit.ELEVATION_FOOT;
    }

    static List<Finding> of(SiteAnalysis design, BuiltWork built, AsBuiltTolerances tolerances) {
        AsBuiltFindings all = new AsBuiltFindings(design, built, tolerances);
        designs(design).forEach(all::observe);
        return List.copyOf(all.findings);
    }

    /** What the design proposes to build. */
    static List<Feature> designs(SiteAnalysis design) {
        return Stream.of(Role.values())
                .filter(Role::isOfDrain)
                .flatMap(role -> design.site().features(role).stream())
                .filter(Feature::isDesigned)
                .toList();
    }

    private void observe(Feature feature) {
        if (feature.role() == Role.PIPE) {
            design.network().runOf(feature).ifPresent(this::observe);
        } else {
            feature.get(Attribute.INVERT).ifPresent(height -> height(feature, Measure.INVERT, "invert", height));
            feature.get(Attribute.RIM).ifPresent(height -> height(feature, Measure.RIM, "rim", height));
            position(feature, feature.geometry());
        }
    }

    private void observe(PipeRun run) {
        run.invertUp().ifPresent(height -> height(run.pipe(), Measure.INVERT, "invert_up", height));
        run.invertDown().ifPresent(height -> height(run.pipe(), Measure.INVERT, "invert_down", height));
        run.slope().ifPresent(slope -> slope(run, slope));
        position(run.pipe(), run.axis());
    }

    private void height(Feature feature, Measure measure, String kind, Elevation designed) {
        String of = kind.replace('_', ' ');
        Optional<Elevation> found = built.height(feature, kind);
        if (found.isEmpty()) {
            add(measure, missing(feature, of));
            return;
        }
        double rise = found.get().metres() - designed.metres();
        String stands = "designed " + Printed.of(designed, heights) + ", built " + Printed.of(found.get(), heights)
                + (rise > 0 ? ", too high" : ", too low");
        String says = Math.abs(rise) <= designed.dimension().tolerance() ? "as designed" : stands;
        hold(measure, feature, of + " off by", new Length(Math.abs(rise)), built.heightAccuracy(feature, kind), says);
    }

    private void slope(PipeRun run, Slope designed) {
        Optional<Elevation> up = built.height(run.pipe(), "invert_up");
        Optional<Elevation> down = built.height(run.pipe(), "invert_down");
        double length =
                built.run(run.pipe()).map(PipeRun::length).orElse(run.length()).metres();
        if (up.isEmpty() || down.isEmpty() || !(length > 0)) {
            add(Measure.SLOPE, missing(run.pipe(), "slope"));
            return;
        }
        Slope found = new Slope((up.get().metres() - down.get().metres()) / length);
        double accuracy = Math.hypot(
                        built.heightAccuracy(run.pipe(), "invert_up"), built.heightAccuracy(run.pipe(), "invert_down"))
                / length;
        hold(
                Measure.SLOPE,
                run.pipe(),
                "slope off by",
                new Slope(Math.abs(found.si() - designed.si())),
                accuracy,
                "designed " + Printed.of(designed, Unit.PERCENT) + ", built " + Printed.of(found, Unit.PERCENT));
    }

    private void position(Feature feature, Geometry designed) {
        Optional<Length> offset = built.offset(feature, designed);
        if (offset.isEmpty()) {
            add(Measure.POSITION, missing(feature, "place"));
            return;
        }
        hold(Measure.POSITION, feature, "place off by", offset.get(), built.planAccuracy(feature), "in plan");
    }

    private static Observation missing(Feature feature, String what) {
        return Observation.cannotTell(
                feature,
                new Missing(
                        "the " + what + " of " + feature.spoken() + " as built",
                        "measure it, and give it on a feature of that name with status as_built, or as a point of the"
                                + " layer as_built"));
    }

    private void hold(Measure measure, Feature feature, String of, Quantity off, double accuracy, String note) {
        tolerances
                .of(measure)
                .ifPresent(tolerance -> add(
                        measure,
                        Observation.measured(
                                        feature,
                                        new Measured(
                                                of,
                                                off,
                                                accuracy,
                                                Optional.of(tolerance.limit()),
                                                Optional.of(tolerance.setBy()),
                                                heights == Unit.ELEVATION_METRE))
                                .noting(note)));
    }

    /** Where no book gives a tolerance nothing is held; the comparison says so once. */
    private void add(Measure measure, Observation seen) {
        tolerances
                .of(measure)
                .ifPresent(tolerance -> findings.add(new Finding(
                        measure.rule(),
                        measure.title(),
                        "as_built",
                        tolerance.weight(),
                        tolerance.basis(),
                        tolerance.setBy(),
                        seen)));
    }
}
