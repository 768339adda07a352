package org.fallrule.remedy;

import org.fallrule.measure.Elevation;
import org.fallrule.network.PipeRun;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;

/** A line with heights that run straight from one end to the other. */
final class Straight {
    private Straight() {}

    /** The line with such heights where the run is drawn with heights, else as it is. */
    static LineString asDrawn(PipeRun run, LineString line, Elevation up, Elevation down) {
        return Double.isFinite(run.axis().getCoordinate().getZ()) ? between(line, up, down) : line;
    }

    static LineString between(LineString line, Elevation up, Elevation down) {
        Coordinate[] places = line.getCoordinates();
        Coordinate[] raised = new Coordinate[places.length];
        double station = 0;
        for (int i = 0; i < places.length; i++) {
            station += i == 0 ? 0 : places[i].distance(places[i - 1]);
            double share = line.getLength() > 0 ? station / line.getLength() : 0;
            double height = up.metres() + (down.metres() - up.metres()) * share;
            raised[i] = new Coordinate(places[i].x, places[i].y, height);
        }
        return line.getFactory().createLineString(raised);
    }
}
