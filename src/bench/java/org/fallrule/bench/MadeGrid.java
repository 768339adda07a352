package org.fallrule.bench;

import java.util.Locale;

/** Definitions of the states' grids in the words of a {@code .prj} file; the parameters are those of the EPSG dataset. */
final class MadeGrid {
    private MadeGrid() {}

    static String esri(String code) {
        return switch (code) {
            case "EPSG:2264" ->
                lambert(
                        "NAD_1983_StatePlane_North_Carolina_FIPS_3200_Feet",
                        2_000_000.002616666,
                        -79,
                        34 + 20 / 60.0,
                        36 + 10 / 60.0,
                        33.75);
            case "EPSG:3734" ->
                lambert(
                        "NAD_1983_StatePlane_Ohio_North_FIPS_3401_Feet",
                        1_968_500,
                        -82.5,
                        40 + 26 / 60.0,
                        41.7,
                        39 + 40 / 60.0);
            default -> throw new IllegalArgumentException(code);
        };
    }

    private static String lambert(
            String name, double east, double meridian, double parallel, double other, double origin) {
        return String.format(
                Locale.ROOT,
                "PROJCS[\"%s\",GEOGCS[\"GCS_North_American_1983\",DATUM[\"D_North_American_1983\",SPHEROID[\"GRS_1980\","
                        + "6378137.0,298.257222101]],PRIMEM[\"Greenwich\",0.0],UNIT[\"Degree\",0.0174532925199433]],"
                        + "PROJECTION[\"Lambert_Conformal_Conic\"],PARAMETER[\"False_Easting\",%s],"
                        + "PARAMETER[\"False_Northing\",0.0],PARAMETER[\"Central_Meridian\",%s],"
                        + "PARAMETER[\"Standard_Parallel_1\",%s],PARAMETER[\"Standard_Parallel_2\",%s],"
                        + "PARAMETER[\"Latitude_Of_Origin\",%s],UNIT[\"Foot_US\",0.3048006096012192]]",
                name,
                east,
                meridian,
                parallel,
                other,
                origin);
    }
}
