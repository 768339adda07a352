package org.fallrule.check.pipe;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.Parameter;
import org.fallrule.check.Selection;
import org.fallrule.filter.Truth;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Quantity;
import org.fallrule.network.Junction;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Feature;
import org.fallrule.site.Layer;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.locationtech.jts.linearref.LengthIndexedLine;

/** Where the drain can be opened to rod it: at cleanouts, at the inlets that a rule names, at the open end of an outfall. */
final class Openings {
    static final Parameter<Selection> AT =
            Parameter.features("opened_at", "the inlets through which the pipe can be reached", Role.INLET);
    static final Parameter<Quantity> WITHIN = Parameter.quantity(
                    "within", Dimension.LENGTH, "plan distance from which a cleanout serves a pipe")
            .always();

    private final Site site;
    private final Selection inlets;
    private final double within;

    /**
     * @param inlets the inlets through which the pipe can be reached
     * @param within metres in plan from which a cleanout serves a pipe
     */
    Openings(SiteAnalysis analysis, Selection inlets, double within) {
        this.site = analysis.site();
        this.inlets = inlets;
        this.within = within + Dimension.LENGTH.tolerance();
    }

    boolean at(Junction junction) {
        return junction.isOutfall()
                || junction.structures().stream().anyMatch(this::isOpen)
                || site.features(Role.CLEANOUT).stream()
                        .anyMatch(
                                cleanout -> cleanout.geometry().getCoordinate().distance(junction.place()) <= within);
    }

    private boolean isOpen(Feature structure) {
        return structure.role() == Role.CLEANOUT
                || (structure.role() == inlets.role() && inlets.chooses(structure) == Truth.TRUE);
    }

    /** The stations in metres at which a pipe can be opened, its ends among them, in their order. */
    List<Double> along(PipeRun run) {
        double length = run.axis().getLength();
        Stream<Double> ends = Stream.concat(
                at(run.up()) ? Stream.of(0.0) : Stream.of(), at(run.down()) ? Stream.of(length) : Stream.of());
        LengthIndexedLine stations = new LengthIndexedLine(run.axis());
        Stream<Double> between = site.features(Role.CLEANOUT).stream()
                .filter(cleanout -> cleanout.geometry().isWithinDistance(run.axis(), within))
                .map(cleanout -> stations.project(cleanout.geometry().getCoordinate()));
        return Stream.concat(ends, between).sorted().distinct().toList();
    }

    /** What the plan does not say about where the drain can be opened. */
    private List<Missing> open() {
        List<Missing> open = new ArrayList<>();
        Stream.of(Role.CLEANOUT, inlets.role())
                .filter(role -> site.layer(role) instanceof Layer.NotSupplied)
                .forEach(role -> open.add(new Missing(
                        "the plan's " + role.spoken() + "s",
                        "give a " + role.word() + " layer, or state that there are none")));
        site.features(inlets.role()).stream()
                .filter(inlet -> inlets.chooses(inlet) == Truth.UNKNOWN)
                .forEach(inlet -> open.add(inlets.lacking(inlet)));
        return open;
    }

    /** Whether a bend at a station is reached from one of the stations at which its pipe can be opened; metres. */
    boolean isAt(List<Double> opened, double station) {
        return opened.stream().anyMatch(opening -> Math.abs(opening - station) <= within);
    }

    /** What does not meet a rule for want of an opening may yet have one that the plan does not tell of. */
    Observation perhapsMore(Observation seen) {
        Observation open = seen;
        for (Missing missing : open()) {
            open = open.with(Outcome.CANNOT_TELL).lacking(missing);
        }
        return open;
    }
}
