package org.fallrule.analysis;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.util.LinearComponentExtracter;

/**
 * Everything within a distance of a line. Where another line lies in it is worked out segment by segment, exactly: round each
 * segment of the first the corridor is a rectangle with a half circle at either end, which is convex, so that a straight line lies
 * in it from one place to one other.
 */
public final class Corridor {
    private final double metres;
    private final List<LineSegment> axis = new ArrayList<>();

    /**
     * @param of a line, or several
     * @param metres how far from it
     */
    public Corridor(Geometry of, double metres) {
        this.metres = metres;
        for (Object line : LinearComponentExtracter.getLines(of)) {
            axis.addAll(segments((LineString) line));
        }
    }

    /** The parts of a line, or of several, that lie in it, bends and all; an empty line where none does. */
    public Geometry partOf(Geometry line) {
        GeometryFactory factory = line.getFactory();
        List<LineString> parts = new ArrayList<>();
        for (Object each : LinearComponentExtracter.getLines(line)) {
            Parts found = new Parts();
            for (LineSegment segment : segments((LineString) each)) {
                Spans.of(segment, axis, metres).forEach(span -> found.add(segment, span));
            }
            found.lines().forEach(part -> parts.add(factory.createLineString(part)));
        }
        return parts.isEmpty() ? factory.createLineString() : factory.buildGeometry(parts);
    }

    private static List<LineSegment> segments(LineString line) {
        List<LineSegment> segments = new ArrayList<>();
        for (int i = 1; i < line.getNumPoints(); i++) {
            LineSegment segment = new LineSegment(line.getCoordinateN(i - 1), line.getCoordinateN(i));
            if (!segment.p0.equals2D(segment.p1)) {
                segments.add(segment);
            }
        }
        return segments;
    }

    /** Pieces of segments one after the other, those that go on from the one before joined to it. */
    private static final class Parts {
        private final List<List<Coordinate>> lines = new ArrayList<>();
        private boolean goesOn;

        void add(LineSegment segment, Spans.Span span) {
            if (!goesOn || span.from() > 0) {
                lines.add(new ArrayList<>(List.of(at(segment, span.from()))));
            }
            lines.get(lines.size() - 1).add(at(segment, span.to()));
            goesOn = span.to() == 1;
        }

        private static Coordinate at(LineSegment segment, double share) {
            return share == 0 ? segment.p0 : share == 1 ? segment.p1 : segment.pointAlong(share);
        }

        List<Coordinate[]> lines() {
            return lines.stream().map(line -> line.toArray(new Coordinate[0])).toList();
        }
    }
}
