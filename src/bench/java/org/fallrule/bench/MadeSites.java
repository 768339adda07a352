package org.fallrule.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Site folders around {@link MadePlan}, their ground given as a raster or as spots of any number. */
final class MadeSites {
    /** The system property that names the folder for sites. */
    static final String FOLDER = "fallrule.bench.sites";

    private static final long SEED = 20_261;

    private final Path folder;

    /** @param folder where to make them */
    MadeSites(Path folder) {
        this.folder = folder;
    }

    /** In the folder that the system property names. */
    static MadeSites inFolder() {
        return new MadeSites(Path.of(System.getProperty(FOLDER, "target/bench-sites")));
    }

    /**
     * A site with a raster, which lies with its middle on the lot's.
     *
     * @param size cells on each side
     * @param cell metres on each side of a cell
     */
    Path raster(int size, double cell) throws IOException {
        Path site = folder.resolve(String.format(Locale.ROOT, "raster-%d-%.2f", size, cell));
        MadePlan.write(site, "ground: {file: ground.tif}");
        double west = 20 - size * cell / 2;
        double north = 30 + size * cell / 2;
        MadeGround ground = new MadeGround(SEED);
        MadeTiff.write(
                site.resolve("ground.tif"),
                (column, row) -> ground.measured(west + (column + 0.5) * cell, north - (row + 0.5) * cell),
                size,
                cell,
                MadePlan.EAST + west,
                MadePlan.NORTH + north,
                MadePlan.EPSG);
        return site;
    }

    /** A site with a branching drain and no ground; see {@link MadeDrain}. */
    Path drain(int pipes) throws IOException {
        return MadeDrain.write(folder.resolve("drain-" + pipes), pipes);
    }

    /**
     * A site with spots in a shifted grid around the lot.
     *
     * @param count about how many
     * @param apart how many metres lie between neighbours
     */
    Path spots(int count, double apart) throws IOException {
        Path site = folder.resolve(String.format(Locale.ROOT, "spots-%d-%.2f", count, apart));
        MadePlan.write(site, "spot: spot.geojson");
        int side = (int) Math.round(Math.sqrt(count));
        MadeGround ground = new MadeGround(SEED);
        List<String> spots = new ArrayList<>();
        for (int i = 0; i < side * side; i++) {
            int row = i / side;
            int column = i % side;
            double x = 20 + (column - side / 2.0 + 0.8 * ground.shift()) * apart;
            double y = 30 + (row - side / 2.0 + 0.8 * ground.shift()) * apart;
            spots.add(String.format(
                    Locale.ROOT,
                    "{\"type\": \"Feature\", \"properties\": {\"id\": \"S-%d\"}, \"geometry\": {\"type\": \"Point\","
                            + " \"coordinates\": [%.3f, %.3f, %.3f]}}",
                    i + 1,
                    MadePlan.EAST + x,
                    MadePlan.NORTH + y,
                    ground.measured(x, y)));
        }
        Files.writeString(site.resolve("spot.geojson"), MadePlan.collection(spots));
        return site;
    }
}
