package org.fallrule.reader.frame;

import java.util.Locale;
import java.util.Set;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.geotools.api.referencing.datum.Ellipsoid;
import org.geotools.api.referencing.datum.GeodeticDatum;

/** The datums that are taken as one, as {@link CoordinateSystem} says: NAD83 in its realizations, and WGS 84. */
final class Datums {
    private static final Set<String> FAMILY = Set.of(
            "NAD83",
            "NORTHAMERICANDATUM1983",
            "NORTHAMERICAN1983",
            "NAD83HIGHACCURACYREFERENCENETWORK",
            "NAD83HIGHACCURACYREGIONALNETWORK",
            "NORTHAMERICAN1983HARN",
            "NAD1983HARN",
            "NAD83CONTINUOUSLYOPERATINGREFERENCESTATION1996",
            "NAD1983CORS96",
            "NAD83NATIONALSPATIALREFERENCESYSTEM2007",
            "NAD1983NSRS2007",
            "NAD83NATIONALSPATIALREFERENCESYSTEM2011",
            "NAD1983NATIONALSPATIALREFERENCESYSTEM2011",
            "NAD19832011",
            "NAD832011",
            "WGS84",
            "WGS1984",
            "WORLDGEODETICSYSTEM1984");

    private Datums() {}

    /** Whether a datum's name is one of those. */
    static boolean isOfFamily(String name) {
        return FAMILY.contains(plain(name));
    }

    static void refuseOther(GeodeticDatum datum, Place where) {
        String name = datum.getName().getCode();
        boolean known = isOfFamily(name)
                && isGrs80OrWgs84(datum.getEllipsoid())
                && datum.getPrimeMeridian().getGreenwichLongitude() == 0;
        if (!known) {
            throw new UnusableInput(
                    where,
                    "the layer is on the datum \"" + name
                            + "\"; wanted NAD83 or WGS 84: bring the layer to one of them in a"
                            + " GIS program, as a shift left out would move it by up to hundreds of feet");
        }
    }

    /** Semi-major axis 6378137 m and inverse flattening 298.257 (GRS 80 and WGS 84 differ in its sixth decimal place). */
    private static boolean isGrs80OrWgs84(Ellipsoid ellipsoid) {
        return Math.abs(ellipsoid.getSemiMajorAxis() - 6378137.0) < 0.01
                && Math.abs(ellipsoid.getInverseFlattening() - 298.2572) < 0.0001;
    }

    /** Capitals and digits only, without the {@code D_} of the Esri flavour and the word "ensemble" of newer tables. */
    private static String plain(String name) {
        String letters =
                name.toUpperCase(Locale.ROOT).replaceAll("[^A-Z0-9]", "").replaceFirst("ENSEMBLE$", "");
        return name.startsWith("D_") ? letters.substring(1) : letters;
    }
}
