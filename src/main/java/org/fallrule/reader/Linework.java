package org.fallrule.reader;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.fallrule.measure.Printed;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.operation.distance.DistanceOp;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;

/** Lines cut at every place where they meet, and the ends that meet nothing. */
final class Linework {
    /** A hundredth of a millimetre: what the arithmetic of coordinates puts apart is put together, nothing that was measured. */
    private static final PrecisionModel GRID = new PrecisionModel(100_000);

    /** Ends that are no farther apart than 5 mm are joined: less than boundary stakes are set to, and what rounding leaves. */
    private static final double JOINED = 0.005;

    /** Ends farther from the next line than 3 m, about 10 ft, are not meant to meet it: lines run on off the map. */
    private static final double WIDEST_GAP = 3;

    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    private final Geometry noded;
    private final List<LineString> edges;
    private final STRtree index = new STRtree();

    private Linework(Geometry noded) {
        this.noded = noded;
        this.edges = edges(noded);
        for (int i = 0; i < edges.size(); i++) {
            index.insert(edges.get(i).getEnvelopeInternal(), i);
        }
    }

    static Linework of(List<Geometry> lines) {
        Linework drawn = new Linework(noded(lines));
        List<Geometry> bridges = new ArrayList<>();
        for (End end : drawn.looseEnds()) {
            drawn.gap(end)
                    .filter(gap -> gap.getLength() > 0 && gap.getLength() <= JOINED)
                    .ifPresent(bridges::add);
        }
        if (bridges.isEmpty()) {
            return drawn;
        }
        List<Geometry> all = new ArrayList<>(drawn.edges);
        all.addAll(bridges);
        return new Linework(noded(all));
    }

    private static Geometry noded(List<Geometry> lines) {
        return UnaryUnionNG.union(GEOMETRY.buildGeometry(lines), GRID);
    }

    private static List<LineString> edges(Geometry noded) {
        List<LineString> edges = new ArrayList<>();
        for (int i = 0; i < noded.getNumGeometries(); i++) {
            edges.add((LineString) noded.getGeometryN(i));
        }
        return edges;
    }

    /** All of it, cut where lines meet. */
    Geometry noded() {
        return noded;
    }

    /** An end that no other line begins or ends at, of the edge of that number. */
    private record End(Coordinate at, int edge) {}

    private static List<Coordinate> ends(LineString edge) {
        return List.of(edge.getCoordinateN(0), edge.getCoordinateN(edge.getNumPoints() - 1));
    }

    private List<End> looseEnds() {
        Map<Coordinate, Integer> meeting = new HashMap<>();
        edges.forEach(edge -> ends(edge).forEach(end -> meeting.merge(end, 1, Integer::sum)));
        List<End> loose = new ArrayList<>();
        for (int i = 0; i < edges.size(); i++) {
            for (Coordinate end : ends(edges.get(i))) {
                if (meeting.getOrDefault(end, 0) == 1) {
                    loose.add(new End(end, i));
                }
            }
        }
        return loose;
    }

    /**
     * The shortest way from a loose end to another line, or to the far end of its own; none within reach where empty. A line
     * that crosses another and ends just behind it has met it.
     */
    private Optional<LineString> gap(End end) {
        Point point = GEOMETRY.createPoint(end.at());
        var around = point.getEnvelopeInternal();
        around.expandBy(WIDEST_GAP);
        LineString shortest = null;
        for (Object found : index.query(around)) {
            int other = (Integer) found;
            boolean own = other == end.edge();
            Coordinate[] nearest = own
                    ? new Coordinate[] {end.at(), otherEnd(end)}
                    : DistanceOp.nearestPoints(point, edges.get(other));
            LineString way = GEOMETRY.createLineString(nearest);
            boolean overshoot = !own && nearest[1].distance(otherEnd(end)) <= JOINED;
            if (!overshoot
                    && way.getLength() <= WIDEST_GAP
                    && (shortest == null || way.getLength() < shortest.getLength())
                    && (!own || way.getLength() < edges.get(other).getLength() / 2)) {
                shortest = way;
            }
        }
        return Optional.ofNullable(shortest);
    }

    private Coordinate otherEnd(End end) {
        LineString edge = edges.get(end.edge());
        Coordinate first = edge.getCoordinateN(0);
        return first.equals2D(end.at()) ? edge.getCoordinateN(edge.getNumPoints() - 1) : first;
    }

    /**
     * What to say of each gap: how wide and where. A gap between two ends is told once.
     *
     * @param shown how messages show a place
     */
    List<String> gaps(Function<Coordinate, String> shown) {
        List<String> gaps = new ArrayList<>();
        List<Geometry> told = new ArrayList<>();
        for (End end : looseEnds()) {
            Optional<LineString> gap = gap(end);
            if (gap.isEmpty() || told.stream().anyMatch(gap.get()::equalsTopo)) {
                continue;
            }
            told.add(gap.get());
            gaps.add("a lot line ends at " + shown.apply(end.at()) + ", "
                    + Printed.feet(gap.get().getLength())
                    + " short of the next line, and bounds no lot there; join the two");
        }
        return gaps;
    }
}
