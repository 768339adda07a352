package org.fallrule.reader.frame;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.geotools.api.metadata.extent.GeographicBoundingBox;
import org.geotools.api.referencing.FactoryException;
import org.geotools.api.referencing.crs.CoordinateReferenceSystem;
import org.geotools.api.referencing.crs.GeographicCRS;
import org.geotools.api.referencing.crs.ProjectedCRS;
import org.geotools.referencing.CRS;
import org.geotools.referencing.wkt.Formattable;

/**
 * Makes the table of codes from the library's EPSG database: every projected system on NAD83, NAD83(HARN), NAD83(NSRS2007) and
 * NAD83(2011), which is all state-plane zones in all their units, UTM and the states' own systems; UTM on WGS 84; Web
 * Mercator; and the geographic systems beneath. Run {@link #main} after the library has been changed for a newer one.
 */
final class CodeTableMaker {
    private static final List<Integer> SINGLE = List.of(4326, 4269, 4152, 4759, 6318, 3857);

    private CodeTableMaker() {}

    /** Writes the resource; the argument is the file. */
    public static void main(String[] arguments) throws IOException {
        List<Integer> codes = Stream.of(
                        SINGLE.stream(), IntStream.rangeClosed(32601, 32660).boxed(), onNad83())
                .flatMap(part -> part)
                .sorted()
                .distinct()
                .toList();
        try (OutputStream file = new GZIPOutputStream(Files.newOutputStream(Path.of(arguments[0])))) {
            for (int code : codes) {
                Optional<CodeTable.Row> row = row(code);
                if (row.isPresent()) {
                    file.write((row.get().line() + "\n").getBytes(StandardCharsets.UTF_8));
                }
            }
        }
    }

    private static Stream<Integer> onNad83() {
        return CRS.getSupportedCodes("EPSG").stream()
                .filter(code -> code.matches("[0-9]+"))
                .map(Integer::valueOf)
                .filter(CodeTableMaker::isNamedNad83);
    }

    private static boolean isNamedNad83(int code) {
        try {
            String name = CRS.getAuthorityFactory(true)
                    .getDescriptionText("EPSG:" + code)
                    .toString();
            return name.matches("NAD83(\\((HARN|NSRS2007|2011)\\))? / [^+]*");
        } catch (FactoryException e) {
            return false;
        }
    }

    /** What the database says of a code; empty when it is not a system that this program would take. */
    static Optional<CodeTable.Row> row(int code) {
        try {
            CoordinateReferenceSystem system = CRS.decode("EPSG:" + code, true);
            boolean wanted = system instanceof ProjectedCRS || system instanceof GeographicCRS;
            GeographicBoundingBox box = CRS.getGeographicBoundingBox(system);
            if (!wanted || box == null) {
                return Optional.empty();
            }
            AreaOfUse area = new AreaOfUse(
                    box.getWestBoundLongitude(),
                    box.getSouthBoundLatitude(),
                    box.getEastBoundLongitude(),
                    box.getNorthBoundLatitude());
            CodeTable.Row row = new CodeTable.Row(code, area, wkt(system));
            new Definition(WktParsing.parse(row.wkt(), Place.of("EPSG:" + code)), Place.of("EPSG:" + code))
                    .system(OptionalDouble.empty(), Optional.of(area));
            return Optional.of(row);
        } catch (FactoryException | UnusableInput e) {
            return Optional.empty();
        }
    }

    /** On one line, without what is not used: authorities, datum shifts, and axes, as all are east and north. */
    private static String wkt(CoordinateReferenceSystem system) {
        return ((Formattable) system)
                .toWKT(0)
                .replaceAll("\\s*[\\r\\n]+\\s*", "")
                .replaceAll(",\\s*AUTHORITY\\[[^\\]]*\\]", "")
                .replaceAll(",\\s*(TOWGS84|AXIS)\\[[^\\]]*\\]", "")
                .replaceAll(",\\s+(?=[A-Z0-9.-])", ",");
    }
}
