package org.fallrule.reader;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;

/** Files that hold a plan and are of no kind that is read: whoever put them there would take them as looked at. */
final class OtherFiles {
    private static final String DRAWING = "is a drawing, which is not read; export its layers as GeoJSON, GeoPackage or"
            + " shapefiles, closed outlines as polygons";
    private static final String EXPORT =
            "is not a kind of file that is read; export it as GeoJSON, GeoPackage or a shapefile";
    private static final String POINTS =
            "looks like a table of points; only those that end in .csv are read: rename it, and"
                    + " write a first line that names its columns, such as point,northing,easting,elevation,code";
    private static final Map<String, String> ENDINGS = Map.of(
            ".dxf", DRAWING,
            ".dwg", DRAWING,
            ".dgn", DRAWING,
            ".kml", EXPORT,
            ".kmz", EXPORT,
            ".gml", EXPORT,
            ".tab", EXPORT,
            ".mif", EXPORT,
            ".xlsx", "is not a kind of file that is read; save its table as .csv",
            ".xls", "is not a kind of file that is read; save its table as .csv");

    private static final Pattern NUMBER = Pattern.compile("\\s*[-+]?\\d+([.,]\\d+)?\\s*");
    private static final int LOOKED_AT = 4096;
    private static final int LEAST_NUMBERS = 3;

    private OtherFiles() {}

    /** What is to be said of a file; nothing where it holds no plan. */
    static Optional<Fault> told(Path folder, String file) {
        String name = file.toLowerCase(Locale.ROOT);
        boolean isText = name.endsWith(".txt") || name.endsWith(".pts") || name.endsWith(".xyz");
        Optional<String> says = isText && holdsPoints(folder.resolve(file))
                ? Optional.of(POINTS)
                : ENDINGS.entrySet().stream()
                        .filter(ending -> name.endsWith(ending.getKey()))
                        .map(Map.Entry::getValue)
                        .findFirst();
        return says.map(text -> new Fault(Place.of(file), text));
    }

    /** Whether its first lines are mostly numbers between separators. */
    private static boolean holdsPoints(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            String text = new String(in.readNBytes(LOOKED_AT), StandardCharsets.ISO_8859_1);
            return text.lines()
                            .limit(2)
                            .filter(line -> numbers(line) >= LEAST_NUMBERS)
                            .count()
                    > 0;
        } catch (IOException e) {
            return false;
        }
    }

    private static long numbers(String line) {
        return Arrays.stream(line.split("[,;\\s]+", -1))
                .filter(cell -> NUMBER.matcher(cell).matches())
                .count();
    }
}
