package org.fallrule.check.pipe;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.analysis.SurfaceAbove;
import org.fallrule.check.Limits;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.network.PipeProfile;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Attribute;
import org.fallrule.site.Attributes;

/**
 * Walks along a pipe and gathers the cover over it into stretches of one limit each.
 *
 * <p>The run is cut where the ground changes its grade, where another surface begins, and where the limit changes. Between two
 * cuts ground and pipe are straight, so that the cover is least and greatest at the cuts.
 */
final class CoverSurvey {
    /** How closely, in metres along the pipe, to look for a change of limit; a stretch shorter than this can be missed. */
    private static final double STEP = 0.25;
    /** How exactly, in metres, a change of limit is found. */
    private static final double EXACTLY = 1e-5;

    /** Stands for the way to a daylight outfall where the water never comes to one. */
    private static final double FAR = 1e6;

    private final SiteAnalysis analysis;
    private final PipeRun run;
    private final PipeProfile profile;
    private final Limits limits;
    private final SurfaceAbove surfaces;
    private final double beyond;
    private final boolean perhapsNoDaylight;

    CoverSurvey(SiteAnalysis analysis, PipeRun run, PipeProfile profile, Limits limits) {
        this.analysis = analysis;
        this.run = run;
        this.profile = profile;
        this.limits = limits;
        this.surfaces = new SurfaceAbove(analysis.site());
        this.beyond = analysis.network().lengthToDaylight(run).orElse(FAR);
        this.perhapsNoDaylight = analysis.network()
                .outfallOf(run)
                .map(outfall -> outfall.get(Attribute.KIND).isEmpty())
                .orElse(false);
    }

    /** The stretches in order of their first station. Ground that is not known makes a stretch of its own. */
    List<CoverStretch> stretches() {
        Map<Object, CoverStretch> byLimit = new LinkedHashMap<>();
        List<Double> cuts = cuts();
        for (int i = 1; i < cuts.size(); i++) {
            CoverStretch piece = piece(cuts.get(i - 1), cuts.get(i));
            byLimit.merge(List.of(piece.asked(), piece.isKnown()), piece, CoverStretch::and);
        }
        return List.copyOf(byLimit.values());
    }

    private CoverStretch piece(double from, double to) {
        double middle = (from + to) / 2;
        Optional<CoverStretch.Spot> start = spotAt(from);
        Optional<CoverStretch.Spot> end = spotAt(to);
        boolean known = start.isPresent() && end.isPresent() && spotAt(middle).isPresent();
        return known
                ? CoverStretch.between(askedAt(middle), start.get(), end.get())
                : CoverStretch.unknown(askedAt(middle), from, to);
    }

    private Optional<CoverStretch.Spot> spotAt(double station) {
        Optional<Elevation> ground =
                analysis.ground().flatMap(surface -> surface.elevationAt(profile.placeAt(station)));
        return ground.map(level -> new CoverStretch.Spot(
                station, level.above(profile.topAt(station)).metres()));
    }

    private CoverStretch.Asked askedAt(double station) {
        Optional<String> above = surfaces.at(profile.placeAt(station));
        Limits.Answer answer = answer(above, beyond + profile.length().metres() - station);
        boolean byOutfall = perhapsNoDaylight && !answer.equals(answer(above, FAR));
        return new CoverStretch.Asked(answer, above, byOutfall);
    }

    private Limits.Answer answer(Optional<String> above, double toOutfall) {
        Attributes attributes = run.pipe().attributes().with(Attribute.TO_OUTFALL, new Length(toOutfall));
        return limits.of(
                above.map(word -> attributes.with(Attribute.ABOVE, word)).orElse(attributes));
    }

    /** Where the run is cut, from its start to its end; of cuts that lie too close to tell apart, the first. */
    private List<Double> cuts() {
        TreeSet<Double> cuts = new TreeSet<>(surfaces.breaksAlong(run.axis()));
        analysis.ground().ifPresent(ground -> cuts.addAll(ground.breaksAlong(run.axis())));
        double length = profile.length().metres();
        List<Double> apart = new ArrayList<>(List.of(0.0));
        for (double cut : cuts.subSet(0.0, length)) {
            double last = apart.get(apart.size() - 1);
            if (cut - last > EXACTLY && length - cut > EXACTLY) {
                apart.addAll(changesOfLimit(last, cut));
                apart.add(cut);
            }
        }
        apart.addAll(changesOfLimit(apart.get(apart.size() - 1), length));
        apart.add(length);
        return apart;
    }

    /** Where the limit changes between two cuts, under one surface. */
    private List<Double> changesOfLimit(double from, double to) {
        List<Double> changes = new ArrayList<>();
        double inside = Math.min(EXACTLY, to - from) / 4;
        double start = from + inside;
        double length = to - from - 2 * inside;
        int steps = (int) Math.ceil(length / STEP);
        for (int i = 1; i <= steps; i++) {
            double before = start + length * (i - 1) / steps;
            double after = start + length * i / steps;
            if (!askedAt(before).equals(askedAt(after))) {
                changes.add(changeBetween(before, after));
            }
        }
        return changes;
    }

    private double changeBetween(double from, double to) {
        CoverStretch.Asked before = askedAt(from);
        double low = from;
        double high = to;
        while (high - low > EXACTLY) {
            double middle = (low + high) / 2;
            if (askedAt(middle).equals(before)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}
