package org.fallrule.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * A made-up plan for a stack of plans: about sixty features around one house, or as many times more as houses stand in a row on
 * the lot, each with a drain of its own. What is drawn from the seed makes some plans fail: how near the outfall comes to the
 * walk and the lot line, how steep and how deep the drain lies, and how near utilities run.
 */
final class MadeHomes {
    /** Metres. */
    private static final double WIDE = 24;

    private static final double DEEP = 40;
    private static final double FOOT = 0.3048;

    private final Random random;
    private final int homes;
    private final List<MadeFeature> features = new ArrayList<>();

    private MadeHomes(long seed, int homes) {
        this.random = new Random(seed);
        this.homes = homes;
    }

    /** The features of a plan; the same seed gives the same plan. */
    static List<MadeFeature> features(long seed, int homes) {
        MadeHomes made = new MadeHomes(seed, homes);
        made.surroundings();
        for (int home = 0; home < homes; home++) {
            made.home(home);
        }
        return made.features;
    }

    private void surroundings() {
        double east = homes * WIDE;
        area("lot", columns("id", "L-1", "own", true), 0, 0, east, DEEP);
        area("lot", columns("id", "L-2", "own", false), -WIDE, 0, 0, DEEP);
        area("lot", columns("id", "L-3", "own", false), east, 0, east + WIDE, DEEP);
        area("lot", columns("id", "L-4", "own", false), 0, DEEP, east, 2 * DEEP);
        area("street", columns("id", "ST-1"), -WIDE, -12, east + WIDE, -4);
    }

    private void home(int home) {
        double x = home * WIDE;
        String of = "-" + (home + 1);
        area("building", columns("id", "B" + of, "kind", "house"), x + 7, 14, x + 17, 26);
        area("building", columns("id", "G" + of, "kind", "garage"), x + 17, 20, x + 21.5, 26);
        area("building", columns("id", "SH" + of, "kind", "shed"), x + 19, 34, x + 22, 37);
        area("walk", columns("id", "W" + of, "access", "public"), x, -3, x + WIDE, -1.5);
        area("walk", columns("id", "WF" + of, "access", "private"), x + 11, 0, x + 12.2, 14);
        area("walk", columns("id", "WB" + of, "access", "private"), x + 9, 26, x + 13, 28);
        area("drive", columns("id", "D" + of, "surface", "concrete"), x + 17.5, -3, x + 21, 20);
        drain(x, of);
        utilities(x, of);
        for (int spot = 0; spot < 18; spot++) {
            double east = x + (spot % 3) * 13 - 1 + random.nextDouble();
            double north = (spot / 3) * 11 - 13 + random.nextDouble();
            features.add(new MadeFeature(
                    "spot", MadeFeature.Kind.POINT, columns("id", "S" + of + "-" + (spot + 1)), new double[] {
                        east, north, feet(ground(east, north) + 0.01 * random.nextGaussian())
                    }));
        }
    }

    private void drain(double x, String of) {
        double out = 0.5 + 4 * random.nextDouble();
        double fall = 0.004 + 0.02 * random.nextDouble();
        double low = ground(x + 4, out) - 0.03 - fall * out;
        inlet("DS-1" + of, x + 17.5, 26.5, low + fall * 44);
        inlet("DS-2" + of, x + 6.5, 26.5, low + fall * 31);
        inlet("DS-3" + of, x + 6.5, 13.5, low + fall * 18);
        inlet("DS-4" + of, x + 17.5, 13.5, low + fall * 26);
        inlet("DS-5" + of, x + 12, 26.5, low + fall * 41);
        basin("CB-1" + of, x + 4, 31, low + fall * 31);
        basin("CB-2" + of, x + 4, 20, low + fall * 20);
        pipe("P-1" + of, 4, low + fall * 44, low + fall * 31, x + 17.5, 26.5, x + 16, 30.5, x + 4, 31);
        pipe("P-2" + of, 4, low + fall * 31, low + fall * 26.5, x + 6.5, 26.5, x + 4, 26.5);
        pipe("P-3" + of, 4, low + fall * 18, low + fall * 13.5, x + 6.5, 13.5, x + 4, 13.5);
        pipe("P-4" + of, 4, low + fall * 26, low + fall * 11.5, x + 17.5, 13.5, x + 17, 11.5, x + 4, 11.5);
        pipe("P-5" + of, 6, low + fall * 31, low + fall * 26.5, x + 4, 31, x + 4, 26.5);
        pipe("P-6" + of, 6, low + fall * 26.5, low + fall * 20, x + 4, 26.5, x + 4, 20);
        pipe("P-7" + of, 6, low + fall * 20, low + fall * 13.5, x + 4, 20, x + 4, 13.5);
        pipe("P-8" + of, 6, low + fall * 13.5, low + fall * 11.5, x + 4, 13.5, x + 4, 11.5);
        pipe("P-9" + of, 6, low + fall * 11.5, low + fall * out, x + 4, 11.5, x + 4, out);
        pipe("P-10" + of, 4, low + fall * 41, low + fall * 31, x + 12, 26.5, x + 11.5, 29.5, x + 4, 31);
        point("cleanout", columns("id", "CO-1" + of, "rim", feet(ground(x + 4, 26.5))), x + 4, 26.5);
        point("cleanout", columns("id", "CO-2" + of, "rim", feet(ground(x + 4, 11.5))), x + 4, 11.5);
        point("outfall", columns("id", "OF-1" + of, "kind", "daylight", "invert", feet(low + fall * out)), x + 4, out);
        area("drainage_area", columns("id", "DA-1" + of, "drains_to", "CB-1" + of), x + 1, 28, x + 16, 38);
        area("drainage_area", columns("id", "DA-2" + of, "drains_to", "CB-2" + of), x + 1, 14, x + 6.5, 27);
    }

