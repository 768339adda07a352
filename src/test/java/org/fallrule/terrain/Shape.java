package org.fallrule.terrain;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleBinaryOperator;
import org.fallrule.measure.Elevation;
import org.fallrule.site.HeightField;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineString;

/** Ground given by a formula for its height in metres, within a box; no ground where the formula gives NaN. */
public record Shape(Envelope extent, DoubleBinaryOperator height) implements GroundSurface {

    /** A shape within a square of so many metres to each side of the origin. */
    public static Shape square(double half, DoubleBinaryOperator height) {
        return new Shape(new Envelope(-half, half, -half, half), height);
    }

    public double at(double x, double y) {
        return height.applyAsDouble(x, y);
    }

    /** The shape seen from a frame that is turned about the origin and then moved. */
    public DoubleBinaryOperator moved(double angle, double dx, double dy) {
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        return (x, y) -> at(cos * (x - dx) + sin * (y - dy), -sin * (x - dx) + cos * (y - dy));
    }

    @Override
    public Optional<Elevation> elevationAt(Coordinate place) {
        double z = at(place.x, place.y);
        return extent.contains(place) && Double.isFinite(z) ? Optional.of(new Elevation(z)) : Optional.empty();
    }

    @Override
    public Optional<Grade> gradeAt(Coordinate place) {
        return Optional.empty();
    }

    @Override
    public List<Double> breaksAlong(LineString line) {
        return List.of();
    }

    /** The shape as a raster whose rows are turned against the frame's axes, sampled at cell centres. */
    public HeightField raster(double spacing, double angle) {
        return new Raster(this, spacing, angle);
    }

    private record Raster(Shape shape, double spacing, double angle) implements HeightField {

        @Override
        public Coordinate inCells(Coordinate local) {
            return new Coordinate(
                    (Math.cos(angle) * local.x + Math.sin(angle) * local.y) / spacing,
                    (Math.sin(angle) * local.x - Math.cos(angle) * local.y) / spacing);
        }

        private double cell(double column, double row) {
            double x = (Math.cos(angle) * column + Math.sin(angle) * row) * spacing;
            double y = (Math.sin(angle) * column - Math.cos(angle) * row) * spacing;
            return shape.extent.contains(x, y) ? shape.at(x, y) : Double.NaN;
        }

        @Override
        public Optional<Elevation> heightAt(Coordinate local) {
            Coordinate at = inCells(local);
            double column = Math.floor(at.x);
            double row = Math.floor(at.y);
            double u = at.x - column;
            double v = at.y - row;
            double z = (1 - u) * (1 - v) * cell(column, row)
                    + u * (1 - v) * cell(column + 1, row)
                    + (1 - u) * v * cell(column, row + 1)
                    + u * v * cell(column + 1, row + 1);
            return Double.isNaN(z) ? Optional.empty() : Optional.of(new Elevation(z));
        }

        @Override
        public Envelope extent() {
            return shape.extent;
        }
    }
}
