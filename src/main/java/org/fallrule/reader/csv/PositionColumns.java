package org.fallrule.reader.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;

/**
 * The columns of a point's place, found by name, whatever its case: easting and northing, or longitude and latitude where there are no
 * such. The names are common practice; the order of columns is never guessed at.
 *
 * @param x the column of easting or longitude, counted from 0
 * @param y the column of northing or latitude
 * @param crs the system, where the names tell it
 */
record PositionColumns(int x, int y, Optional<String> crs) {
    private static final Set<String> EASTING = Set.of("x", "e", "east", "easting", "xcoord", "pointx");
    private static final Set<String> NORTHING = Set.of("y", "n", "north", "northing", "ycoord", "pointy");
    private static final Set<String> LONGITUDE = Set.of("lon", "long", "lng", "longitude");
    private static final Set<String> LATITUDE = Set.of("lat", "latitude");

    static PositionColumns of(List<String> header, Place file) {
        Optional<Integer> x = only(EASTING, header, file);
        Optional<Integer> y = only(NORTHING, header, file);
        if (x.isPresent() && y.isPresent()) {
            return new PositionColumns(x.get(), y.get(), Optional.empty());
        }
        Optional<Integer> longitude = only(LONGITUDE, header, file);
        Optional<Integer> latitude = only(LATITUDE, header, file);
        if (longitude.isPresent() && latitude.isPresent()) {
            return new PositionColumns(longitude.get(), latitude.get(), Optional.of("OGC:CRS84"));
        }
        throw new UnusableInput(
                file,
                "has no columns for the place of a point: wanted easting and northing, x and y, or longitude and latitude;"
                        + " it has " + String.join(", ", header) + "; name them so in its first line");
    }

    private static Optional<Integer> only(Set<String> names, List<String> header, Place file) {
        List<Integer> found = new ArrayList<>();
        for (int index = 0; index < header.size(); index++) {
            if (names.contains(header.get(index).toLowerCase(Locale.ROOT).replaceAll("[_\\s.-]", ""))) {
                found.add(index);
            }
        }
        if (found.size() > 1) {
            throw new UnusableInput(
                    file,
                    "the columns " + header.get(found.get(0)) + " and " + header.get(found.get(1))
                            + " could both be the place; rename the one that is not");
        }
        return found.stream().findFirst();
    }
}
