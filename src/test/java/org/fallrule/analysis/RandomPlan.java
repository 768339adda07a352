package org.fallrule.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Coordinate;

/** Shapes of an invented plan, made from a seed; places are in feet, as far apart as on a house lot. */
final class RandomPlan {
    private final Random random;

    RandomPlan(long seed) {
        random = new Random(seed);
    }

    double between(double least, double most) {
        return least + random.nextDouble() * (most - least);
    }

    Coordinate place() {
        return new Coordinate(between(-120, 120), between(-120, 120));
    }

    /** A line of two to six places that may turn anywhere, even across itself. */
    List<Coordinate> line() {
        List<Coordinate> places = new ArrayList<>();
        for (int i = 0, count = 2 + random.nextInt(5); i < count; i++) {
            places.add(place());
        }
        return places;
    }

    /** A ring of five to twelve corners around a middle, none of its edges across another; it may be far from convex. */
    List<Coordinate> ring() {
        Coordinate middle = place();
        int corners = 5 + random.nextInt(8);
        List<Coordinate> places = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * (i + between(0, 0.9)) / corners;
            double reach = between(5, 80);
            places.add(new Coordinate(middle.x + reach * Math.cos(angle), middle.y + reach * Math.sin(angle)));
        }
        places.add(places.get(0));
        return places;
    }

    static String line(List<Coordinate> places) {
        return "LINESTRING " + listed(places);
    }

    static String polygon(List<Coordinate> ring) {
        return "POLYGON (" + listed(ring) + ")";
    }

    static String point(Coordinate place) {
        return "POINT " + listed(List.of(place));
    }

    private static String listed(List<Coordinate> places) {
        return places.stream().map(place -> place.x + " " + place.y).collect(Collectors.joining(", ", "(", ")"));
    }
}
