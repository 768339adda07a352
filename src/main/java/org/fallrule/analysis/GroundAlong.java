package org.fallrule.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.fallrule.measure.Elevation;
import org.fallrule.network.PipeRun;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.linearref.LengthIndexedLine;

/** The ground over the axis of a pipe, whether or not the pipe's own levels are known, and what lies on it. */
public final class GroundAlong {
    private final SiteAnalysis analysis;
    private final LineString line;
    private final LengthIndexedLine stations;
    private final double length;

    public GroundAlong(SiteAnalysis analysis, PipeRun run) {
        this(analysis, run.axis());
    }

    /** The ground over any line. */
    public GroundAlong(SiteAnalysis analysis, LineString line) {
        this.analysis = analysis;
        this.line = line;
        this.stations = new LengthIndexedLine(line);
        this.length = line.getLength();
    }

    /**
     * A straight piece of ground.
     *
     * @param from station in metres where it begins
     * @param to station in metres where it ends
     * @param heights the ground at both ends; empty when it is not known between them
     */
    public record Piece(double from, double to, Optional<Ends> heights) {}

    /** The ground at the two ends of a piece. */
    public record Ends(Elevation from, Elevation to) {}

    /**
     * A stretch under one surface.
     *
     * @param from station in metres where it begins
     * @param to station in metres where it ends
     * @param word what lies there; empty when the plan leaves it open
     */
    public record Surface(double from, double to, Optional<String> word) {}

    public Optional<Elevation> at(double station) {
        return analysis.ground().flatMap(ground -> ground.elevationAt(stations.extractPoint(station)));
    }

    /** The pieces one after the other. */
    public List<Piece> pieces() {
        List<Double> cuts =
                cuts(analysis.ground().map(ground -> ground.breaksAlong(line)).orElse(List.of()));
        List<Piece> pieces = new ArrayList<>();
        for (int i = 1; i < cuts.size(); i++) {
            pieces.add(piece(cuts.get(i - 1), cuts.get(i)));
        }
        return pieces;
    }

    private Piece piece(double from, double to) {
        Optional<Ends> ends = at((from + to) / 2)
                .flatMap(middle -> at(from))
                .flatMap(start -> at(to).map(end -> new Ends(start, end)));
        return new Piece(from, to, ends);
    }

    /** What lies above, one stretch after the other. */
    public List<Surface> surfaces() {
        SurfaceAbove above = analysis.surfaces();
        List<Double> cuts = cuts(above.breaksAlong(line));
        List<Surface> surfaces = new ArrayList<>();
        for (int i = 1; i < cuts.size(); i++) {
            double middle = (cuts.get(i - 1) + cuts.get(i)) / 2;
            Surface next = new Surface(cuts.get(i - 1), cuts.get(i), above.at(stations.extractPoint(middle)));
            Surface last = surfaces.isEmpty() ? next : surfaces.get(surfaces.size() - 1);
            if (!surfaces.isEmpty() && last.word().equals(next.word())) {
                surfaces.set(surfaces.size() - 1, new Surface(last.from(), next.to(), next.word()));
            } else {
                surfaces.add(next);
            }
        }
        return surfaces;
    }

    private List<Double> cuts(List<Double> breaks) {
        TreeSet<Double> cuts = new TreeSet<>(breaks);
        cuts.add(0.0);
        cuts.add(length);
        cuts.removeIf(station -> station < 0 || station > length);
        return List.copyOf(cuts);
    }
}
