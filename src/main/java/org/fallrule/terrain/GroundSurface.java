package org.fallrule.terrain;

import java.util.List;
import java.util.Optional;
import org.fallrule.measure.Elevation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;

/** A ground surface in the plan's local frame. */
public interface GroundSurface {

    /** The ground's elevation, or nothing outside of the surface. */
    Optional<Elevation> elevationAt(Coordinate place);

    /**
     * The plan distances along a line, in metres from its start, where the ground's grade along it changes: where the line
     * bends and where the surface does. Between two neighbours the ground under the line is straight.
     */
    List<Double> breaksAlong(LineString line);
}
