package org.fallrule.proposal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.linearref.LengthIndexedLine;

/**
 * What makes a line clearly another than those before it.
 *
 * @param taken ground that its outfall is not to stand on
 * @param closed ground that no pipe of it is to cross
 */
record Difference(Geometry taken, Geometry closed) {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    static final Difference NONE = new Difference(GEOMETRY.createPolygon(), GEOMETRY.createPolygon());

    /** Its outfall stands at least so many metres from those of the others. */
    static Difference ofOutfall(List<Proposal> others, double apart) {
        List<Geometry> discs = others.stream()
                .flatMap(each -> each.analysis().site().features(Role.OUTFALL).stream())
                .map(outfall -> outfall.geometry().buffer(apart))
                .toList();
        return new Difference(union(discs), GEOMETRY.createPolygon());
    }

    /** It does not pass where the longest pipes of the others run between house and lot line. */
    static Difference ofSide(List<Proposal> others, Site site, double width) {
        Optional<Geometry> lot = site.ownLot().map(Feature::geometry);
        Optional<Geometry> house = lot.flatMap(own -> site.features(Role.BUILDING).stream()
                .map(Feature::geometry)
                .filter(building -> own.contains(building.getInteriorPoint()))
                .max(Comparator.comparingDouble(Geometry::getArea)));
        List<Geometry> gates = new ArrayList<>();
        for (Proposal other : others) {
            house.flatMap(building -> lot.map(own -> gate(building, own, longest(other))))
                    .ifPresent(gate -> gates.add(gate.buffer(width / 2)));
        }
        return new Difference(GEOMETRY.createPolygon(), union(gates));
    }

    private static Geometry longest(Proposal proposal) {
        return proposal.analysis().site().features(Role.PIPE).stream()
                .map(Feature::geometry)
                .max(Comparator.comparingDouble(Geometry::getLength))
                .orElseThrow();
    }

    /** From the middle of a house across the middle of a pipe and on to the edge of the lot. */
    private static LineString gate(Geometry house, Geometry lot, Geometry pipe) {
        Coordinate from = house.getCentroid().getCoordinate();
        Coordinate across = new LengthIndexedLine(pipe).extractPoint(pipe.getLength() / 2);
        double far = lot.getEnvelopeInternal().getDiameter() / Math.max(from.distance(across), 1e-3);
        Coordinate end = new Coordinate(from.x + (across.x - from.x) * far, from.y + (across.y - from.y) * far);
        return GEOMETRY.createLineString(new Coordinate[] {from, end});
    }

    /** Whether a line is another as it ought to be: near an inlet, closed ground cannot always be kept out of. */
    boolean isHeldBy(Proposal proposal) {
        return proposal.analysis().site().features(Role.PIPE).stream()
                .noneMatch(pipe -> pipe.geometry().intersects(closed));
    }

    private static Geometry union(List<Geometry> areas) {
        return GEOMETRY.createGeometryCollection(areas.toArray(new Geometry[0])).union();
    }
}
