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
