package org.fallrule.check.pipe;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.Accuracy;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.Check;
import org.fallrule.check.CheckPage;
import org.fallrule.check.Limits;
import org.fallrule.check.Need;
import org.fallrule.check.Parameter;
import org.fallrule.check.Terms;
import org.fallrule.document.Place;
import org.fallrule.finding.Measured;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.measure.Limit;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.Range;
import org.fallrule.measure.Unit;
import org.fallrule.measure.Written;
import org.fallrule.network.Junction;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;

/** Whether there is fall enough between each inlet and its outfall for every pipe on the way to have its least slope. */
@AutoService(Check.class)
public final class FallAvailable implements Check {
    static final Parameter<Limits> SLOPE = Parameter.limit(
                    "slope_at_least", Bound.AT_LEAST, Dimension.SLOPE, "the least slope of each pipe on the way")
            .within(Range.between("0 %", "100 %", Dimension.SLOPE))
            .always();
    static final Parameter<Quantity> COVER = Parameter.quantity(
                    "cover_at_inlet",
                    Dimension.LENGTH,
                    "cover to allow at the inlet where the plan gives a rim but no invert")
            .always();

    @Override
    public String name() {
        return "fall_available";
    }

    @Override
    public CheckPage page() {
        return new CheckPage(
                "The fall from each inlet to its outfall, held against what the pipes between them need at their least"
                        + " slopes. The level at the inlet is the invert of the pipe that leaves it; where the plan"
                        + " gives none, the rim less the cover to allow and the pipe's outside diameter. The level at"
                        + " the outfall is the invert there, or the ground.",
                "available = level at inlet - level at outfall; needed = sum of (least slope x plan length)",
                "Follows from the least slopes; no published source of its own.",
                List.of("drops that structures on the way need", "tailwater at the outfall"));
    }

    @Override
    public List<Parameter<?>> parameters() {
        return List.of(SLOPE, COVER);
    }

    @Override
    public List<Need> needs(Terms terms) {
        return List.of(new Need.OfLayer(Role.PIPE), new Need.OfLayer(Role.INLET), new Need.OfLayer(Role.OUTFALL));
    }

    @Override
    public List<Observation> observe(SiteAnalysis analysis, Terms terms) {
        return analysis.site().features(Role.INLET).stream()
                .map(inlet -> observe(analysis, terms, inlet))
                .toList();
    }

    private static Observation observe(SiteAnalysis analysis, Terms terms, Feature inlet) {
        List<PipeRun> path = analysis.network()
                .junctionOf(inlet)
                .map(analysis.network()::downstreamOf)
                .orElse(List.of());
        if (path.isEmpty() || !last(path).down().isOutfall()) {
            return Observation.cannotTell(
                    inlet, new Missing("a way from " + inlet.spoken() + " to an outfall", "join its pipes end to end"));
        }
        Optional<Elevation> start = levelAtInlet(inlet, path.get(0), terms);
        Optional<Elevation> end = levelAtOutfall(analysis, last(path));
        if (start.isEmpty() || end.isEmpty()) {
            return levelsMissing(inlet, path, start, end);
        }
        Length available = start.get().above(end.get());
        return noting(held(analysis.site(), terms, inlet, path, available, accuracy(analysis, path)), path);
    }

    /** A level that the plan does not give is told beside what follows from it. */
    private static Observation noting(Observation seen, List<PipeRun> path) {
        Observation told = seen;
        if (path.get(0).invertUp().isEmpty()) {
            told = told.noting(
                    "no invert is given at the inlet: its level is taken as the rim less the cover to allow and"
                            + " the pipe");
        }
        return last(path).invertDown().isPresent()
                ? told
                : told.noting("no invert is given at the outfall: its level is taken as the ground's");
    }

    private static PipeRun last(List<PipeRun> path) {
        return path.get(path.size() - 1);
    }

    private static Optional<Elevation> levelAtInlet(Feature inlet, PipeRun first, Terms terms) {
        Length cover = new Length(terms.get(COVER).si());
        return first.invertUp()
                .or(() -> inlet.get(Attribute.RIM)
                        .flatMap(
                                rim -> first.size().map(size -> rim.minus(cover).minus(size.value()))));
    }

    private static Optional<Elevation> levelAtOutfall(SiteAnalysis analysis, PipeRun last) {
        Junction outfall = last.down();
        return last.invertDown().or(() -> analysis.ground().flatMap(ground -> ground.elevationAt(outfall.place())));
    }

    private static double accuracy(SiteAnalysis analysis, List<PipeRun> path) {
        Feature first = path.get(0).pipe();
        return last(path).invertDown().isPresent()
                ? Accuracy.ofHeight(analysis, first, last(path).pipe()).metres()
                : Accuracy.ofHeightAtGround(analysis, first).metres();
    }

    private static Observation held(
            Site plan, Terms terms, Feature inlet, List<PipeRun> path, Length available, double accuracy) {
        double needed = 0;
        Optional<Place> setBy = Optional.empty();
        for (PipeRun run : path) {
            Limits.Answer answer = terms.get(SLOPE).of(run.pipe().attributes());
            if (answer instanceof Limits.Answer.Undecided undecided) {
                return Observation.cannotTell(inlet, undecided.missing(run.pipe()));
            }
            if (answer instanceof Limits.Answer.Asked asked) {
                needed += asked.limit().value().quantity().si() * run.length().metres();
                setBy = Optional.of(asked.setBy());
            }
        }
        Unit unit = plan.unit(Unit.FOOT);
        Limit limit = new Limit(Bound.AT_LEAST, Written.of(needed / unit.toSi(), unit, 2));
        return Observation.measured(
                        inlet, new Measured("fall to the outfall", available, accuracy, Optional.of(limit), setBy))
                .against(last(path).down().structure(Role.OUTFALL).orElseThrow());
    }

    private static Observation levelsMissing(
            Feature inlet, List<PipeRun> path, Optional<Elevation> start, Optional<Elevation> end) {
        Observation seen = Observation.plain(Outcome.CANNOT_TELL, inlet);
        if (start.isEmpty()) {
            seen = seen.lacking(new Missing(
                    "a level at " + inlet.spoken(),
                    "give invert_up of " + path.get(0).pipe().spoken()
                            + ", or the inlet's rim and the pipe's diameter"));
        }
        if (end.isEmpty()) {
            seen = seen.lacking(new Missing(
                    "a level at the outfall of " + last(path).pipe().spoken(),
                    "give its invert, or spot elevations around it"));
        }
        return seen;
    }
}
