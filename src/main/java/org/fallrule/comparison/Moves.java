package org.fallrule.comparison;

import java.util.Optional;
import org.fallrule.measure.Length;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;

/** How far a feature has moved, in plan and in height. */
final class Moves {
    /** 0.01 ft in metres, the last digit that a survey of a lot prints: less is not called a move. */
    static final double LAST_DIGIT = Length.feet(0.01).metres();

    private Moves() {}

    /** The greatest distance of the one from the other in plan; nothing when they lie together. */
    static Optional<Length> inPlan(Geometry before, Geometry after) {
        if (before.getDimension() != after.getDimension()) {
            return Optional.of(new Length(before.getCentroid().distance(after.getCentroid())));
        }
        return moved(Pairing.distance(before, after));
    }

    /** How far a point has risen; negative when it has sunk; nothing for lines and areas, or where a height is not known. */
    static Optional<Length> inHeight(Geometry before, Geometry after) {
        if (!(before instanceof Point one && after instanceof Point other)) {
            return Optional.empty();
        }
        Coordinate was = one.getCoordinate();
        Coordinate is = other.getCoordinate();
        double rise = is.getZ() - was.getZ();
        return Double.isFinite(rise) ? moved(rise) : Optional.empty();
    }

    private static Optional<Length> moved(double metres) {
        return Math.abs(metres) > LAST_DIGIT ? Optional.of(new Length(metres)) : Optional.empty();
    }
}
