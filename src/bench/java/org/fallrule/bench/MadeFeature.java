package org.fallrule.bench;

import java.util.Map;

/**
 * One feature of a made-up plan.
 *
 * @param layer the role's word
 * @param properties texts, numbers and truths by name; their order is that of the columns
 * @param places metres east and north of the plan's corner and height in feet, three numbers for each vertex; a ring is closed
 */
@SuppressWarnings("ArrayRecordComponent") // read once and never compared
record MadeFeature(String layer, Kind kind, Map<String, Object> properties, double[] places) {
    /** How many places make it. */
    enum Kind {
        POINT,
        LINE,
        AREA
    }

    int vertices() {
        return places.length / 3;
    }

    double x(int vertex) {
        return places[3 * vertex];
    }

    double y(int vertex) {
        return places[3 * vertex + 1];
    }

    double z(int vertex) {
        return places[3 * vertex + 2];
    }
}
