package org.fallrule.reader.frame;

/**
 * Where on earth a coordinate reference system is meant to be used: a box of longitude and latitude, degrees. West is greater
 * than east when the box crosses the 180th meridian.
 */
record AreaOfUse(double west, double south, double east, double north) {
    static final AreaOfUse WORLD = new AreaOfUse(-180, -90, 180, 90);

    /** Degrees by which data may reach beyond the box: about 100 km, as areas of use are drawn along borders. */
    private static final double MARGIN = 1;

    /** A box around a point, to so many degrees on each side. */
    static AreaOfUse around(double lon, double lat, double lonReach, double latReach) {
        return new AreaOfUse(
                Math.IEEEremainder(lon - lonReach, 360),
                Math.max(lat - latReach, -90),
                Math.IEEEremainder(lon + lonReach, 360),
                Math.min(lat + latReach, 90));
    }

    /** Whether a place is within the box or its margin. */
    boolean contains(double lon, double lat) {
        double width = east - west + (east < west ? 360 : 0);
        double fromWest = (lon - west + MARGIN + 720) % 360;
        return lat >= south - MARGIN
                && lat <= north + MARGIN
                && (width + 2 * MARGIN >= 360 || fromWest <= width + 2 * MARGIN);
    }

    @Override
    public String toString() {
        return "longitude " + Shown.number(west) + " to " + Shown.number(east) + ", latitude " + Shown.number(south)
                + " to " + Shown.number(north);
    }
}
