package org.fallrule.network;

import java.util.Optional;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.terrain.GroundSurface;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;

/**
 * The inverts at the ends of a pipe: as the pipe gives them, else the Z of its end, else the invert of the structure there,
 * else the finished ground less the depth that the pipe gives.
 */
final class EndInverts {
    private final Optional<GroundSurface> ground;

    /** @param ground the finished ground */
    EndInverts(Optional<GroundSurface> ground) {
        this.ground = ground;
    }

    /** A pipe that is turned toward its outfall, with its inverts. */
    PipeRun run(Feature pipe, LineString axis, Junction up, Junction down) {
        return new PipeRun(pipe, axis, up, down, OutsideDiameter.of(pipe), up(pipe, axis, up), down(pipe, axis, down));
    }

    private Optional<Elevation> up(Feature pipe, LineString axis, Junction from) {
        Coordinate end = axis.getCoordinateN(0);
        return pipe.get(Attribute.INVERT_UP)
                .or(() -> z(end))
                .or(() -> invert(from, Role.INLET))
                .or(() -> below(end, pipe.get(Attribute.DEPTH_UP)));
    }

    private Optional<Elevation> down(Feature pipe, LineString axis, Junction to) {
        Coordinate end = axis.getCoordinateN(axis.getNumPoints() - 1);
        return pipe.get(Attribute.INVERT_DOWN)
                .or(() -> z(end))
                .or(() -> invert(to, Role.OUTFALL))
                .or(() -> below(end, pipe.get(Attribute.DEPTH_DOWN)));
    }

    private static Optional<Elevation> z(Coordinate vertex) {
        return Double.isFinite(vertex.getZ()) ? Optional.of(new Elevation(vertex.getZ())) : Optional.empty();
    }

    private static Optional<Elevation> invert(Junction junction, Role role) {
        return junction.structure(role).flatMap(structure -> structure.get(Attribute.INVERT));
    }

    private Optional<Elevation> below(Coordinate place, Optional<Length> depth) {
        return depth.flatMap(
                down -> ground.flatMap(surface -> surface.elevationAt(place)).map(level -> level.minus(down)));
    }
}
