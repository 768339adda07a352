package org.fallrule.check.place;

import java.util.Comparator;
import java.util.stream.IntStream;
import org.fallrule.analysis.Zones;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Length;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.linearref.LengthIndexedLine;

/**
 * How much of a feature lies inside of an area: of a line the length, of points how deep the deepest lies. The edge of the area
 * is outside.
 *
 * @param of how a sentence names what is measured
 * @param length that length or depth
 * @param accuracy half-width in metres of the interval that it lies in, when places are known only so well
 * @param where the part inside; the whole where none is
 */
record Inside(String of, Length length, double accuracy, Geometry where) {

    /** A line no deeper inside than this, in metres, runs along the edge. */
    private static final double EDGE = Dimension.LENGTH.tolerance();

    /**
     * What of a geometry lies inside of an area.
     *
     * @param zones those of the plan
     * @param accuracy how well, in metres, the two are known to lie to each other; zero when not known or exact
     */
    static Inside of(Zones zones, Geometry geometry, Geometry area, double accuracy) {
        Envelope reach = new Envelope(area.getEnvelopeInternal());
        reach.expandBy(accuracy + EDGE);
        boolean isLine = geometry.getDimension() > 0;
        String of = isLine ? "length inside" : "depth inside";
        if (!reach.intersects(geometry.getEnvelopeInternal())) {
            return new Inside(of, new Length(0), 0, geometry);
        }
        return isLine ? ofLine(zones, geometry, area, accuracy, of) : ofPoints(geometry, area, accuracy, of);
    }

    boolean isClear() {
        return length.metres() <= 0 && accuracy <= 0;
    }

    private static Inside ofLine(Zones zones, Geometry line, Geometry area, double accuracy, String of) {
        Geometry part = partIn(zones, line, area);
        double length = part.getLength();
        double least = accuracy > 0 && length > 0
                ? partIn(zones, line, zones.around(area, -accuracy)).getLength()
                : length;
        double most = accuracy > 0 && line.isWithinDistance(area, accuracy)
                ? partIn(zones, line, zones.around(area, accuracy)).getLength()
                : length;
        double spread = Math.max(length - least, most - length);
        return new Inside(of, new Length(length), spread > 0 ? spread + EDGE : 0, length > 0 ? part : line);
    }

    /** The part of a line inside, empty where it runs along the edge at most. */
    private static Geometry partIn(Zones zones, Geometry line, Geometry area) {
        Geometry part = line.intersects(area)
                ? line.intersection(area)
                : line.getFactory().createLineString();
        boolean inside = part.getLength() > 0 && (isDeep(part, area) || line.intersects(zones.around(area, -EDGE)));
        return inside ? part : line.getFactory().createLineString();
    }

    /** Whether the middle of the longest piece lies deeper inside than the edge is wide; that costs less than a narrower area. */
    private static boolean isDeep(Geometry part, Geometry area) {
        Geometry longest = IntStream.range(0, part.getNumGeometries())
                .mapToObj(part::getGeometryN)
                .max(Comparator.comparingDouble(Geometry::getLength))
                .orElse(part);
        Coordinate middle = new LengthIndexedLine(longest).extractPoint(longest.getLength() / 2);
        return !area.getBoundary().isWithinDistance(area.getFactory().createPoint(middle), EDGE);
    }

    private static Inside ofPoints(Geometry points, Geometry area, double accuracy, String of) {
        Geometry edge = area.getBoundary();
        double deepest = 0;
        for (int i = 0; i < points.getNumGeometries(); i++) {
            Geometry point = points.getGeometryN(i);
            deepest = area.intersects(point) ? Math.max(deepest, edge.distance(point)) : deepest;
        }
        boolean near = deepest > 0 || edge.distance(points) < accuracy;
        return new Inside(of, new Length(deepest), near ? accuracy : 0, points);
    }
}
