package org.fallrule.terrain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.fallrule.measure.Elevation;
import org.fallrule.site.HeightField;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineString;

/**
 * The ground as an elevation raster has it: bilinear between cell centres, none where a cell has no height.
 *
 * <p>Breaks along a line are its bends, its crossings with the lines through cell centres, and the middle between each two
 * of them. Between two breaks a straight line from one height to the other is off by no more than a sixteenth of the cell's
 * twist, |z00 + z11 - z10 - z01|: along a straight line at angle t a bilinear cell of side h curves by |twist / h^2 * sin
 * 2t|, and a chord of length s departs from that by s^2 / 8 of it, s being at most half a cell's diagonal.
 */
public final class RasterGround implements GroundSurface {
    private final HeightField field;

    public RasterGround(HeightField field) {
        this.field = field;
    }

    @Override
    public Optional<Elevation> elevationAt(Coordinate place) {
        return field.heightAt(place);
    }

    /**
     * The grade over one cell's width around a place; at the rim of the surface over half of it. What is smaller than a cell
     * is not in the raster, and its noise from cell to cell would be most of a grade taken at a point.
     */
    @Override
    public Optional<Grade> gradeAt(Coordinate place) {
        double half = field.spacing() / 2;
        Optional<Double> eastward = rise(place, half, 0);
        Optional<Double> northward = rise(place, 0, half);
        return eastward.flatMap(east -> northward.map(north -> Grade.ofRise(east, north)));
    }

    private Optional<Double> rise(Coordinate place, double dx, double dy) {
        Optional<Elevation> here = field.heightAt(place);
        Optional<Elevation> ahead = field.heightAt(new Coordinate(place.x + dx, place.y + dy));
        Optional<Elevation> behind = field.heightAt(new Coordinate(place.x - dx, place.y - dy));
        int steps = (ahead.isPresent() ? 1 : 0) + (behind.isPresent() ? 1 : 0);
        if (here.isEmpty() || steps == 0) {
            return Optional.empty();
        }
        double rise =
                ahead.or(() -> here).get().above(behind.or(() -> here).get()).metres();
        return Optional.of(rise / (steps * (dx + dy)));
    }

    @Override
    public Envelope extent() {
        return field.extent();
    }

    @Override
    public List<Double> breaksAlong(LineString line) {
        TreeSet<Double> breaks = new TreeSet<>();
        double start = 0;
        for (int i = 0; i + 1 < line.getNumPoints(); i++) {
            Coordinate from = line.getCoordinateN(i);
            Coordinate to = line.getCoordinateN(i + 1);
            double length = from.distance(to);
            Double last = null;
            for (double share : shares(from, to)) {
                if (last != null) {
                    breaks.add(start + (last + share) / 2 * length);
                }
                breaks.add(start + share * length);
                last = share;
            }
            start += length;
        }
        return new ArrayList<>(breaks);
    }

    /** The ends of a straight piece and its crossings with lines through cell centres, as shares of its length, in order. */
    private SortedSet<Double> shares(Coordinate from, Coordinate to) {
        TreeSet<Double> shares = new TreeSet<>(List.of(0.0, 1.0));
        Coordinate start = field.inCells(from);
        Coordinate end = field.inCells(to);
        addCrossings(start.x, end.x, shares);
        addCrossings(start.y, end.y, shares);
        return shares;
    }

    private static void addCrossings(double start, double end, SortedSet<Double> shares) {
        double low = Math.min(start, end);
        double high = Math.max(start, end);
        for (double line = Math.ceil(low); line <= high && high > low; line++) {
            shares.add((line - start) / (end - start));
        }
    }
}
