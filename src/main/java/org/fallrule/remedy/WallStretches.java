package org.fallrule.remedy;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.Polygon;

/** The stretches of a building's walls along which the ground falls short, with short ones between them that do not. */
final class WallStretches {
    /** What is raised runs out along the wall within so many metres, 4 ft; common practice. */
    static final double RUN_OUT = 1.2192;

    private static final double CLOSE = 2 * RUN_OUT;

    /** Metres, 12 ft; beside an inner corner there is too little ground to tell, but it is raised with that on both sides. */
    private static final double AROUND_CORNER = 3.6576;

    private static final double SAME = 1e-6;

    private final List<Foot> feet;
    private final boolean[] taken;
    private final Map<Coordinate, LineSegment> startingAt = new HashMap<>();
    private final Map<Coordinate, LineSegment> endingAt = new HashMap<>();

    /** @param feet around the building, in the order in which its walls are drawn */
    WallStretches(Geometry building, List<Foot> feet) {
        this.feet = feet;
        this.taken = new boolean[feet.size()];
        for (int i = 0; i < building.getNumGeometries(); i++) {
            if (building.getGeometryN(i) instanceof Polygon part) {
                walls(part.getExteriorRing().getCoordinates());
            }
        }
    }

    private void walls(Coordinate[] ring) {
        for (int i = 1; i < ring.length; i++) {
            LineSegment wall = new LineSegment(ring[i - 1], ring[i]);
            startingAt.put(wall.p0, wall);
            endingAt.put(wall.p1, wall);
        }
    }

    /**
     * A stretch.
     *
     * @param feet in their order
     * @param isRing whether it leads all around the building
     */
    record WallStretch(List<Foot> feet, boolean isRing) {}

    List<WallStretch> all() {
        for (int i = 0; i < feet.size(); i++) {
            taken[i] = feet.get(i).falls();
        }
        for (int i = 0; i < feet.size(); i++) {
            if (feet.get(i).falls()) {
                closeGapAfter(i);
            }
        }
        List<WallStretch> stretches = new ArrayList<>();
        for (int i = 0; i < feet.size(); i++) {
            if (taken[i] && !goesOn(before(i))) {
                stretches.add(new WallStretch(from(i), false));
            }
        }
        boolean allAround = stretches.isEmpty() && !feet.isEmpty() && taken[0];
        return allAround ? List.of(new WallStretch(feet, true)) : stretches;
    }

    private int after(int i) {
        return (i + 1) % feet.size();
    }

    private int before(int i) {
        return (i + feet.size() - 1) % feet.size();
    }

    /** Whether this foot and the next are of one stretch. */
    private boolean goesOn(int i) {
        return taken[i] && taken[after(i)] && areBeside(feet.get(i), feet.get(after(i)));
    }

    private List<Foot> from(int first) {
        List<Foot> stretch = new ArrayList<>(List.of(feet.get(first)));
        for (int i = first; goesOn(i) && after(i) != first; i = after(i)) {
            stretch.add(feet.get(after(i)));
        }
        return stretch;
    }

    private void closeGapAfter(int i) {
        double gap = 0;
        int next = after(i);
        while (!feet.get(next).falls() && gap <= CLOSE && areBeside(feet.get(before(next)), feet.get(next))) {
            gap += feet.get(next).sample().wall();
            next = after(next);
        }
        if (gap > CLOSE || !feet.get(next).falls() || !areBeside(feet.get(before(next)), feet.get(next))) {
            return;
        }
        for (int j = after(i); j != next; j = after(j)) {
            taken[j] = true;
        }
    }

    /** Whether there is no more than a short piece of wall between two feet. */
    private boolean areBeside(Foot one, Foot other) {
        double pieces = (one.sample().wall() + other.sample().wall()) / 2;
        if (one.wall().equals(other.wall())) {
            return !one.root().equals2D(other.root()) && one.root().distance(other.root()) - pieces <= SAME;
        }
        Coordinate corner = one.wall().p1;
        return next(one.wall()).filter(other.wall()::equals).isPresent()
                && one.root().distance(corner) + corner.distance(other.root()) - pieces <= AROUND_CORNER;
    }

    Optional<LineSegment> next(LineSegment wall) {
        return Optional.ofNullable(startingAt.get(wall.p1));
    }

    Optional<LineSegment> previous(LineSegment wall) {
        return Optional.ofNullable(endingAt.get(wall.p0));
    }
}
