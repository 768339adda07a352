package org.fallrule.terrain;

import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.fallrule.measure.Elevation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineString;

/**
 * One surface laid over another: proposed ground where it has an answer, else existing ground. Where the proposed surface
 * ends the ground may step, as its plan does there.
 *
 * @param over the surface that counts where it is
 * @param under the surface elsewhere
 */
public record PatchedGround(GroundSurface over, GroundSurface under) implements GroundSurface {

    /** Two surfaces laid over each other, or the one that there is. */
    public static Optional<GroundSurface> of(Optional<GroundSurface> over, Optional<GroundSurface> under) {
        return over.isPresent() && under.isPresent()
                ? Optional.of(new PatchedGround(over.get(), under.get()))
                : over.or(() -> under);
    }

    @Override
    public Optional<Elevation> elevationAt(Coordinate place) {
        return over.elevationAt(place).or(() -> under.elevationAt(place));
    }

    @Override
    public void addHeights(Lattice lattice, double[] metres) {
        over.addHeights(lattice, metres);
        under.addHeights(lattice, metres);
    }

    @Override
    public Optional<Grade> gradeAt(Coordinate place) {
        return over.elevationAt(place).isPresent() ? over.gradeAt(place) : under.gradeAt(place);
    }

    @Override
    public Envelope extent() {
        Envelope extent = over.extent();
        extent.expandToInclude(under.extent());
        return extent;
    }

    /** The breaks of both; that of a surface where the other counts does no harm. */
    @Override
    public List<Double> breaksAlong(LineString line) {
        TreeSet<Double> breaks = new TreeSet<>(over.breaksAlong(line));
        breaks.addAll(under.breaksAlong(line));
        return List.copyOf(breaks);
    }
}
