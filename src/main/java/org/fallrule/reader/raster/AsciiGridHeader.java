package org.fallrule.reader.raster;

import java.io.IOException;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.fallrule.document.UnusableInput;
import org.locationtech.jts.geom.util.AffineTransformation;

/**
 * The header of an ESRI ASCII grid.
 *
 * @param placement where its cell centres lie; {@code xllcorner} names a corner of the lower left cell, {@code xllcenter}
 *     its centre
 * @param none the value that stands for none, -9999 when the header names none
 * @param firstValue the first height, which had to be read to know that the header was over
 */
record AsciiGridHeader(int columns, int rows, Placement placement, double none, double firstValue) {
    private static final Set<String> WORDS = Set.of(
            "ncols",
            "nrows",
            "xllcorner",
            "yllcorner",
            "xllcenter",
            "yllcenter",
            "cellsize",
            "dx",
            "dy",
            "nodata_value",
            "nodata");

    static AsciiGridHeader read(AsciiGridWords words) throws IOException {
        Map<String, Double> found = new HashMap<>();
        while (words.peeksWord()) {
            String word = words.word().toLowerCase(Locale.ROOT);
            if (!WORDS.contains(word)) {
                throw words.fault("found \"" + word + "\"; wanted a line of the header such as ncols 100, or a height");
            }
            if (found.put(word, words.number()) != null) {
                throw words.fault("names " + word + " twice; wanted it once");
            }
        }
        int columns = count(found, "ncols", words);
        int rows = count(found, "nrows", words);
        return new AsciiGridHeader(
                columns,
                rows,
                placement(found, rows, words),
                found.getOrDefault("nodata_value", found.getOrDefault("nodata", -9999.0)),
                words.number());
    }

    private static Placement placement(Map<String, Double> found, int rows, AsciiGridWords words) {
        double dx = found.containsKey("dx") ? wanted(found, "dx", words) : wanted(found, "cellsize", words);
        double dy = found.containsKey("dy") ? wanted(found, "dy", words) : wanted(found, "cellsize", words);
        if (!(dx > 0 && dy > 0)) {
            throw words.fault("cells are " + dx + " by " + dy + "; wanted a cellsize above 0");
        }
        double left = found.containsKey("xllcenter")
                ? wanted(found, "xllcenter", words)
                : wanted(found, "xllcorner", words) + dx / 2;
        double lower = found.containsKey("yllcenter")
                ? wanted(found, "yllcenter", words)
                : wanted(found, "yllcorner", words) + dy / 2;
        try {
            return Placement.of(new AffineTransformation(dx, 0, left, 0, -dy, lower + (rows - 1.0) * dy));
        } catch (IllegalArgumentException e) {
            throw words.fault(e.getMessage() + "; mend the header");
        }
    }

    private static int count(Map<String, Double> found, String word, AsciiGridWords words) {
        double count = wanted(found, word, words);
        if (!(count >= 1 && count <= 10_000_000 && count == Math.rint(count))) {
            throw words.fault(word + " is " + count + "; wanted a whole number from 1 to 10,000,000");
        }
        return (int) count;
    }

    private static double wanted(Map<String, Double> found, String word, AsciiGridWords words) throws UnusableInput {
        Double value = found.get(word);
        if (value == null || !Double.isFinite(value)) {
            throw words.fault("its header has no number for " + word + "; mend the header");
        }
        return value;
    }
}
