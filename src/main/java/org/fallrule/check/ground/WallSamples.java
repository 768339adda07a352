package org.fallrule.check.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.measure.Dimension;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.fallrule.terrain.Stationing;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;

/**
 * Lines over the ground that lead straight away from a building's walls, each to where another wall is as near or to a lot
 * line.
 */
final class WallSamples {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    private final Feature building;
    private final double over;
    private final double spacing;
    private final List<Feature> buildings;
    private final List<Coordinate[]> lotLines;
    private final List<LineSegment> walls = new ArrayList<>();
    private final List<WallSample> samples = new ArrayList<>();

    private WallSamples(Feature building, Site site, double over, double spacing) {
        this.building = building;
        this.over = over;
        this.spacing = spacing;
        this.lotLines = site.features(Role.LOT).stream()
                .flatMap(lot -> Stationing.lines(lot.geometry()).stream())
                .toList();
        this.buildings = site.features(Role.BUILDING);
        buildings.forEach(each -> rings(each).forEach(ring -> walls.addAll(segments(ring))));
    }

    /**
     * The samples of a building's outer walls; every wall is parted evenly into pieces no longer than {@code spacing}, with a
     * sample from the middle of each.
     *
     * @param over how far each leads, in metres
     * @param spacing in metres
     */
    static List<WallSample> around(Feature building, Site site, double over, double spacing) {
        WallSamples samples = new WallSamples(building, site, over, spacing);
        samples.add();
        return samples.samples;
    }

    private void add() {
        for (Coordinate[] ring : rings(building)) {
            double outward = Orientation.isCCW(ring) ? 1 : -1;
            for (LineSegment wall : segments(ring)) {
                int pieces = (int) Math.ceil((wall.getLength() - Dimension.LENGTH.tolerance()) / spacing);
                for (int piece = 0; piece < pieces; piece++) {
                    samples.add(sample(wall, (piece + 0.5) / pieces, wall.getLength() / pieces, outward));
                }
            }
        }
    }

    /** @param outward 1 where the outside lies to the right of the wall, else -1 */
    private WallSample sample(LineSegment wall, double share, double piece, double outward) {
        Coordinate foot = wall.pointAlong(share);
        double reach = toOtherWall(wall, share, outward);
        Optional<String> until = reach < over ? Optional.of("where another wall is as near") : Optional.empty();
        LineString way = line(foot, wall.pointAlongOffset(share, -outward * reach));
        Stationing along = new Stationing(way);
        for (Coordinate[] lotLine : lotLines) {
            for (double distance : along.where(lotLine)) {
                if (distance < reach) {
                    reach = distance;
                    until = Optional.of("the lot line");
                }
            }
        }
        return new WallSample(line(foot, wall.pointAlongOffset(share, -outward * reach)), wall, piece, until);
    }

    /**
     * How far outward another wall comes as near as the own one. Going outward by a step brings no wall nearer by more than
     * that step, so that the place is the only one and halving finds it.
     */
    private double toOtherWall(LineSegment wall, double share, double outward) {
        if (isBuiltOn(wall.pointAlongOffset(share, -outward * Dimension.LENGTH.tolerance()))) {
            return 0;
        }
        double low = 0;
        double high = over;
        if (!isNearer(wall, share, outward, over)) {
            return over;
        }
        while (high - low > Dimension.LENGTH.tolerance() / 2) {
            double middle = (low + high) / 2;
            if (isNearer(wall, share, outward, middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return low;
    }

    private boolean isBuiltOn(Coordinate place) {
        return buildings.stream()
                .anyMatch(each -> SimplePointInAreaLocator.locate(place, each.geometry()) != Location.EXTERIOR);
    }

    private boolean isNearer(LineSegment own, double share, double outward, double reach) {
        Coordinate place = own.pointAlongOffset(share, -outward * reach);
        double nearer = Math.max(0, reach - Dimension.LENGTH.tolerance());
        return walls.stream().anyMatch(wall -> !wall.equals(own) && wall.distance(place) <= nearer);
    }

    private static LineString line(Coordinate from, Coordinate to) {
        return GEOMETRY.createLineString(new Coordinate[] {from, to});
    }

    private static List<Coordinate[]> rings(Feature building) {
        List<Coordinate[]> rings = new ArrayList<>();
        for (int i = 0; i < building.geometry().getNumGeometries(); i++) {
            if (building.geometry().getGeometryN(i) instanceof Polygon part) {
                rings.add(part.getExteriorRing().getCoordinates());
            }
        }
        return rings;
    }

    private static List<LineSegment> segments(Coordinate[] ring) {
        List<LineSegment> segments = new ArrayList<>();
        for (int i = 1; i < ring.length; i++) {
            segments.add(new LineSegment(ring[i - 1], ring[i]));
        }
        return segments;
    }
}
