package org.fallrule.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A made-up plan of one lot, 40 m by 60 m, with everything that the checks of the ground ask for: lot lines, a house, walks, a
 * street, downspouts, a basin in a hollow, two drains with an outfall each, and utilities across them. Coordinates are metres
 * east and north of the lot's southwest corner.
 */
final class MadePlan {
    static final int EPSG = 26917;
    static final double EAST = 510_000;
    static final double NORTH = 3_905_000;
    static final double BASIN_X = 20;
    static final double BASIN_Y = 46;

    /** Metres from the ground to the invert; enough for the cover that the rules ask for, somewhere. */
    private static final double BELOW = 0.6;

    private final Path folder;
    private final List<String> features = new ArrayList<>();

    private MadePlan(Path folder) {
        this.folder = folder;
    }

    /** Writes all but the ground; {@code ground} is the line of site.yaml that names it. */
    static void write(Path folder, String ground) throws IOException {
        Files.createDirectories(folder);
        new MadePlan(folder).written(ground);
    }

    private void written(String ground) throws IOException {
        Files.writeString(folder.resolve("site.yaml"), """
                site: Measured Mile 1 (invented)
                county: larkmoor
                datum: NAVD88
                units: {elevation: m, diameter: in, depth: in}
                absent: [septic, well, easement, tree, water_body, flood_zone]
                layers:
                  lot: lot.geojson
                  building: building.geojson
                  walk: walk.geojson
                  drive: drive.geojson
                  street: street.geojson
                  pipe: pipe.geojson
                  inlet: inlet.geojson
                  outfall: outfall.geojson
                  utility: utility.geojson
                """ + "  " + ground + "\n");
        area("\"id\": \"L-1\", \"own\": true", 0, 0, 40, 60);
        area("\"id\": \"L-2\", \"own\": false", 40, 0, 80, 60);
        save("lot");
        area("\"id\": \"B-1\", \"kind\": \"house\"", 10, 20, 30, 40);
        save("building");
        area("\"id\": \"W-1\", \"access\": \"public\"", -40, -3, 80, -1.5);
        area("\"id\": \"W-2\", \"access\": \"private\"", 19, -1.5, 20.5, 20);
        save("walk");
        area("\"id\": \"D-1\", \"surface\": \"concrete\"", 23, -3, 28, 20);
        save("drive");
        area("\"id\": \"ST-1\"", -40, -12, 80, -4);
        save("street");
        drains();
        utility("gas", 40, 36, -40, -2, 80, -2);
        utility("water_service", 1.5, 38, 15, -8, 15, 20);
        utility("electric", 3, 30, -40, 8, 80, 8);
        utility("communication", 1, 24, -40, 12, 80, 12);
        save("utility");
    }

    private void drains() throws IOException {
        inlet("DS-1", "downspout", 9.5, 40.5);
        inlet("DS-2", "downspout", 9.5, 20);
        inlet("DS-3", "downspout", 30.5, 40.5);
        inlet("DS-4", "downspout", 30.5, 20);
        inlet("IB-1", "basin", BASIN_X, BASIN_Y);
        save("inlet");
        pipe("P-1", 6, BASIN_X, BASIN_Y, 7, 40);
        pipe("P-2", 4, 9.5, 40.5, 7, 40);
        pipe("P-3", 6, 7, 40, 7, 18);
        pipe("P-4", 4, 9.5, 20, 7, 18);
        pipe("P-5", 6, 7, 18, 7, 3);
        pipe("P-6", 4, 30.5, 40.5, 33, 20);
        pipe("P-7", 4, 30.5, 20, 33, 20);
        pipe("P-8", 6, 33, 20, 34, 3);
        save("pipe");
        point("\"id\": \"OF-1\", \"kind\": \"daylight\"" + invert(7, 3), 7, 3);
        point("\"id\": \"OF-2\", \"kind\": \"pop_up\"" + invert(34, 3), 34, 3);
        save("outfall");
    }

    private static String invert(double x, double y) {
        return String.format(Locale.ROOT, ", \"invert\": %.3f", MadeGround.height(x, y) - BELOW);
    }

    private void inlet(String id, String kind, double x, double y) {
        double rim = MadeGround.height(x, y);
        point(
                String.format(
                        Locale.ROOT, "\"id\": \"%s\", \"kind\": \"%s\", \"rim\": %.3f%s", id, kind, rim, invert(x, y)),
                x,
                y);
    }

    private void pipe(String id, int inches, double... line) {
        line(
                String.format(
                        Locale.ROOT,
                        "\"id\": \"%s\", \"diameter\": %d, \"material\": \"pvc_sch40\", \"invert_up\": %.3f,"
                                + " \"invert_down\": %.3f",
                        id,
                        inches,
                        MadeGround.height(line[0], line[1]) - BELOW,
                        MadeGround.height(line[2], line[3]) - BELOW),
                line);
    }

    private void utility(String kind, double inches, double depth, double... line) {
        line(
                String.format(
                        Locale.ROOT,
                        "\"id\": \"U-%d\", \"kind\": \"%s\", \"diameter\": %.1f, \"depth\": %.1f, \"quality\": \"A\"",
                        features.size() + 1,
                        kind,
                        inches,
                        depth),
                line);
    }

    private void area(String properties, double west, double south, double east, double north) {
        feature(
                properties,
                "Polygon",
                "[[" + places(west, south, east, south, east, north, west, north, west, south) + "]]");
    }

    private void line(String properties, double... line) {
        feature(properties, "LineString", "[" + places(line) + "]");
    }

    private void point(String properties, double x, double y) {
        feature(properties, "Point", places(x, y));
    }

    private static String places(double... xy) {
        List<String> places = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            places.add(String.format(Locale.ROOT, "[%.3f, %.3f]", EAST + xy[i], NORTH + xy[i + 1]));
        }
        return String.join(", ", places);
    }

    private void feature(String properties, String type, String coordinates) {
        features.add("{\"type\": \"Feature\", \"properties\": {" + properties + "}, \"geometry\": {\"type\": \"" + type
                + "\", \"coordinates\": " + coordinates + "}}");
    }

    private void save(String layer) throws IOException {
        Files.writeString(folder.resolve(layer + ".geojson"), collection(features));
        features.clear();
    }

    /** A feature collection in the plan's projected system. */
    static String collection(List<String> features) {
        return "{\"type\": \"FeatureCollection\", \"crs\": {\"type\": \"name\", \"properties\": {\"name\":"
                + " \"urn:ogc:def:crs:EPSG::" + EPSG + "\"}}, \"features\": [\n"
                + String.join(",\n", features) + "\n]}\n";
    }
}
