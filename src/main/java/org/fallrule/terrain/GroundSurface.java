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
     * The plan distances along a line, in metres from its start, where the ground's grade changes, so that between two of
     * them the ground is straight. The ends are not in it.
     */
    List<Double> breaksAlong(LineString line);
}
