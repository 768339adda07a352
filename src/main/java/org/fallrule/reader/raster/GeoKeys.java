package org.fallrule.reader.raster;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fallrule.measure.Unit;

/** What the keys of a GeoTIFF say of its coordinate reference system (OGC 19-008r4, 2019, section 7). */
final class GeoKeys {
    private static final int MODEL_TYPE = 1024;
    private static final int RASTER_TYPE = 1025;
    private static final int CITATION = 1026;
    private static final int GEODETIC_CRS = 2048;
    private static final int PROJECTED_CRS = 3072;
    private static final int PROJECTED_CITATION = 3073;
    private static final int VERTICAL_CRS = 4096;
    private static final int VERTICAL_UNITS = 4099;

    private static final int PIXEL_IS_POINT = 2;
    private static final int GEOGRAPHIC = 2;
    private static final int USER_DEFINED = 32767;

    /** How one maker of files puts well-known text into a citation. */
    private static final Pattern WKT_IN_CITATION = Pattern.compile("(?s)PE String = (PROJCS\\[.*|GEOGCS\\[.*)");

    private final long[] directory;
    private final String texts;

    GeoKeys(TiffDirectory tiff) {
        this.directory = tiff.wholes(TiffTag.GEO_KEY_DIRECTORY);
        this.texts = tiff.text(TiffTag.GEO_ASCII_PARAMS).orElse("");
    }

    boolean isPixelIsPoint() {
        return code(RASTER_TYPE).orElse(0) == PIXEL_IS_POINT;
    }

    /** The code or well-known text of the horizontal system; empty when the keys name none. */
    Optional<String> crs() {
        int key = code(MODEL_TYPE).orElse(0) == GEOGRAPHIC ? GEODETIC_CRS : PROJECTED_CRS;
        OptionalInt code = code(key);
        if (code.isPresent() && code.getAsInt() > 0 && code.getAsInt() < USER_DEFINED) {
            return Optional.of("EPSG:" + code.getAsInt());
        }
        return wkt(PROJECTED_CITATION).or(() -> wkt(CITATION));
    }

    /** Whether the keys describe a projection of their own, number by number, which is not read. */
    boolean isOwnProjection() {
        return crs().isEmpty() && code(PROJECTED_CRS).orElse(0) == USER_DEFINED;
    }

    Optional<Unit> heightUnit() {
        OptionalInt unit = code(VERTICAL_UNITS);
        if (unit.isPresent()) {
            return HeightUnits.ofUnitCode(unit.getAsInt());
        }
        OptionalInt system = code(VERTICAL_CRS);
        return system.isPresent() ? HeightUnits.ofVerticalCode(system.getAsInt()) : Optional.empty();
    }

    Optional<String> heightDatum() {
        OptionalInt system = code(VERTICAL_CRS);
        return system.isPresent() ? HeightUnits.datumOfVerticalCode(system.getAsInt()) : Optional.empty();
    }

    private Optional<String> wkt(int key) {
        Matcher found = WKT_IN_CITATION.matcher(text(key));
        return found.find() ? Optional.of(found.group(1).replaceFirst("\\|.*", "")) : Optional.empty();
    }

    /** The value of a key that is held in the directory itself. */
    private OptionalInt code(int key) {
        int at = find(key);
        return at >= 0 && directory[at + 1] == 0 ? OptionalInt.of((int) directory[at + 3]) : OptionalInt.empty();
    }

    private String text(int key) {
        int at = find(key);
        if (at < 0 || directory[at + 1] != TiffTag.GEO_ASCII_PARAMS) {
            return "";
        }
        int start = (int) Math.min(directory[at + 3], texts.length());
        return texts.substring(start, (int) Math.min(start + directory[at + 2], texts.length()));
    }

    /** Where a key's four numbers begin; -1 when it is missing. */
    private int find(int key) {
        for (int at = 4; at + 3 < directory.length; at += 4) {
            if (directory[at] == key) {
                return at;
            }
        }
        return -1;
    }
}
