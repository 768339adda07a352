package org.fallrule.terrain;

import org.locationtech.jts.geom.Coordinate;

/** A straight piece of line between two points; the same whichever way it is given. Equal by plan position. */
record Edge(Coordinate a, Coordinate b) {

    Edge {
        if (a.compareTo(b) > 0) {
            Coordinate first = b;
            b = a;
            a = first;
        }
    }

    Coordinate middle(double z) {
        return new Coordinate((a.x + b.x) / 2, (a.y + b.y) / 2, z);
    }
}
