package org.fallrule.bench;

import java.util.Random;
import org.fallrule.document.Place;
import org.fallrule.reader.frame.CoordinateSystem;
import org.fallrule.reader.frame.LocalFrame;
import org.locationtech.jts.geom.Coordinate;

/**
 * Where a made-up plan lies: in one of the invented counties, all of them in open water.
 *
 * @param county its rule book
 * @param grid the code of the state's grid in US survey feet
 */
record MadePlace(String county, String grid, LocalFrame frame) {
    private static final String NORTH_CAROLINA = "EPSG:2264";
    private static final String OHIO_NORTH = "EPSG:3734";

    /** The place of a plan by its number: the counties take turns. */
    static MadePlace of(int number, long seed) {
        Random random = new Random(seed);
        double east = 0.06 * random.nextDouble();
        double north = 0.06 * random.nextDouble();
        return switch (number % 3) {
            case 0 -> new MadePlace("larkmoor", OHIO_NORTH, LocalFrame.at(-81.93 + east, 41.72 + north));
            case 1 -> new MadePlace("saltmeadow", NORTH_CAROLINA, LocalFrame.at(-76.08 + east, 35.27 + north));
            default -> new MadePlace("brackenfell", NORTH_CAROLINA, LocalFrame.at(-76.18 + east, 35.27 + north));
        };
    }

    Coordinate lonLat(MadeFeature feature, int vertex) {
        return frame.toLonLat(new Coordinate(feature.x(vertex), feature.y(vertex)));
    }

    Coordinate onGrid(MadeFeature feature, int vertex) {
        return CoordinateSystem.of(grid, Place.of(grid))
                .fromLonLat(lonLat(feature, vertex))
                .orElseThrow();
    }
}
