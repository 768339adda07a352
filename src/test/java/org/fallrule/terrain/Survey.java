package org.fallrule.terrain;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import org.fallrule.document.Place;
import org.fallrule.site.Attributes;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

/** A survey made up for a test: spots, contours and breaklines of a shape. */
final class Survey {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    final List<Feature> spots = new ArrayList<>();
    final List<Feature> contours = new ArrayList<>();
    final List<Feature> breaklines = new ArrayList<>();

    Survey spot(double x, double y, double z) {
        spots.add(new Feature(
                Role.SPOT,
                "S-" + (spots.size() + 1),
                GEOMETRY.createPoint(new Coordinate(x, y, z)),
                Attributes.none(),
                Place.of("spot.shp").feature("feature " + (spots.size() + 1))));
        return this;
    }

    /** Spots on a square grid from -half to half. */
    Survey grid(double half, double spacing, DoubleBinaryOperator height) {
        for (double x = -half; x <= half; x += spacing) {
            for (double y = -half; y <= half; y += spacing) {
                spot(x, y, height.applyAsDouble(x, y));
            }
        }
        return this;
    }

    /** A polygon of these corners among the spots. */
    Survey polygon(Coordinate... ring) {
        spots.add(new Feature(
                Role.SPOT,
                "T-" + (spots.size() + 1),
                GEOMETRY.createPolygon(ring),
                Attributes.none(),
                Place.of("spot.shp").feature("feature " + (spots.size() + 1))));
        return this;
    }

    Survey contour(double z, Coordinate... places) {
        for (Coordinate place : places) {
            place.setZ(z);
        }
        contours.add(line(Role.CONTOUR, "contour.shp", contours.size() + 1, places));
        return this;
    }

    Survey breakline(Coordinate... places) {
        breaklines.add(line(Role.BREAKLINE, "breakline.shp", breaklines.size() + 1, places));
        return this;
    }

    private static Feature line(Role role, String file, int number, Coordinate... places) {
        return new Feature(
                role,
                "L-" + number,
                GEOMETRY.createLineString(places),
                Attributes.none(),
                Place.of(file).feature("feature " + number));
    }

    GroundBuilder.Result built() {
        return GroundBuilder.build(spots, contours, breaklines);
    }

    GroundSurface ground() {
        return built().ground().orElseThrow();
    }

    static double height(GroundSurface ground, double x, double y) {
        return ground.elevationAt(new Coordinate(x, y)).orElseThrow().metres();
    }
}
