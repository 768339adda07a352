package org.fallrule.reader.frame;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import org.geotools.api.parameter.GeneralParameterValue;
import org.geotools.api.parameter.ParameterValue;
import org.geotools.api.parameter.ParameterValueGroup;
import org.geotools.api.referencing.crs.ProjectedCRS;

/**
 * Guesses where a projection without a known area of use is meant for. A transverse Mercator zone is read to 6 degrees either
 * side of its meridian; other zones, which may be as wide as the outermost of Alaska, to 12 degrees around their origin.
 */
final class ProjectionOrigin {
    private static final Set<String> LONGITUDES =
            Set.of("central_meridian", "longitude_of_center", "longitude_of_origin");
    private static final Set<String> LATITUDES = Set.of("latitude_of_origin", "latitude_of_center");

    private ProjectionOrigin() {}

    static AreaOfUse area(ProjectedCRS projected) {
        String method = projected
                .getConversionFromBase()
                .getMethod()
                .getName()
                .getCode()
                .toLowerCase(Locale.ROOT);
        ParameterValueGroup values = projected.getConversionFromBase().getParameterValues();
        OptionalDouble lon = degrees(values, LONGITUDES);
        OptionalDouble lat = degrees(values, LATITUDES);
        boolean transverse = method.contains("transverse");
        if (lon.isEmpty() || (method.contains("mercator") && !transverse && !method.contains("oblique"))) {
            return AreaOfUse.WORLD;
        }
        return around(transverse || lat.isEmpty(), lon.getAsDouble(), lat.orElse(0));
    }

    /**
     * The area around an origin in degrees.
     *
     * @param strip whether the projection is good along the meridian's whole length
     */
    static AreaOfUse around(boolean strip, double lon, double lat) {
        return strip ? AreaOfUse.around(lon, 0, 6, 90) : AreaOfUse.around(lon, lat, 12, 12);
    }

    private static OptionalDouble degrees(ParameterValueGroup values, Set<String> names) {
        for (GeneralParameterValue value : values.values()) {
            String name = value.getDescriptor().getName().getCode().toLowerCase(Locale.ROOT);
            if (names.contains(name) && value instanceof ParameterValue<?> number) {
                return OptionalDouble.of(number.doubleValue());
            }
        }
        return OptionalDouble.empty();
    }
}
