package org.fallrule.analysis;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.network.PipeProfile;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Attribute;
import org.fallrule.site.Attributes;

/**
 * A pipe in long section under the ground: walks along it and tells how high the ground stands over some line of the pipe,
 * such as its top or the bottom of its trench.
 *
 * <p>The run is cut where the ground changes its grade, where another surface begins, and where what is asked changes. Between
 * two cuts ground and pipe are straight, so that the height is least and greatest at the cuts.
 */
public final class LongSection {
    /** How closely, in metres along the pipe, to look for a change; a stretch shorter than this can be missed. */
    private static final double STEP = 0.25;
    /** How exactly, in metres, a change is found. */
    private static final double EXACTLY = 1e-5;

    /** Stands for the way to a daylight outfall where the water never comes to one. */
    private static final double FAR = 1e6;

    private final SiteAnalysis analysis;
    private final PipeRun run;
    private final PipeProfile profile;
    private final SurfaceAbove surfaces;
    private final Optional<Double> beyond;

    public LongSection(SiteAnalysis analysis, PipeRun run, PipeProfile profile) {
        this.analysis = analysis;
        this.run = run;
        this.profile = profile;
        this.surfaces = new SurfaceAbove(analysis.site());
        this.beyond = analysis.network().lengthToDaylight(run);
    }

    /**
     * The stretches in order of their first station, each with one answer to what is asked and one surface above. Ground that
     * is not known makes a stretch of its own.
     *
     * @param asked what is asked where a pipe has these attributes; a limit
     * @param line the level of the line of the pipe at a station in metres; straight along the pipe
     */
    public List<Stretch> stretches(Function<Attributes, ?> asked, DoubleFunction<Elevation> line) {
        Map<Object, Stretch> alike = new LinkedHashMap<>();
        for (Stretch piece : pieces(asked, line)) {
            List<Object> key = List.of(
                    asked.apply(piece.attributes()),
                    piece.attributes().get(Attribute.ABOVE),
                    piece.isKnown() ? "known" : "unknown");
            alike.merge(key, piece, Stretch::and);
        }
        return List.copyOf(alike.values());
    }

    /** The pieces between cuts, one after the other; on each the height changes evenly from its one end to the other. */
    public List<Stretch> pieces(DoubleFunction<Elevation> line) {
        return pieces(attributes -> "", line);
    }

    private List<Stretch> pieces(Function<Attributes, ?> asked, DoubleFunction<Elevation> line) {
        List<Stretch> pieces = new ArrayList<>();
        List<Double> cuts = new ArrayList<>(cuts(asked));
        for (int i = 1; i < cuts.size(); i++) {
            pieces.add(piece(cuts.get(i - 1), cuts.get(i), line));
        }
        return pieces;
    }

    private Stretch piece(double from, double to, DoubleFunction<Elevation> line) {
        double middle = (from + to) / 2;
        Attributes attributes = attributesAt(middle);
        Optional<Stretch.Spot> start = spotAt(from, line);
        Optional<Stretch.Spot> end = spotAt(to, line);
        boolean known =
                start.isPresent() && end.isPresent() && spotAt(middle, line).isPresent();
        return known ? Stretch.between(attributes, start.get(), end.get()) : Stretch.unknown(attributes, from, to);
    }

    private Optional<Stretch.Spot> spotAt(double station, DoubleFunction<Elevation> line) {
        return analysis.ground()
                .flatMap(surface -> surface.elevationAt(profile.placeAt(station)))
                .map(level -> new Stretch.Spot(station, level.above(line.apply(station))));
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

    private Set<Double> cuts(Function<Attributes, ?> asked) {
        Set<Double> cuts = new TreeSet<>();
        double length = profile.length().metres();
        cuts.add(0.0);
        cuts.add(length);
        analysis.ground().ifPresent(ground -> cuts.addAll(ground.breaksAlong(run.axis())));
        cuts.addAll(surfaces.breaksAlong(run.axis()));
        cuts.removeIf(station -> station < 0 || station > length);
        cuts.addAll(changes(asked, length));
        return cuts;
    }

    private List<Double> changes(Function<Attributes, ?> asked, double length) {
        List<Double> changes = new ArrayList<>();
        int steps = (int) Math.ceil(length / STEP);
        for (int i = 1; i <= steps; i++) {
            double from = length * (i - 1) / steps;
            double to = length * i / steps;
            if (!askedAt(from, asked).equals(askedAt(to, asked))) {
                changes.add(changeBetween(from, to, asked));
            }
        }
        return changes;
    }

    private double changeBetween(double from, double to, Function<Attributes, ?> asked) {
        Object before = askedAt(from, asked);
        double low = from;
        double high = to;
        while (high - low > EXACTLY) {
            double middle = (low + high) / 2;
            if (askedAt(middle, asked).equals(before)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    private Object askedAt(double station, Function<Attributes, ?> asked) {
        return asked.apply(attributesAt(station));
    }
}
