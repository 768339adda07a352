package org.fallrule.check.pipe;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
    private final Optional<Double> beyond;

    CoverSurvey(SiteAnalysis analysis, PipeRun run, PipeProfile profile, Limits limits) {
        this.analysis = analysis;
        this.run = run;
        this.profile = profile;
        this.limits = limits;
        this.surfaces = new SurfaceAbove(analysis.site());
        this.beyond = analysis.network().lengthToDaylight(run);
    }

    /** The stretches in order of their first station. Ground that is not known makes a stretch of its own. */
    List<CoverStretch> stretches() {
        Map<Object, CoverStretch> byLimit = new LinkedHashMap<>();
        List<Double> cuts = new ArrayList<>(cuts());
        for (int i = 1; i < cuts.size(); i++) {
            CoverStretch piece = piece(cuts.get(i - 1), cuts.get(i));
            List<Object> key = List.of(
                    limits.of(piece.attributes()),
                    piece.attributes().get(Attribute.ABOVE),
                    piece.isKnown() ? "known" : "unknown");
            byLimit.merge(key, piece, CoverStretch::and);
        }
        return List.copyOf(byLimit.values());
    }

    private CoverStretch piece(double from, double to) {
        Attributes attributes = attributesAt((from + to) / 2);
        Optional<CoverStretch.Spot> start = spotAt(from);
        Optional<CoverStretch.Spot> end = spotAt(to);
        boolean known =
                start.isPresent() && end.isPresent() && spotAt((from + to) / 2).isPresent();
        return known
                ? CoverStretch.between(attributes, start.get(), end.get())
                : CoverStretch.unknown(attributes, from, to);
    }

    private Optional<CoverStretch.Spot> spotAt(double station) {
        Optional<Elevation> ground =
                analysis.ground().flatMap(surface -> surface.elevationAt(profile.placeAt(station)));
        return ground.map(level -> new CoverStretch.Spot(
                station, level.above(profile.topAt(station)).metres()));
    }

    private Attributes attributesAt(double station) {
        Attributes attributes = run.pipe().attributes();
        Optional<String> above = surfaces.at(profile.placeAt(station));
        if (above.isPresent()) {
            attributes = attributes.with(Attribute.ABOVE, above.get());
        }
        Length left = new Length(beyond.orElse(FAR) + profile.length().metres() - station);
        return attributes.with(Attribute.TO_OUTFALL, left);
    }

    private Set<Double> cuts() {
        Set<Double> cuts = new TreeSet<>();
        double length = profile.length().metres();
        cuts.add(0.0);
        cuts.add(length);
        analysis.ground().ifPresent(ground -> cuts.addAll(ground.breaksAlong(run.axis())));
        cuts.addAll(surfaces.breaksAlong(run.axis()));
        cuts.removeIf(station -> station < 0 || station > length);
        cuts.addAll(changesOfLimit(length));
        return cuts;
    }

    private List<Double> changesOfLimit(double length) {
        List<Double> changes = new ArrayList<>();
        int steps = (int) Math.ceil(length / STEP);
        for (int i = 1; i <= steps; i++) {
            double from = length * (i - 1) / steps;
            double to = length * i / steps;
            if (!answerAt(from).equals(answerAt(to))) {
                changes.add(changeBetween(from, to));
            }
        }
        return changes;
    }

    private double changeBetween(double from, double to) {
        Limits.Answer before = answerAt(from);
        double low = from;
        double high = to;
        while (high - low > EXACTLY) {
            double middle = (low + high) / 2;
            if (answerAt(middle).equals(before)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    private Limits.Answer answerAt(double station) {
        return limits.of(attributesAt(station));
    }
}
