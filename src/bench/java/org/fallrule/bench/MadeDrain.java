package org.fallrule.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A made-up drain of any size: a trunk from an outfall north, and at each of its junctions a branch east, twice as long as the
 * trunk. A basin stands at the head of every pipe with a drainage area of its own; every other area names its basin, the rest
 * hold it. Pipes fall by 1 % and widen downstream.
 */
final class MadeDrain {
    private static final double PIPE = 6;

    private final int rows;
    private final int columns;
    private final List<String> inlets = new ArrayList<>();
    private final List<String> pipes = new ArrayList<>();
    private final List<String> areas = new ArrayList<>();

    private MadeDrain(int pipes) {
        this.rows = (int) Math.round(Math.sqrt(pipes / 2.0));
        this.columns = 2 * rows;
    }

    /**
     * Writes the site.
     *
     * @param pipes how many pipes; twice a square number
     */
    static Path write(Path folder, int pipes) throws IOException {
        Files.createDirectories(folder);
        MadeDrain made = new MadeDrain(pipes);
        for (int row = 1; row <= made.rows; row++) {
            for (int column = 0; column < made.columns; column++) {
                made.stretch(column, row);
            }
        }
        Files.writeString(folder.resolve("site.yaml"), """
                site: Measured Drain 1 (invented)
                datum: NAVD88
                units: {elevation: m, diameter: in}
                storm: {return_period: 10 yr, shortest_duration: 5 min, intensity: [{minutes: 5, by: 6 in/h}, {minutes: 60, by: 2 in/h}]}
                layers: {pipe: pipe.geojson, inlet: inlet.geojson, outfall: outfall.geojson, drainage_area: area.geojson}
                """);
        save(folder, "pipe", made.pipes);
        save(folder, "inlet", made.inlets);
        save(folder, "area", made.areas);
        save(folder, "outfall", List.of(feature("\"id\": \"OF-1\", \"kind\": \"daylight\"", "Point", at(0, 0))));
        return folder;
    }

    /** A pipe with the basin at its head and the area around that. */
    private void stretch(int column, int row) {
        int above = column == 0 ? (rows - row + 1) * columns : columns - column;
        double x = column * PIPE;
        double y = row * PIPE;
        double x2 = Math.max(0, x - PIPE);
        double y2 = column == 0 ? y - PIPE : y;
        String name = row + "-" + column;
        inlets.add(feature(
                String.format(
                        Locale.ROOT, "\"id\": \"CB-%s\", \"kind\": \"basin\", \"rim\": %.3f", name, 101 + fall(x, y)),
                "Point",
                at(x, y)));
        pipes.add(feature(
                String.format(
                        Locale.ROOT,
                        "\"id\": \"P-%s\", \"diameter\": %.1f, \"material\": \"pvc_sdr35\", \"invert_up\": %.3f,"
                                + " \"invert_down\": %.3f",
                        name,
                        2 * Math.pow(above, 0.375),
                        100 + fall(x, y),
                        100 + fall(x2, y2)),
                "LineString",
                "[" + at(x, y) + ", " + at(x2, y2) + "]"));
        String drainsTo = (row + column) % 2 == 0 ? ", \"drains_to\": \"CB-" + name + "\"" : "";
        areas.add(feature(
                "\"id\": \"DA-" + name + "\", \"runoff_coefficient\": 0.5, \"concentration_time\": \"6 min\""
                        + drainsTo,
                "Polygon",
                "[[" + at(x - 2, y - 2) + ", " + at(x + 2, y - 2) + ", " + at(x + 2, y + 2) + ", " + at(x - 2, y + 2)
                        + ", " + at(x - 2, y - 2) + "]]"));
    }

    private static double fall(double x, double y) {
        return 0.01 * (x + y);
    }

    private static String at(double x, double y) {
        return String.format(Locale.ROOT, "[%.3f, %.3f]", MadePlan.EAST + x, MadePlan.NORTH + y);
    }

    private static String feature(String properties, String type, String coordinates) {
        return "{\"type\": \"Feature\", \"properties\": {" + properties + "}, \"geometry\": {\"type\": \"" + type
                + "\", \"coordinates\": " + coordinates + "}}";
    }

    private static void save(Path folder, String layer, List<String> features) throws IOException {
        Files.writeString(folder.resolve(layer + ".geojson"), MadePlan.collection(features));
    }
}
