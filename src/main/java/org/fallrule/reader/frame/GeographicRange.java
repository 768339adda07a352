package org.fallrule.reader.frame;

import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.locationtech.jts.geom.Coordinate;

/** Tells coordinates that cannot be longitude and latitude, and says what they may be instead. */
final class GeographicRange {

    private GeographicRange() {}

    static void refuseOutside(Coordinate position, Place where) {
        if (looksSwapped(position)) {
            throw new UnusableInput(
                    where,
                    "the position " + Shown.xy(position)
                            + " looks like latitude first; wanted longitude first, as GeoJSON has it: swap the two");
        }
        refuse("x", position.x, "longitude", 180, where);
        refuse("y", position.y, "latitude", 90, where);
    }

    /** In the United States latitudes run from 15 to 75 and longitudes from -180 to -60; the other way round is Antarctica. */
    private static boolean looksSwapped(Coordinate position) {
        return position.x >= 15 && position.x <= 75 && position.y >= -180 && position.y <= -60;
    }

    private static void refuse(String axis, double value, String kind, int limit, Place where) {
        if (Math.abs(value) > limit) {
            throw new UnusableInput(
                    where,
                    axis + " is " + Shown.number(value) + "; a " + kind + " lies between -" + limit + " and " + limit
                            + ": these look like projected coordinates; name the layer's CRS in site.yaml, e.g. crs: EPSG:2264");
        }
    }
}
