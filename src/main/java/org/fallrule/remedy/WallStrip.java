package org.fallrule.remedy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.terrain.GroundSurface;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.math.Vector2D;

/** The lines of a {@link GradedStrip} along a stretch of wall: around its corners, and running out at its ends. */
final class WallStrip {
    private static final double SAME = 1e-6;

    /** Sine of an angle; walls that turn less go straight on. */
    private static final double STRAIGHT = 0.02;

    private final SiteAnalysis analysis;
    private final GroundSurface ground;
    private final WallStretches walls;
    private final Map<LineSegment, Double> missed = new HashMap<>();
    private final List<GradedStrip.Line> lines = new ArrayList<>();

    private WallStrip(SiteAnalysis analysis, GroundSurface ground, WallStretches walls) {
        this.analysis = analysis;
        this.ground = ground;
        this.walls = walls;
    }

    static List<GradedStrip.Line> along(SiteAnalysis analysis, WallStretches walls, WallStretches.WallStretch stretch) {
        WallStrip strip = new WallStrip(analysis, analysis.ground().orElseThrow(), walls);
        strip.add(stretch);
        return strip.lines;
    }

    private void add(WallStretches.WallStretch stretch) {
        List<Foot> feet = stretch.feet();
        feet.forEach(foot -> missed.merge(foot.wall(), Math.max(0, foot.missed()), Math::max));
        Foot first = feet.get(0);
        Foot last = feet.get(feet.size() - 1);
        if (!stretch.isRing()) {
            List<GradedStrip.Line> start = end(first, -1);
            Collections.reverse(start);
            lines.addAll(start);
        }
        for (int i = 0; i < feet.size(); i++) {
            if (i > 0) {
                corner(feet.get(i - 1), feet.get(i));
            }
            lines.add(new GradedStrip.Line(feet.get(i).root(), feet.get(i).toe(), of(feet.get(i))));
        }
        if (stretch.isRing()) {
            corner(last, first);
            lines.add(new GradedStrip.Line(first.root(), first.toe(), of(first)));
        } else {
            lines.addAll(end(last, 1));
        }
    }

    private double of(Foot foot) {
        return missed.getOrDefault(foot.wall(), 0.0);
    }

    /** Where the stretch turns from one wall to the next. */
    private void corner(Foot one, Foot other) {
        if (one.wall().equals(other.wall())) {
            return;
        }
        double raise = Math.max(of(one), of(other));
        double turn = turn(one, one.along(), other.along());
        at(one.wall().p1).ifPresent(root -> {
            if (turn < -STRAIGHT) {
                middle(one.toe(), other.toe()).ifPresent(toe -> lines.add(new GradedStrip.Line(root, toe, raise)));
            } else if (turn > STRAIGHT) {
                Vector2D between = one.outward().add(other.outward()).normalize();
                out(root, one.outward(), one.reach()).ifPresent(toe -> add(root, toe, raise));
                out(root, between, (one.reach() + other.reach()) / 2).ifPresent(toe -> add(root, toe, raise));
                out(root, other.outward(), other.reach()).ifPresent(toe -> add(root, toe, raise));
            }
        });
    }

    private void add(Coordinate root, Coordinate toe, double raise) {
        lines.add(new GradedStrip.Line(root, toe, raise));
    }

    /** Sine of the angle that the walls turn by at a corner; above zero where it juts out. */
    private static double turn(Foot foot, Vector2D along, Vector2D next) {
        double outside = Math.signum(cross(along, foot.outward()));
        return -outside * cross(along, next);
    }

    private static double cross(Vector2D one, Vector2D other) {
        return one.getX() * other.getY() - one.getY() * other.getX();
    }

    /**
     * The last line of the stretch and those in which it runs out.
     *
     * @param way 1 at the end of the stretch, -1 at its start
     */
    private List<GradedStrip.Line> end(Foot foot, int way) {
        List<GradedStrip.Line> end = new ArrayList<>();
        Vector2D along = foot.along().multiply(way);
        Coordinate corner = way > 0 ? foot.wall().p1 : foot.wall().p0;
        Coordinate edge = along.multiply(foot.sample().wall() / 2).translate(foot.root());
        Optional<Coordinate> root = at(edge);
        Optional<Coordinate> toe = at(foot.outward().multiply(foot.reach()).translate(edge));
        if (root.isEmpty() || toe.isEmpty()) {
            return end;
        }
        end.add(new GradedStrip.Line(root.get(), toe.get(), of(foot)));
        double left = edge.distance(corner);
        if (left > SAME) {
            double run = Math.min(WallStretches.RUN_OUT, left);
            at(along.multiply(run).translate(edge)).ifPresent(out -> end.add(new GradedStrip.Line(out, toe.get(), 0)));
        } else {
            end.addAll(aroundCorner(foot, along, root.get(), way));
        }
        return end;
    }

    private List<GradedStrip.Line> aroundCorner(Foot foot, Vector2D along, Coordinate corner, int way) {
        Optional<LineSegment> wall = way > 0 ? walls.next(foot.wall()) : walls.previous(foot.wall());
        Vector2D on = wall.map(next ->
                        Vector2D.create(corner, way > 0 ? next.p1 : next.p0).normalize())
                .orElse(along);
        double length = wall.map(LineSegment::getLength).orElse(0.0);
        boolean jutsOut = turn(foot, along, on) * way > STRAIGHT;
        Optional<Coordinate> aside = out(corner, along, WallStretches.RUN_OUT);
        Optional<Coordinate> back =
                at(on.multiply(Math.min(WallStretches.RUN_OUT, length)).translate(corner));
        if (wall.isEmpty() || !jutsOut || aside.isEmpty() || back.isEmpty()) {
            return List.of();
        }
        return List.of(
                new GradedStrip.Line(corner, aside.get(), of(foot)), new GradedStrip.Line(back.get(), aside.get(), 0));
    }

    private Optional<Coordinate> at(Coordinate place) {
        return Foot.at(ground, place);
    }

    private Optional<Coordinate> middle(Coordinate one, Coordinate other) {
        return at(new Coordinate((one.x + other.x) / 2, (one.y + other.y) / 2));
    }

    /** The ground so far out from a corner, on the site's own lot and under no building. */
    private Optional<Coordinate> out(Coordinate from, Vector2D direction, double metres) {
        Coordinate place = direction.multiply(metres).translate(from);
        Point point = Edits.GEOMETRY.createPoint(place);
        boolean isOwn = analysis.site()
                .ownLot()
                .map(Feature::geometry)
                .map(lot -> lot.intersects(point))
                .orElse(true);
        boolean isBuiltOn = analysis.site().features(Role.BUILDING).stream()
                .anyMatch(building -> building.geometry().intersects(point));
        return isOwn && !isBuiltOn ? at(place) : Optional.empty();
    }
}
