package org.fallrule.network;

import java.util.ArrayList;
import java.util.List;
import org.fallrule.site.Feature;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.quadtree.Quadtree;

/** Gathers structures and pipe ends that lie within the snapping distance into junctions. */
final class JunctionFinder {
    private final double snap;
    private final List<Coordinate> places = new ArrayList<>();
    private final List<List<Feature>> structures = new ArrayList<>();
    private final Quadtree index = new Quadtree();

    JunctionFinder(List<Feature> structures, double snap) {
        this.snap = snap;
        structures.forEach(structure ->
                this.structures.get(at(structure.geometry().getCoordinate())).add(structure));
    }

    /** The number of the nearest junction within the snapping distance, or of a new one. */
    int at(Coordinate place) {
        Envelope around = new Envelope(place);
        around.expandBy(snap);
        int nearest = -1;
        for (Object found : index.query(around)) {
            int number = (Integer) found;
            double distance = places.get(number).distance(place);
            if (distance <= snap
                    && (nearest < 0 || distance < places.get(nearest).distance(place))) {
                nearest = number;
            }
        }
        return nearest >= 0 ? nearest : add(place);
    }

    private int add(Coordinate place) {
        places.add(place);
        structures.add(new ArrayList<>());
        index.insert(new Envelope(place), places.size() - 1);
        return places.size() - 1;
    }

    Junction get(int number) {
        return new Junction(number, places.get(number), structures.get(number));
    }

    List<Junction> all() {
        List<Junction> all = new ArrayList<>();
        for (int number = 0; number < places.size(); number++) {
            all.add(get(number));
        }
        return all;
    }
}
