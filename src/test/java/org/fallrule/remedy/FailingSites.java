package org.fallrule.remedy;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.fallrule.SiteOnDisk;

/**
 * Invented lots with a drain in which something is likely to fail: slopes, cover, setbacks, sizes, crossings, stone and sumps
 * are drawn at random around what rules usually ask. Coordinates are feet of EPSG:2264.
 */
final class FailingSites {
    private static final double EAST = 1_450_000;
    private static final double NORTH = 550_000;
    private static final List<String> COUNTIES = List.of("larkmoor", "saltmeadow", "brackenfell");

    private final Random random;

    FailingSites(long seed) {
        this.random = new Random(seed);
    }

    private double between(double low, double high) {
        return Math.round((low + random.nextDouble() * (high - low)) * 100) / 100.0;
    }

    private <T> T one(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    private static String at(double x, double y) {
        return String.format(Locale.ROOT, "[%.3f, %.3f]", EAST + x, NORTH + y);
    }

    private static String at(double x, double y, double z) {
        return String.format(Locale.ROOT, "[%.3f, %.3f, %.3f]", EAST + x, NORTH + y, z);
    }

    private static String box(double x, double y, double x2, double y2) {
        return "[[" + at(x, y) + ", " + at(x2, y) + ", " + at(x2, y2) + ", " + at(x, y2) + ", " + at(x, y) + "]]";
    }

    private static String area(String properties, double x, double y, double x2, double y2) {
        return SiteOnDisk.feature(properties, "Polygon", box(x, y, x2, y2));
    }

    /** Writes the next lot: a house, a downspout and a basin beside it, and a drain of three pipes south to the street. */
    SiteOnDisk next(Path place, String name) {
        double fall = between(0.03, 0.05);
        double end = between(1, 14);
        double basin = between(70, 90);
        double middle = between(35, 55);
        double x = between(70, 85);
        SiteOnDisk site = SiteOnDisk.in(place, name)
                .with("site.yaml", """
                        site: Made lot %s (invented)
                        county: %s
                        crs: EPSG:2264
                        datum: NAVD88
                        units: {elevation: ft, diameter: in, depth: in, sump: in}
                        survey: {horizontal_accuracy: %s ft, vertical_accuracy: %s ft}
                        absent: [septic, well, easement, water_body, flood_zone]
                        """.formatted(
                                name, one(COUNTIES), one(List.of("0", "0.1")), one(List.of("0", "0.05"))))
                .layer("lot.geojson", area("'id': 'L-1', 'own': true", 0, 0, 100, 140))
                .layer(
                        "building.geojson",
                        area("'id': 'B-1', 'kind': 'house', 'footing_depth': '24 in'", 20, 60, 60, 110))
                .layer("walk.geojson", area("'id': 'W-1', 'access': 'public'", -20, -8, 120, -4))
                .layer("street.geojson", area("'id': 'ST-1'", -20, -40, 120, -12))
                .layer(
                        "drive.geojson",
                        random.nextBoolean()
                                ? area("'id': 'D-1', 'surface': 'concrete'", 66, 10, 90, 30)
                                : area("'id': 'D-1', 'surface': 'concrete'", 5, 0, 15, 60));
        ground(site, fall);
        drain(site, fall, x, basin, middle, end);
        utilities(site, x, middle);
        site.layer(
                "drainage_area.geojson",
                area("'id': 'DA-1', 'drains_to': 'CB-1'", x - 8, basin - 2, x + 20, basin + between(15, 50)));
        return site;
    }

    private double height(double y, double fall) {
        return 100 + y * fall;
    }

    private void ground(SiteOnDisk site, double fall) {
        List<String> spots = new ArrayList<>();
        for (int i = -10; i <= 110; i += 20) {
            for (int j = -10; j <= 150; j += 20) {
                // not on a square grid, on which every diagonal of the triangles is as good as the other
                double x = i + between(-3, 3);
                double y = j + between(-3, 3);
                double z = height(y, fall) + between(-0.05, 0.05);
                spots.add(SiteOnDisk.feature("'id': 'S" + spots.size() + "'", "Point", at(x, y, z)));
            }
        }
        site.layer("spot.geojson", spots.toArray(String[]::new));
    }

    private void drain(SiteOnDisk site, double fall, double x, double basin, double middle, double end) {
        double low = height(end, fall) + between(0, 0.1);
        double top = height(basin, fall) - between(1.2, 2.2);
        double mid = low + (top - low) * (middle - end) / (basin - end) + between(-0.15, 0.15);
        double head = top + 20 * between(0.005, 0.03);
        String size = one(List.of("3", "4", "4", "6"));
        String material = one(List.of("pvc_sdr35", "pvc_sch40", "hdpe_single_wall"));
        site.layer(
                "pipe.geojson",
                pipe("P-1", "4", material, head, top, at(x - 10, basin + 18), at(x, basin)),
                pipe("P-2", size, material, top, mid, at(x, basin), at(x, middle)),
                pipe(
                        "P-3",
                        one(List.of("4", "4", "6")),
                        material,
                        mid,
                        low,
                        at(x, middle),
                        at(x + between(-15, 10), end)));
        site.layer(
                "inlet.geojson",
                SiteOnDisk.feature(
                        "'id': 'DS-1', 'kind': 'downspout', 'rim': " + height(basin + 18, fall),
                        "Point",
                        at(x - 10, basin + 18)),
                SiteOnDisk.feature(
                        String.format(
                                Locale.ROOT,
                                "'id': 'CB-1', 'kind': 'basin', 'rim': %.2f, 'sump': %s, 'weep_hole_area': '%s sq in',"
                                        + " 'weight': '%s lb', 'box_length': '12 in', 'box_width': '12 in', 'grate_length':"
                                        + " '12 in', 'grate_width': '12 in', 'grate_open_area': '%s sq in'",
                                height(basin, fall) - between(0, 0.1),
                                one(List.of("0", "6", "12")),
                                one(List.of("0", "1", "3")),
                                one(List.of("20", "60", "150")),
                                one(List.of("10", "50"))),
                        "Point",
                        at(x, basin)));
        site.layer(
                "outfall.geojson",
                SiteOnDisk.feature(
                        "'id': 'OF-1', 'kind': 'daylight', 'ground_cover': '" + one(List.of("grass", "bare"))
                                + "', 'apron_length': '0 ft'",
                        "Point",
                        last));
        site.layer("cleanout.geojson", SiteOnDisk.feature("'id': 'CO-1'", "Point", at(x, middle)));
    }

    private String last = "";

    private String pipe(String id, String size, String material, double up, double down, String from, String to) {
        last = to;
        return SiteOnDisk.feature(
                String.format(
                        Locale.ROOT,
                        "'id': '%s', 'diameter': %s, 'material': '%s', 'invert_up': %.2f, 'invert_down': %.2f",
                        id,
                        size,
                        material,
                        up,
                        down),
                "LineString",
                "[" + from + ", " + to + "]");
    }

    private void utilities(SiteOnDisk site, double x, double middle) {
        double across = between(middle - 20, middle - 5);
        site.layer(
                "utility.geojson",
                utility(
                        one(List.of("gas", "electric", "water_service")),
                        between(6, 40),
                        at(0, across),
                        at(100, across + 2)),
                utility("sanitary", between(40, 70), at(x + between(3, 12), 150), at(x + between(3, 12), -20)));
        site.layer(
                "tree.geojson",
                SiteOnDisk.feature(
                        "'id': 'T-1', 'trunk_diameter': '" + one(List.of("4", "10", "16")) + " in'",
                        "Point",
                        at(x + between(4, 25), between(10, 60))));
    }

    private String utility(String kind, double depth, String from, String to) {
        return SiteOnDisk.feature(
                "'id': 'U-" + kind + "', 'kind': '" + kind + "', 'diameter': 2, 'depth': " + depth + ", 'quality': '"
                        + one(List.of("A", "B")) + "'",
                "LineString",
                "[" + from + ", " + to + "]");
    }
}
