package org.fallrule.report;

import java.util.List;
import org.fallrule.measure.Area;
import org.fallrule.measure.Unit;
import org.fallrule.proposal.StandingGround;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** Where an outfall or a basin may stand, in sentences. */
public final class StandingWords {
    private static final List<String> SIDES =
            List.of("east", "north-east", "north", "north-west", "west", "south-west", "south", "south-east");

    /** A share of a circle, in which directions are named. */
    private static final double EIGHTH = Math.PI / 4;

    private StandingWords() {}

    /** {@code An outfall may stand in 102 sq ft of the lot, in the south.} */
    public static String of(StandingGround ground, Site site) {
        String what = ground.role() == Role.OUTFALL ? "An outfall" : "A basin";
        List<Geometry> pieces = ground.pieces();
        if (pieces.isEmpty()) {
            return ground.role() == Role.OUTFALL
                    ? what + " may stand nowhere on the lot by the binding rules."
                    : what + " finds no hollow on the lot that the binding rules let it stand in.";
        }
        String where = pieces.size() == 1
                ? "in the " + side(pieces.get(0), site)
                : "in " + pieces.size() + " places, of which the largest, " + size(pieces.get(0), site)
                        + ", lies in the " + side(pieces.get(0), site);
        return what + " may stand in " + site.printed(ground.size(), Unit.SQUARE_FOOT) + " of the lot, " + where
                + advised(ground, site) + bound(ground) + ".";
    }

    private static String advised(StandingGround ground, Site site) {
        double part = ground.advised().getArea() / ground.area().getArea();
        return part > 0.995 ? "" : "; in " + size(ground.advised(), site) + " of it no advice is against it";
    }

    /** That the area of an outfall is a bound has to be said with it. */
    private static String bound(StandingGround ground) {
        return ground.role() == Role.OUTFALL
                ? "; this reckons with straight pipes from the inlets, so that there may be less"
                : "; the bottom of its hollows";
    }

    private static String size(Geometry area, Site site) {
        return site.printed(new Area(area.getArea()), Unit.SQUARE_FOOT);
    }

    /** The side of the lot that a place lies on, seen from the lot's middle. */
    public static String side(Geometry place, Site site) {
        Coordinate at = place.getCentroid().getCoordinate();
        return site.ownLot()
                .map(lot -> lot.geometry().getCentroid().getCoordinate())
                .map(middle -> SIDES.get(
                        Math.floorMod(Math.round(Math.atan2(at.y - middle.y, at.x - middle.x) / EIGHTH), SIDES.size())))
                .orElse("lot");
    }
}
