package org.fallrule.terrain;

import java.util.List;
import java.util.Optional;
import org.fallrule.measure.Elevation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineString;

/** A ground surface in the plan's local frame. */
public interface GroundSurface {

    /** The ground's elevation, or nothing outside of the surface. */
    Optional<Elevation> elevationAt(Coordinate place);

    /**
     * Puts the ground's elevations in metres at the nodes of a lattice where none is known yet.
     *
     * @param metres for each node, NaN where it is not known, and left so outside of the surface
     */
    default void addHeights(Lattice lattice, double[] metres) {
        for (int node = 0; node < metres.length; node++) {
            if (Double.isNaN(metres[node])) {
                Optional<Elevation> found = elevationAt(lattice.place(node));
                metres[node] = found.isPresent() ? found.get().metres() : Double.NaN;
            }
        }
    }

    /** How steep the ground is, or nothing outside of the surface. On a break between facets, the grade of one of them. */
    Optional<Grade> gradeAt(Coordinate place);

    /** The box around the surface; there may be places in it without ground. */
    Envelope extent();

    /**
     * The plan distances along a line, in metres from its start, where the ground's grade along it changes: where the line
     * bends and where the surface does. Between two neighbours the ground under the line is straight, or as close to
     * straight as the surface says.
     */
    List<Double> breaksAlong(LineString line);
}
