package org.fallrule.analysis;

import org.fallrule.measure.Angle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.util.LinearComponentExtracter;

/** The angle at which two lines cross in plan: between 0 and 90 degrees, and at a bend of one of them the least there is. */
final class CrossingAngle {
    /** A segment that comes nearer to the crossing than this, in metres, passes through it. */
    private static final double AT = 1e-5;

    private CrossingAngle() {}

    static Angle at(Coordinate place, Geometry one, Geometry other) {
        double[] least = {Math.PI / 2};
        eachSegment(
                place,
                one,
                mine -> eachSegment(
                        place, other, its -> least[0] = Math.min(least[0], acute(mine.angle() - its.angle()))));
        return new Angle(least[0]);
    }

    private static double acute(double between) {
        double turned = Math.abs(between) % Math.PI;
        return Math.min(turned, Math.PI - turned);
    }

    private static void eachSegment(Coordinate place, Geometry geometry, java.util.function.Consumer<LineSegment> use) {
        for (Object line : LinearComponentExtracter.getLines(geometry)) {
            CoordinateSequence places = ((LineString) line).getCoordinateSequence();
            for (int i = 1; i < places.size(); i++) {
                LineSegment segment = new LineSegment(places.getCoordinate(i - 1), places.getCoordinate(i));
                if (segment.getLength() > 0 && segment.distance(place) <= AT) {
                    use.accept(segment);
                }
            }
        }
    }
}
