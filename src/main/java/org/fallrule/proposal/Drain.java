package org.fallrule.proposal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.site.Feature;
import org.locationtech.jts.geom.Coordinate;

/**
 * A drain in plan: places joined by reaches that lead to one outfall, which is the last place.
 *
 * @param places where reaches begin and end
 * @param reaches the pipes between them, in no order
 */
record Drain(List<Node> places, List<Reach> reaches) {

    Drain {
        places = List.copyOf(places);
        reaches = List.copyOf(reaches);
    }

    /** A place where reaches begin or end. An inlet stands on it, or it is a wye, or the outfall. */
    record Node(Coordinate place, Optional<Feature> inlet) {}

    /**
     * One pipe.
     *
     * @param up the number of the place it comes from
     * @param down the number of the place it goes to
     * @param axis from the one to the other
     */
    record Reach(int up, int down, List<Coordinate> axis) {
        Reach {
            axis = List.copyOf(axis);
        }

        double length() {
            double length = 0;
            for (int i = 1; i < axis.size(); i++) {
                length += axis.get(i - 1).distance(axis.get(i));
            }
            return length;
        }
    }

    static Drain of(Feature inlet, List<Coordinate> axis) {
        return new Drain(
                List.of(
                        new Node(axis.get(0), Optional.of(inlet)),
                        new Node(axis.get(axis.size() - 1), Optional.empty())),
                List.of(new Reach(0, 1, axis)));
    }

    int outfall() {
        return 1;
    }

    /** The reach that leaves a place; nothing at the outfall. */
    Optional<Reach> leaving(int place) {
        return reaches.stream().filter(reach -> reach.up() == place).findFirst();
    }

    List<Reach> into(int place) {
        return reaches.stream().filter(reach -> reach.down() == place).toList();
    }

    /** The reaches, each after those that flow into it. */
    List<Reach> inOrder() {
        List<Reach> ordered = new ArrayList<>();
        List<Integer> open = new ArrayList<>(List.of(outfall()));
        while (!open.isEmpty()) {
            for (Reach reach : into(open.remove(0))) {
                ordered.add(0, reach);
                open.add(reach.up());
            }
        }
        return ordered;
    }

    /** With a branch from an inlet that joins at a place there is. */
    Drain joined(Feature inlet, List<Coordinate> axis, int at) {
        List<Node> more = new ArrayList<>(places);
        more.add(new Node(axis.get(0), Optional.of(inlet)));
        List<Reach> with = new ArrayList<>(reaches);
        with.add(new Reach(more.size() - 1, at, axis));
        return new Drain(more, with);
    }

    /** With a reach parted at a place on one of its straight pieces, the new place being the last. */
    Drain parted(Reach reach, int piece, Coordinate at) {
        return parted(reach, piece, piece, new Node(at, Optional.empty()));
    }

    /**
     * With a reach parted at a new place.
     *
     * @param before how many of its vertices lie before that place
     * @param after the number of the first vertex after it; those between make room for it
     */
    Drain parted(Reach reach, int before, int after, Node at) {
        List<Node> more = new ArrayList<>(places);
        more.add(at);
        int number = more.size() - 1;
        List<Coordinate> upper = new ArrayList<>(reach.axis().subList(0, before));
        upper.add(at.place());
        List<Coordinate> lower = new ArrayList<>(List.of(at.place()));
        lower.addAll(reach.axis().subList(after, reach.axis().size()));
        List<Reach> with = new ArrayList<>(reaches);
        with.remove(reach);
        with.add(new Reach(reach.up(), number, upper));
        with.add(new Reach(number, reach.down(), lower));
        return new Drain(more, with);
    }
}
