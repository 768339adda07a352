package org.fallrule.terrain;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.LineIntersector;
import org.locationtech.jts.algorithm.RobustLineIntersector;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.util.LinearComponentExtracter;

/**
 * Stations along a line: plan distances in metres from its start. A line that comes to a place twice has two stations there.
 */
public final class Stationing {
    private final Coordinate[] places;
    private final double[] stations;

    public Stationing(LineString line) {
        this.places = line.getCoordinates();
        this.stations = new double[places.length];
        for (int i = 1; i < places.length; i++) {
            stations[i] = stations[i - 1] + places[i - 1].distance(places[i]);
        }
    }

    /** The stations of the line's own vertices. */
    public List<Double> ofVertices() {
        List<Double> all = new ArrayList<>();
        for (double station : stations) {
            all.add(station);
        }
        return all;
    }

    /** The lines of a geometry, of an area its rings, as {@link #where} takes them. */
    public static List<Coordinate[]> lines(Geometry geometry) {
        List<Coordinate[]> lines = new ArrayList<>();
        for (Object line : LinearComponentExtracter.getLines(geometry)) {
            lines.add(((LineString) line).getCoordinates());
        }
        return lines;
    }

    /** The stations where the line meets another; of a stretch that they share, both ends. */
    public List<Double> where(Coordinate[] other) {
        List<Double> meeting = new ArrayList<>();
        for (int i = 1; i < places.length; i++) {
            Envelope reach = new Envelope(places[i - 1], places[i]);
            for (int j = 1; j < other.length; j++) {
                if (reach.intersects(other[j - 1], other[j])) {
                    meet(i, other[j - 1], other[j], meeting);
                }
            }
        }
        return meeting;
    }

    private void meet(int segment, Coordinate from, Coordinate to, List<Double> meeting) {
        LineIntersector intersector = new RobustLineIntersector();
        intersector.computeIntersection(places[segment - 1], places[segment], from, to);
        for (int i = 0; i < intersector.getIntersectionNum(); i++) {
            double along = places[segment - 1].distance(intersector.getIntersection(i));
            meeting.add(Math.min(stations[segment - 1] + along, stations[segment]));
        }
    }
}
