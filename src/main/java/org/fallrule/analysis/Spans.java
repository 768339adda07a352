package org.fallrule.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineSegment;

/** What shares of a segment lie within a distance of some others: the quadratic for their ends, a strip between these. */
final class Spans {
    private final LineSegment segment;
    private final double metres;
    private double from = Double.POSITIVE_INFINITY;
    private double to = Double.NEGATIVE_INFINITY;

    /** From one share of a segment to another, 0 at its start and 1 at its end. */
    record Span(double from, double to) {}

    private Spans(LineSegment segment, double metres) {
        this.segment = segment;
        this.metres = metres;
    }

    /** In order, apart from each other, each longer than a place. */
    static List<Span> of(LineSegment segment, List<LineSegment> others, double metres) {
        Envelope reach = new Envelope(segment.p0, segment.p1);
        reach.expandBy(metres);
        List<Span> spans = new ArrayList<>();
        for (LineSegment other : others) {
            if (reach.intersects(other.p0, other.p1)) {
                Spans near = new Spans(segment, metres);
                near.aroundEnd(other.p0);
                near.aroundEnd(other.p1);
                near.between(other);
                if (near.to > near.from) {
                    spans.add(new Span(near.from, near.to));
                }
            }
        }
        return joined(spans);
    }

    private static List<Span> joined(List<Span> spans) {
        spans.sort(Comparator.comparingDouble(Span::from));
        List<Span> joined = new ArrayList<>();
        for (Span span : spans) {
            Span last = joined.isEmpty() ? span : joined.get(joined.size() - 1);
            if (joined.isEmpty() || span.from > last.to) {
                joined.add(span);
            } else {
                joined.set(joined.size() - 1, new Span(last.from, Math.max(last.to, span.to)));
            }
        }
        return joined;
    }

    private double dx() {
        return segment.p1.x - segment.p0.x;
    }

    private double dy() {
        return segment.p1.y - segment.p0.y;
    }

    /** |start + share * (end - start) - centre| = metres, for the share. */
    private void aroundEnd(Coordinate centre) {
        double x = segment.p0.x - centre.x;
        double y = segment.p0.y - centre.y;
        double square = dx() * dx() + dy() * dy();
        double middle = -(x * dx() + y * dy()) / square;
        double across = x * dy() - y * dx();
        double half = metres * metres / square - across * across / (square * square);
        if (half >= 0) {
            add(middle - Math.sqrt(half), middle + Math.sqrt(half));
        }
    }

    /** Beside the other segment, between its ends, no farther off than the distance on either side. */
    private void between(LineSegment other) {
        double length = other.getLength();
        double eastward = (other.p1.x - other.p0.x) / length;
        double northward = (other.p1.y - other.p0.y) / length;
        double x = segment.p0.x - other.p0.x;
        double y = segment.p0.y - other.p0.y;
        Span along = within(x * eastward + y * northward, dx() * eastward + dy() * northward, 0, length);
        Span beside = within(y * eastward - x * northward, dy() * eastward - dx() * northward, -metres, metres);
        add(Math.max(along.from, beside.from), Math.min(along.to, beside.to));
    }

    /** Where start + share * step lies from the least to the most. */
    private static Span within(double start, double step, double least, double most) {
        if (step == 0) {
            return start >= least && start <= most ? new Span(0, 1) : new Span(1, 0);
        }
        double one = (least - start) / step;
        double other = (most - start) / step;
        return new Span(Math.min(one, other), Math.max(one, other));
    }

    private void add(double first, double last) {
        if (last >= first && last > 0 && first < 1) {
            from = Math.min(from, Math.max(0, first));
            to = Math.max(to, Math.min(1, last));
        }
    }
}
