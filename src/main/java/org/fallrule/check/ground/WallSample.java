package org.fallrule.check.ground;

import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.terrain.GroundSurface;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.linearref.LengthIndexedLine;

/**
 * A line over the ground that leads straight away from a building's wall.
 *
 * @param line from the wall outward
 * @param from the wall that it leaves from, in the direction in which the building is drawn
 * @param wall how much of the wall it stands for, in metres
 * @param until what ends it before its full length, such as {@code the lot line}
 */
public record WallSample(LineString line, LineSegment from, double wall, Optional<String> until) {
    private static final List<String> SIDES =
            List.of("east", "north-east", "north", "north-west", "west", "south-west", "south", "south-east");

    /** Whether there is no ground at the wall because another building stands against it. */
    boolean isBuiltOn() {
        return length() <= Dimension.LENGTH.tolerance();
    }

    public double length() {
        return line.getLength();
    }

    /**
     * How far the ground falls along it: to its lowest place before a bank. Negative, by how far the far end stands above the
     * foot of the wall, where it does not fall at all. Nothing where the ground is not known.
     *
     * @param bank how far above the foot of the wall, in metres, ground is a bank
     */
    Optional<Length> fall(GroundSurface ground, double bank) {
        TreeSet<Double> stations = new TreeSet<>(ground.breaksAlong(line));
        stations.removeIf(station -> station <= 0 || station >= length());
        stations.add(length());
        Optional<Elevation> foot = ground.elevationAt(line.getCoordinateN(0));
        if (foot.isEmpty()) {
            return Optional.empty();
        }
        LengthIndexedLine places = new LengthIndexedLine(line);
        double fall = 0;
        boolean open = true;
        double last = 0;
        for (double station : stations) {
            Optional<Elevation> level = ground.elevationAt(places.extractPoint(station));
            if (level.isEmpty()) {
                return Optional.empty();
            }
            last = foot.get().above(level.get()).metres();
            open &= last >= -bank - Dimension.LENGTH.tolerance();
            fall = open ? Math.max(fall, last) : fall;
        }
        return Optional.of(new Length(fall > 0 ? fall : Math.min(0, last)));
    }

    /** The side of the building that it leaves from: {@code north-east}. */
    public String side() {
        Coordinate from = line.getCoordinateN(0);
        Coordinate to = line.getCoordinateN(line.getNumPoints() - 1);
        double eighths = Math.atan2(to.y - from.y, to.x - from.x) / (Math.PI / 4);
        return SIDES.get(Math.floorMod(Math.round(eighths), SIDES.size()));
    }
}
