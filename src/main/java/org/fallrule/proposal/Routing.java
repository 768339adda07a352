package org.fallrule.proposal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.locality.Laying;
import org.fallrule.measure.Length;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineSegment;

/**
 * Leads every inlet to one outfall: first the inlet farthest from where an outfall may stand, then the others, each time the
 * one nearest to what there is, by a branch.
 */
final class Routing {
    private final SiteAnalysis analysis;
    private final Field field;
    private final Laying laying;
    private final Grading grading;
    private final Stock stock;
    private final Geometry lot;
    private final double turned;

    Routing(SiteAnalysis analysis, Field field, Laying laying, Grading grading, Stock stock) {
        this.analysis = analysis;
        this.field = field;
        this.laying = laying;
        this.grading = grading;
        this.stock = stock;
        this.lot = analysis.site().ownLot().orElseThrow().geometry();
        this.turned = Lattice.turned(analysis.site(), lot);
    }

    /** Drains to an outfall in some area, begun at the inlet farthest from it and at the nearest; none where an inlet finds no way. */
    List<Drain> to(Geometry allowed) {
        Comparator<Feature> byDistance =
                Comparator.comparingDouble(inlet -> inlet.geometry().distance(allowed));
        List<Feature> inlets = analysis.site().features(Role.INLET);
        return Stream.of(inlets.stream().max(byDistance), inlets.stream().min(byDistance))
                .flatMap(Optional::stream)
                .distinct()
                .flatMap(first -> from(first, allowed).stream())
                .toList();
    }

    private Optional<Drain> from(Feature head, Geometry allowed) {
        List<Feature> inlets = new ArrayList<>(analysis.site().features(Role.INLET));
        inlets.remove(head);
        Optional<Drain> drain = trunk(head, allowed);
        while (drain.isPresent() && !inlets.isEmpty()) {
            Geometry there = Axis.lines(drain.get());
            Feature next = inlets.stream()
                    .min(Comparator.comparingDouble(inlet -> inlet.geometry().distance(there)))
                    .orElseThrow();
            inlets.remove(next);
            drain = drain.flatMap(so -> branched(so, next));
        }
        return drain;
    }

    private Lattice lattice(Feature inlet) {
        return new Lattice(inlet.geometry().getCoordinate(), turned, laying.metres(Laying.Measure.GRID), lot);
    }

    private Optional<Drain> trunk(Feature head, Geometry allowed) {
        Lattice lattice = lattice(head);
        Coordinate inlet = head.geometry().getCoordinate();
        return new LineSearch(field, lattice, head)
                .to(new Daylight(field, lattice, inlet, allowed))
                .map(found -> Drain.of(head, found.axis()));
    }

    private Optional<Drain> branched(Drain drain, Feature inlet) {
        Optional<Grades> grades = grading.of(drain, sizes(drain));
        if (grades.isEmpty()) {
            return Optional.empty();
        }
        Lattice lattice = lattice(inlet);
        Coordinate start = inlet.geometry().getCoordinate();
        Optional<Drain> through = through(drain, inlet, lattice.spacing() * 0.75);
        if (through.isPresent()) {
            return through;
        }
        Joins joins = new Joins(field, lattice, start, drain, grades.get());
        double room = lattice.spacing() * 0.75;
        return new LineSearch(field, lattice, inlet)
                .keepingOff(place -> joins.distance(place) < room)
                .to(joins)
                .map(found -> joined(drain, inlet, found));
    }

    /** A straight piece of pipe that passes an inlet too near for a wye is led through it. */
    private static Optional<Drain> through(Drain drain, Feature inlet, double near) {
        Coordinate place = inlet.geometry().getCoordinate();
        Drain.Node node = new Drain.Node(place, Optional.of(inlet));
        for (Drain.Reach reach : drain.reaches()) {
            for (int i = 1; i < reach.axis().size() - 1; i++) {
                if (reach.axis().get(i).distance(place) < near) {
                    return Optional.of(drain.parted(reach, i, i + 1, node));
                }
            }
            for (int i = 1; i < reach.axis().size(); i++) {
                LineSegment piece =
                        new LineSegment(reach.axis().get(i - 1), reach.axis().get(i));
                double room = 4 * piece.distance(place);
                double along = piece.projectionFactor(place) * piece.getLength();
                if (piece.distance(place) < near && along >= room && piece.getLength() - along >= room) {
                    return Optional.of(drain.parted(reach, i, i, node));
                }
            }
        }
        return Optional.empty();
    }

    private Map<Drain.Reach, Length> sizes(Drain drain) {
        Map<Drain.Reach, Length> sizes = new HashMap<>();
        drain.reaches().forEach(reach -> sizes.put(reach, stock.smallest()));
        return sizes;
    }

    private static Drain joined(Drain drain, Feature inlet, LineSearch.Found<Joins.Join> found) {
        if (found.end() instanceof Joins.Join.At at) {
            return drain.joined(inlet, found.axis(), at.place());
        }
        Joins.Join.On on = (Joins.Join.On) found.end();
        Drain parted = drain.parted(on.reach(), on.piece(), on.place());
        return parted.joined(inlet, found.axis(), parted.places().size() - 1);
    }
}
