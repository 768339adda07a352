package org.fallrule.reader.raster;

import java.util.Arrays;
import java.util.Optional;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Unit;

/** The units and datums of height that rasters name, by factor and by code. */
final class HeightUnits {
    /** Relative; tells the survey foot, 2e-6 longer, from the international one. */
    private static final double SAME = 1e-7;

    private HeightUnits() {}

    /** The unit of so many metres. */
    static Optional<Unit> of(double metres) {
        return Arrays.stream(Unit.values())
                .filter(unit -> unit.dimension() == Dimension.ELEVATION)
                .filter(unit -> Math.abs(metres / unit.toSi() - 1) < SAME)
                .findFirst();
    }

    /** By the unit's code, as in the key VerticalUnitsGeoKey (4099) (OGC 19-008r4, annex on keys; EPSG units 9001 to 9003). */
    static Optional<Unit> ofUnitCode(int code) {
        return switch (code) {
            case 9001 -> Optional.of(Unit.ELEVATION_METRE);
            case 9002 -> Optional.of(Unit.ELEVATION_FOOT);
            case 9003 -> Optional.of(Unit.ELEVATION_SURVEY_FOOT);
            default -> Optional.empty();
        };
    }

    /**
     * By the code of the vertical system, as in the key VerticalGeoKey (4096): those of heights above NAVD 88, NGVD 29, the
     * EGM geoids and mean sea level (EPSG Geodetic Parameter Dataset, codes from memory).
     */
    static Optional<Unit> ofVerticalCode(int code) {
        return switch (code) {
            case 5703, 7968, 5773, 3855, 5714 -> Optional.of(Unit.ELEVATION_METRE);
            case 8228 -> Optional.of(Unit.ELEVATION_FOOT);
            case 6360, 5702 -> Optional.of(Unit.ELEVATION_SURVEY_FOOT);
            default -> Optional.empty();
        };
    }

    /** The datum by the same codes, and by those of the datums themselves, which some files hold in their place. */
    static Optional<String> datumOfVerticalCode(int code) {
        return switch (code) {
            case 5703, 8228, 6360, 5103 -> Optional.of("NAVD88");
            case 7968, 5702, 5102 -> Optional.of("NGVD29");
            case 5773 -> Optional.of("EGM96");
            case 3855 -> Optional.of("EGM2008");
            case 5714 -> Optional.of("mean sea level");
            default -> Optional.empty();
        };
    }
}
