package org.fallrule.check.place;

import org.fallrule.measure.Dimension;
import org.fallrule.measure.Length;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

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
     * @param accuracy how well, in metres, the two are known to lie to each other; zero when not known or exact
     */
    static Inside of(Geometry geometry, Geometry area, double accuracy) {
        Envelope reach = new Envelope(area.getEnvelopeInternal());
        reach.expandBy(accuracy + EDGE);
        boolean isLine = geometry.getDimension() > 0;
        String of = isLine ? "length inside" : "depth inside";
        if (!reach.intersects(geometry.getEnvelopeInternal())) {
            return new Inside(of, new Length(0), 0, geometry);
        }
        return isLine ? ofLine(geometry, area, accuracy, of) : ofPoints(geometry, area, accuracy, of);
    }

    boolean isClear() {
        return length.metres() <= 0 && accuracy <= 0;
    }

    private static Inside ofLine(Geometry line, Geometry area, double accuracy, String of) {
        double length = lengthIn(line, area);
        double least = accuracy > 0 && length > 0 ? lengthIn(line, area.buffer(-accuracy)) : length;
        double most =
                accuracy > 0 && line.isWithinDistance(area, accuracy) ? lengthIn(line, area.buffer(accuracy)) : length;
        Geometry where = length > 0 ? line.intersection(area) : line;
        double spread = Math.max(length - least, most - length);
        return new Inside(of, new Length(length), spread > 0 ? spread + EDGE : 0, where);
    }

    private static double lengthIn(Geometry line, Geometry area) {
        // making the narrower area costs much more than to see that the two lie apart
        return line.intersects(area) && line.intersects(area.buffer(-EDGE))
                ? line.intersection(area).getLength()
                : 0;
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
