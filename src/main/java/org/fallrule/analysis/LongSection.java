package org.fallrule.analysis;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
    private static final Length FAR = new Length(1e6);

    private final SiteAnalysis analysis;
    private final PipeRun run;
    private final PipeProfile profile;
    private final SurfaceAbove surfaces;
    private final double beyond;

    public LongSection(SiteAnalysis analysis, PipeRun run, PipeProfile profile) {
        this.analysis = analysis;
        this.run = run;
        this.profile = profile;
        this.surfaces = analysis.surfaces();
        this.beyond = analysis.network().lengthToDaylight(run).orElse(FAR.metres());
    }

    /** The attributes of a place along a pipe as they would be if its water never came to a daylight outfall. */
    public static Attributes withoutDaylight(Attributes attributes) {
        return attributes.with(Attribute.TO_OUTFALL, FAR);
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
        for (Stretch piece : pieces(cuts((from, to) -> changes(from, to, asked)), line)) {
            alike.merge(List.of(key(piece.attributes(), asked), piece.isKnown()), piece, Stretch::and);
        }
        return List.copyOf(alike.values());
    }

    /** The pieces between cuts, one after the other; on each the height changes evenly from its one end to the other. */
    public List<Stretch> pieces(DoubleFunction<Elevation> line) {
        return pieces(cuts((from, to) -> List.of()), line);
    }

    /** The height of the ground over a line of the pipe; nothing where the ground is not known. */
    public Optional<Length> heightAt(double station, DoubleFunction<Elevation> line) {
        return analysis.ground()
                .flatMap(surface -> surface.elevationAt(profile.placeAt(station)))
                .map(level -> level.above(line.apply(station)));
    }

    private List<Stretch> pieces(List<Double> cuts, DoubleFunction<Elevation> line) {
        List<Stretch> pieces = new ArrayList<>();
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
        return heightAt(station, line).map(height -> new Stretch.Spot(station, height));
    }

    private Attributes attributesAt(double station) {
        return withWay(underSurfaceAt(station), station);
    }

    private Attributes underSurfaceAt(double station) {
        Attributes attributes = run.pipe().attributes();
        return surfaces.at(profile.placeAt(station))
                .map(above -> attributes.with(Attribute.ABOVE, above))
                .orElse(attributes);
    }

    private Attributes withWay(Attributes attributes, double station) {
        return attributes.with(
                Attribute.TO_OUTFALL, new Length(beyond + profile.length().metres() - station));
    }

    /** Where what is asked changes between two stations, under one surface. */
    private interface Changes {
        List<Double> between(double from, double to);
    }

    /** Where the run is cut, from its start to its end; of cuts that lie too close to tell apart, the first. */
    private List<Double> cuts(Changes changes) {
        TreeSet<Double> cuts = new TreeSet<>(surfaces.breaksAlong(run.axis()));
        analysis.ground().ifPresent(ground -> cuts.addAll(ground.breaksAlong(run.axis())));
        double length = profile.length().metres();
        List<Double> apart = new ArrayList<>(List.of(0.0));
        for (double cut : cuts.subSet(0.0, length)) {
            double last = apart.get(apart.size() - 1);
            if (cut - last > EXACTLY && length - cut > EXACTLY) {
                apart.addAll(changes.between(last, cut));
                apart.add(cut);
            }
        }
        apart.addAll(changes.between(apart.get(apart.size() - 1), length));
        apart.add(length);
        return apart;
    }

    /**
     * Where what is asked changes between two cuts, under one surface. A surface that begins too close to a cut to be cut itself
     * shows at the ends alone.
     */
    private List<Double> changes(double from, double to, Function<Attributes, ?> asked) {
        List<Double> changes = new ArrayList<>();
        double inside = Math.min(EXACTLY, to - from) / 4;
        double start = from + inside;
        double length = to - from - 2 * inside;
        int steps = (int) Math.ceil(length / STEP);
        Attributes here = underSurfaceAt((from + to) / 2);
        double before = start;
        Object keyBefore = keyAt(before, asked);
        for (int i = 1; i <= steps; i++) {
            double after = start + length * i / steps;
            Object keyAfter = i < steps ? key(withWay(here, after), asked) : keyAt(after, asked);
            if (!keyBefore.equals(keyAfter)) {
                changes.add(changeBetween(before, keyBefore, after, asked));
            }
            before = after;
            keyBefore = keyAfter;
        }
        return changes;
    }

    private double changeBetween(double from, Object before, double to, Function<Attributes, ?> asked) {
        double low = from;
        double high = to;
        while (high - low > EXACTLY) {
            double middle = (low + high) / 2;
            if (keyAt(middle, asked).equals(before)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    private Object keyAt(double station, Function<Attributes, ?> asked) {
        return key(attributesAt(station), asked);
    }

    private static Object key(Attributes attributes, Function<Attributes, ?> asked) {
        return List.of(asked.apply(attributes), attributes.get(Attribute.ABOVE));
    }
}
