package org.fallrule.bench;

import java.util.List;
import java.util.Optional;
import org.fallrule.measure.Elevation;
import org.fallrule.terrain.Grade;
import org.fallrule.terrain.GroundSurface;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineString;

/** {@link MadeGround} as a surface, rough at the places of a grid. */
final class MadeSurface implements GroundSurface {
    private static final long SEED = 20_261;

    private final double reach;
    private final MadeGround ground = new MadeGround(SEED);

    /**
     * A square surface with its corner at the origin.
     *
     * @param side places on each side
     * @param spacing metres from place to place
     */
    MadeSurface(int side, double spacing) {
        this.reach = side * spacing;
    }

    /** Asked for the same places in the same order, a new surface gives the same heights. */
    @Override
    public Optional<Elevation> elevationAt(Coordinate place) {
        return Optional.of(new Elevation(ground.measured(place.x, place.y)));
    }

    @Override
    public Optional<Grade> gradeAt(Coordinate place) {
        return Optional.empty();
    }

    @Override
    public Envelope extent() {
        return new Envelope(0, reach, 0, reach);
    }

    @Override
    public List<Double> breaksAlong(LineString line) {
        return List.of();
    }
}
