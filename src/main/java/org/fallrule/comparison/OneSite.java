package org.fallrule.comparison;

import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.measure.Length;
import org.fallrule.measure.Printed;
import org.fallrule.site.Site;
import org.locationtech.jts.geom.Coordinate;

/** Whether two plans can be of one site at all. */
public final class OneSite {
    /** Farther apart than this two plans are of two sites: half a mile. */
    private static final Length FARTHEST = Length.feet(2640);

    /** Mean radius of the earth in metres (IUGG), near enough to tell one place from another. */
    private static final double EARTH = 6_371_008.8;

    private OneSite() {}

    /**
     * Refuses two plans whose frames lie far apart.
     *
     * @throws UnusableInput when they cannot be of one site
     */
    public static void refuseTwo(Site before, Site after) {
        double apart = apart(origin(before), origin(after));
        if (apart > FARTHEST.metres()) {
            throw new UnusableInput(
                    Place.of(before.id()),
                    "lies " + Printed.trimmed(Math.rint(apart / 100) / 10) + " km from " + after.id()
                            + ", so that the two are not of one site; name two states of the same");
        }
    }

    private static Coordinate origin(Site site) {
        return site.frame().toLonLat(new Coordinate(0, 0));
    }

    /** Great-circle distance in metres by the haversine formula. */
    private static double apart(Coordinate one, Coordinate other) {
        double north = Math.toRadians(other.y - one.y) / 2;
        double east = Math.toRadians(Math.IEEEremainder(other.x - one.x, 360)) / 2;
        double share = Math.pow(Math.sin(north), 2)
                + Math.cos(Math.toRadians(one.y)) * Math.cos(Math.toRadians(other.y)) * Math.pow(Math.sin(east), 2);
        return 2 * EARTH * Math.asin(Math.min(1, Math.sqrt(share)));
    }
}
