package org.fallrule.proposal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.algorithm.locate.PointOnGeometryLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;

/** Outfalls within reach of a place: straight on or by one bend, over the last run of which no cover is asked. */
final class Daylight implements LineSearch.Ends<Double> {
    private static final int DIRECTIONS = 8;

    /** How closely, in metres, the last run is looked at. */
    private static final double LOOK = 0.6;

    private final Field field;
    private final Heights heights;
    private final Lattice lattice;
    private final Coordinate inlet;
    private final Geometry allowed;
    private final PointOnGeometryLocator locator;

    /** @param allowed where an outfall may stand */
    Daylight(Field field, Lattice lattice, Coordinate inlet, Geometry allowed) {
        this.field = field;
        this.heights = field.heights();
        this.lattice = lattice;
        this.inlet = inlet;
        this.allowed = allowed;
        this.locator = new IndexedPointInAreaLocator(allowed);
    }

    /** The ends are the levels of the ground at the outfalls. */
    @Override
    public List<LineSearch.Last<Double>> from(Coordinate place, int direction, double level) {
        List<LineSearch.Last<Double>> ends = new ArrayList<>();
        if (!allowed.getEnvelopeInternal().intersects(around(place))) {
            return ends;
        }
        for (int on = 0; on < DIRECTIONS; on++) {
            if (LineSearch.mayTurn(direction, on)) {
                double turn = direction == DIRECTIONS ? 0 : Lattice.turn(direction, on) * field.fitting();
                along(place, on, level, turn, ends);
            }
        }
        return ends;
    }

    private Envelope around(Coordinate place) {
        Envelope around = new Envelope(place);
        around.expandBy(heights.lastRun(place) + 2 * lattice.spacing());
        return around;
    }

    private void along(Coordinate from, int direction, double level, double turn, List<LineSearch.Last<Double>> ends) {
        double step = lattice.step(direction);
        double longest = heights.lastRun(from) + step;
        double cost = turn;
        Coordinate last = from;
        for (double length = step; length <= longest; length += step) {
            Coordinate there = lattice.along(from, direction, length);
            if (!field.isOpen(last, there, inlet)) {
                return;
            }
            cost += field.cost(last, there);
            Optional<Double> ground = heights.ground(there);
            if (ground.isPresent()
                    && locator.locate(there) == Location.INTERIOR
                    && falls(from, direction, length, level, ground.get())) {
                double depth = (heights.ground(from).orElseThrow() - level) / 2;
                ends.add(new LineSearch.Last<>(
                        List.of(there), cost + field.trenchPerMetre(depth) * length, ground.get()));
            }
            last = there;
        }
    }

    /** Whether a pipe that falls as it must comes out no lower than the ground at the outfall. */
    private boolean falls(Coordinate from, int direction, double length, double level, double ground) {
        int looks = (int) Math.ceil(length / LOOK);
        double step = length / looks;
        double invert = level;
        for (int i = 1; i < looks; i++) {
            Optional<Double> highest = heights.highest(lattice.along(from, direction, i * step), length - i * step);
            if (highest.isEmpty()) {
                return false;
            }
            invert = Math.min(invert - heights.leastSlope() * step, highest.get());
        }
        return invert - heights.leastSlope() * step >= ground;
    }
}
