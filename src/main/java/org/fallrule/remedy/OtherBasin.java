package org.fallrule.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fallrule.hydraulics.basin.Flotation;
import org.fallrule.measure.Area;
import org.fallrule.measure.Length;
import org.fallrule.measure.Mass;
import org.fallrule.measure.Printed;
import org.fallrule.measure.Unit;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;

/** Another basin in the same place: a deeper or shallower sump, weep holes, more weight, a wider or finer grate. */
final class OtherBasin implements Remedy {
    private static final int MOST = 400;
    private static final double SIXTEENTH = Unit.INCH.toSi() / 16;

    @Override
    public Set<String> checks() {
        return Set.of("drain_down", "frost", "attribute", "flotation", "inlet_capture");
    }

    @Override
    public List<Series> series(Situation at) {
        return at.subject(Role.INLET).map(inlet -> series(at, inlet)).orElse(List.of());
    }

    private static List<Series> series(Situation at, Feature inlet) {
        List<Series> series = new ArrayList<>();
        if (at.isOf("drain_down")) {
            series.add(new Series(MOST, steps -> weep(at, inlet, steps)));
            series.add(new Series(sumpSteps(at, inlet), steps -> sump(at, inlet, -steps)));
            series.add(Series.single(() -> noSump(at, inlet)));
        }
        if (at.isOf("frost", "attribute", "flotation")) {
            series.add(new Series(MOST, steps -> sump(at, inlet, steps)));
            series.add(Series.single(() -> noSump(at, inlet)));
        }
        if (at.isOf("flotation")) {
            series.add(0, new Series(MOST, steps -> weight(at, inlet, steps)));
        }
        if (at.isOf("inlet_capture")) {
            series.add(new Series(MOST, steps -> grate(at, inlet, steps)));
        }
        if (at.isOf("attribute")) {
            series.add(0, new Series(sixteenths(inlet) - 1, steps -> finer(at, inlet, steps)));
        }
        return series;
    }

    /** By how many steps a sump can be made shallower and still be one. */
    private static int sumpSteps(Situation at, Feature inlet) {
        return inlet.get(Attribute.SUMP)
                .map(sump -> (int) Math.ceil(sump.metres() / at.shown().inchStep() - 1e-6) - 1)
                .orElse(0);
    }

    private static Optional<Change> sump(Situation at, Feature inlet, int steps) {
        Optional<Length> deep = inlet.get(Attribute.SUMP)
                .map(sump -> new Length(sump.metres() + steps * at.shown().inchStep()))
                .filter(sump -> sump.metres() > 1e-6);
        return deep.map(sump -> new Change(
                at.edits().set(inlet, Attribute.SUMP, sump).site(),
                "a sump of " + at.shown().inches(sump.metres()) + " in " + inlet.spoken()));
    }

    private static Optional<Change> noSump(Situation at, Feature inlet) {
        return inlet.get(Attribute.SUMP)
                .filter(sump -> sump.metres() > 1e-6)
                .map(sump -> new Change(
                        at.edits().set(inlet, Attribute.SUMP, new Length(0)).site(),
                        "no sump in " + inlet.spoken() + ": its bottom at the invert"));
    }

    private static Optional<Change> weep(Situation at, Feature inlet, int steps) {
        Unit unit = Unit.SQUARE_INCH;
        double holes = Math.round(inlet.get(Attribute.WEEP_HOLE_AREA)
                                .map(area -> area.in(unit))
                                .orElse(0.0)
                        * 10)
                / 10.0;
        double more = holes + steps * 0.1;
        return Optional.of(new Change(
                at.edits()
                        .set(inlet, Attribute.WEEP_HOLE_AREA, new Area(Math.round(more * 10) / 10.0 * unit.toSi()))
                        .site(),
                "weep holes of " + Printed.of(new Area(more * unit.toSi()), unit) + " in the bottom of "
                        + inlet.spoken() + ", on stone"));
    }

    private static Optional<Change> weight(Situation at, Feature inlet, int steps) {
        Unit unit = at.analysis().site().metric() ? Unit.KILOGRAM : Unit.POUND;
        return inlet.get(Attribute.WEIGHT).map(now -> {
            int step = unit == Unit.KILOGRAM ? 2 : 5;
            double more = steps * step;
            double concrete = step * Math.ceil(Flotation.concrete(more) / step - 1e-6);
            return new Change(
                    at.edits()
                            .set(inlet, Attribute.WEIGHT, new Mass(now.si() + more * unit.toSi()))
                            .site(),
                    Printed.trimmed(more) + " " + unit.symbol() + " more weight on " + inlet.spoken() + ", or "
                            + Printed.trimmed(concrete) + " " + unit.symbol()
                            + " of concrete around it, some of which the ground water bears");
        });
    }

    private static Optional<Change> grate(Situation at, Feature inlet, int steps) {
        Unit unit = Unit.SQUARE_INCH;
        return inlet.get(Attribute.GRATE_OPEN_AREA).map(now -> {
            double open = Math.floor(now.in(unit) + 1e-6) + steps;
            return new Change(
                    at.edits()
                            .set(inlet, Attribute.GRATE_OPEN_AREA, new Area(open * unit.toSi()))
                            .site(),
                    "a grate with " + Printed.trimmed(open) + " sq in of openings on " + inlet.spoken());
        });
    }

    /** The openings of a grate in sixteenths of an inch, rounded up. */
    private static int sixteenths(Feature inlet) {
        return inlet.get(Attribute.GRATE_OPENING)
                .map(opening -> (int) Math.ceil(opening.metres() / SIXTEENTH - 1e-6))
                .orElse(0);
    }

    private static Optional<Change> finer(Situation at, Feature inlet, int steps) {
        int left = sixteenths(inlet) - steps;
        return Optional.of(new Change(
                at.edits()
                        .set(inlet, Attribute.GRATE_OPENING, new Length(left * SIXTEENTH))
                        .site(),
                "a grate on " + inlet.spoken() + " with openings of no more than " + Printed.trimmed(left / 16.0)
                        + " in"));
    }
}
