package org.fallrule.check.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.measure.Dimension;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/** Lines over the ground that lead away from a building all around it, each as far as another building or a lot line lets it. */
final class WallSamples {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    private final Site site;
    private final double over;
    private final double spacing;
    private final List<WallSample> samples = new ArrayList<>();

    private WallSamples(Site site, double over, double spacing) {
        this.site = site;
        this.over = over;
        this.spacing = spacing;
    }

    /**
     * The samples of a building's outer walls; every wall is parted evenly into pieces no longer than {@code spacing}, with a
     * sample from the middle of each.
     *
     * @param over how far each leads, in metres
     * @param spacing in metres
     */
    static List<WallSample> around(Feature building, Site site, double over, double spacing) {
        WallSamples walls = new WallSamples(site, over, spacing);
        for (int i = 0; i < building.geometry().getNumGeometries(); i++) {
            if (building.geometry().getGeometryN(i) instanceof Polygon part) {
                walls.add(part.getExteriorRing().getCoordinates());
            }
        }
        return walls.samples;
    }

    private void add(Coordinate[] ring) {
        double outward = Orientation.isCCW(ring) ? 1 : -1;
        for (int i = 1; i < ring.length; i++) {
            double wall = ring[i - 1].distance(ring[i]);
            int pieces = (int) Math.ceil((wall - Dimension.LENGTH.tolerance()) / spacing);
            for (int piece = 0; piece < pieces; piece++) {
                add(ring[i - 1], ring[i], (piece + 0.5) / pieces, wall / pieces, outward / wall);
            }
        }
    }

    /** @param outward what turns the wall's length into one, and to the right of its direction where that is outside */
    private void add(Coordinate from, Coordinate to, double share, double piece, double outward) {
        double x = (to.y - from.y) * outward;
        double y = (from.x - to.x) * outward;
        Coordinate foot = new Coordinate(from.x + share * (to.x - from.x), from.y + share * (to.y - from.y));
        double touching = Dimension.LENGTH.tolerance();
        LineString way = GEOMETRY.createLineString(new Coordinate[] {
            new Coordinate(foot.x + x * touching, foot.y + y * touching),
            new Coordinate(foot.x + x * over, foot.y + y * over)
        });
        double reach = over;
        Optional<String> until = Optional.empty();
        for (Feature obstacle : obstacles()) {
            Geometry met = edge(obstacle).intersection(way);
            double distance = met.isEmpty() ? over : met.distance(point(foot));
            if (distance < reach) {
                reach = distance <= 2 * touching ? 0 : distance;
                until = Optional.of(obstacle.role() == Role.LOT ? "the lot line" : obstacle.spoken());
            }
        }
        LineString line = GEOMETRY.createLineString(
                new Coordinate[] {foot, new Coordinate(foot.x + x * reach, foot.y + y * reach)});
        samples.add(new WallSample(line, piece, until));
    }

    private List<Feature> obstacles() {
        List<Feature> obstacles = new ArrayList<>(site.features(Role.BUILDING));
        obstacles.addAll(site.features(Role.LOT));
        return obstacles;
    }

    private static Geometry edge(Feature obstacle) {
        return obstacle.role() == Role.LOT ? obstacle.geometry().getBoundary() : obstacle.geometry();
    }

    private static Point point(Coordinate place) {
        return GEOMETRY.createPoint(place);
    }
}
