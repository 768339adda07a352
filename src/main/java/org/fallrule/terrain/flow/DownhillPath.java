package org.fallrule.terrain.flow;

import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;

/**
 * The way of water down the filled ground from a place to where it leaves the grid.
 *
 * @param line the way, Z being the level of ground or water; never rising from vertex to vertex
 * @param end why it ended
 */
public record DownhillPath(LineString line, End end) {

    /** Why a path ended. */
    public enum End {
        /** It came to the edge of the grid. */
        EDGE,
        /** It came to ground that is not known. */
        HOLE
    }

    /** The path from a place; empty where there is no ground. */
    public static Optional<DownhillPath> from(Coordinate place, FilledGround ground) {
        return new PathTracer(ground).from(place);
    }
}
