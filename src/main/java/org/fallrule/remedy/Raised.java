package org.fallrule.remedy;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;

/** A line whose heights, where it has any, are raised by one amount at its start, another at its end, and evenly between. */
record Raised(LineString of, double start, double end) {

    LineString line() {
        Coordinate[] places = of.getCoordinates();
        Coordinate[] raised = new Coordinate[places.length];
        double station = 0;
        for (int i = 0; i < places.length; i++) {
            station += i == 0 ? 0 : places[i].distance(places[i - 1]);
            double share = of.getLength() > 0 ? station / of.getLength() : 0;
            raised[i] = new Coordinate(places[i].x, places[i].y, places[i].getZ() + start + (end - start) * share);
        }
        return of.getFactory().createLineString(raised);
    }
}