    private void utilities(double x, String of) {
        utility("UM-1" + of, "water_main", 6, x, -8, x + WIDE, -8);
        utility("UM-2" + of, "sanitary", 8, x, -10, x + WIDE, -10);
        utility("UM-3" + of, "gas", 2, x, -5, x + WIDE, -5);
        utility("US-1" + of, "water_service", 1, x + 8 + between(), -8, x + 8 + between(), 14);
        utility("US-2" + of, "sanitary", 4, x + 14 + between(), -10, x + 14 + between(), 14);
        utility("US-3" + of, "gas", 1, x + 5 + between(), -5, x + 5 + between(), 12, x + 8, 14);
        utility("US-4" + of, "electric", 3, x - 1, 8 + between(), x + 8, 9 + between(), x + 8, 14);
        utility("US-5" + of, "communication", 1, x + 22 + between(), -4, x + 22 + between(), 22);
    }

    /** Metres, 1.5 either way. */
    private double between() {
        return 3 * random.nextDouble() - 1.5;
    }

    /** Metres: falls to the street by 6 %, in waves, and every house stands on a rise. */
    private static double ground(double x, double y) {
        double along = x - WIDE * Math.floor(x / WIDE);
        double fromHouse =
                Math.hypot(Math.max(0, Math.max(7 - along, along - 21.5)), Math.max(0, Math.max(14 - y, y - 26)));
        double rise = 0.8 * Math.exp(-fromHouse / 4);
        return 30 + 0.06 * y + rise + 0.03 * Math.sin(x / 7) * Math.cos(y / 9);
    }

    private static double feet(double metres) {
        return Math.round(metres / FOOT * 1000) / 1000.0;
    }

    private void inlet(String id, double x, double y, double invert) {
        point("inlet", columns("id", id, "kind", "downspout", "rim", feet(ground(x, y)), "invert", feet(invert)), x, y);
    }

    private void basin(String id, double x, double y, double invert) {
        Map<String, Object> basin =
                columns("id", id, "kind", "basin", "rim", feet(ground(x, y)), "invert", feet(invert));
        basin.put("sump", "6 in");
        basin.put("grate_length", "12 in");
        basin.put("grate_width", "12 in");
        point("inlet", basin, x, y);
    }

    private void pipe(String id, int inches, double up, double down, double... line) {
        Map<String, Object> pipe = columns("id", id, "diameter", inches, "material", "pvc_sdr35");
        pipe.put("invert_up", feet(up));
        pipe.put("invert_down", feet(down));
        line("pipe", pipe, line);
    }

    private void utility(String id, String kind, int inches, double... line) {
        Map<String, Object> utility = columns("id", id, "kind", kind, "diameter", inches);
        utility.put("depth", 18 + random.nextInt(30));
        utility.put("quality", String.valueOf("ABCD".charAt(random.nextInt(4))));
        line("utility", utility, line);
    }

    private static Map<String, Object> columns(Object... namesAndValues) {
        Map<String, Object> columns = new LinkedHashMap<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            columns.put(String.valueOf(namesAndValues[i]), namesAndValues[i + 1]);
        }
        return columns;
    }

    private void area(
            String layer, Map<String, Object> properties, double west, double south, double east, double north) {
        double[] ring = {west, south, west, north, east, north, east, south, west, south};
        features.add(new MadeFeature(layer, MadeFeature.Kind.AREA, properties, flat(ring)));
    }

    private void line(String layer, Map<String, Object> properties, double... line) {
        features.add(new MadeFeature(layer, MadeFeature.Kind.LINE, properties, flat(line)));
    }

    private void point(String layer, Map<String, Object> properties, double x, double y) {
        features.add(new MadeFeature(layer, MadeFeature.Kind.POINT, properties, flat(x, y)));
    }

    private static double[] flat(double... xy) {
        double[] places = new double[xy.length / 2 * 3];
        for (int i = 0; i < xy.length / 2; i++) {
            places[3 * i] = xy[2 * i];
            places[3 * i + 1] = xy[2 * i + 1];
        }
        return places;
    }
}
