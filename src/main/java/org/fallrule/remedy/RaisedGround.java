package org.fallrule.remedy;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.fallrule.check.ground.FallAround;
import org.fallrule.document.Place;
import org.fallrule.site.Attributes;
import org.fallrule.site.Feature;
import org.fallrule.site.Layer;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.locationtech.jts.geom.Polygon;

/**
 * Raises the ground at a building's walls where it does not fall away from them, graded evenly to nothing within the rule's
 * reach. To raise it at the wall moves less earth than to lower what lies farther out, and leaves no hollow behind.
 */
final class RaisedGround implements Remedy {
    /** Steps of height, about 2 ft or 1 m: more earth against a wall is for whoever designed the wall. */
    private static final int MOST = 200;

    private static final double ROUNDING = 1e-6;

    @Override
    public Set<String> checks() {
        return Set.of("ground_fall");
    }

    @Override
    public List<Series> series(Situation at) {
        if (hasTriangles(at.analysis().site())) {
            return List.of();
        }
        Optional<Feature> building = Subject.feature(at.finding());
        return building.flatMap(wall -> at.analysis().ground().map(ground -> {
                    List<Foot> feet = Foot.all(at.analysis(), ground, FallAround.of(at.analysis(), at.terms(), wall));
                    WallStretches walls = new WallStretches(wall.geometry(), feet);
                    List<WallStretches.WallStretch> stretches = walls.all();
                    return raised(at, wall, walls, stretches);
                }))
                .orElse(List.of());
    }

    /** Triangles that the plan gives of its own would lie in the way of those that are laid over the ground. */
    private static boolean hasTriangles(Site site) {
        return site.features(Role.PROPOSED_GROUND).stream().anyMatch(feature -> feature.geometry() instanceof Polygon);
    }

    private static List<Series> raised(
            Situation at, Feature building, WallStretches walls, List<WallStretches.WallStretch> stretches) {
        if (stretches.isEmpty()) {
            return List.of();
        }
        GradedStrip strip = new GradedStrip(stretches.stream()
                .map(stretch -> WallStrip.along(at.analysis(), walls, stretch))
                .toList());
        List<Foot> feet =
                stretches.stream().flatMap(stretch -> stretch.feet().stream()).toList();
        double step = at.shown().heightStep();
        int most =
                feet.stream().mapToInt(foot -> steps(foot.missed(), step)).max().orElse(1);
        Raise raise = new Raise(at, building, strip, feet);
        return List.of(new Series(MOST, steps -> raise.by(steps, most)).first(most));
    }

    /** How many steps a height takes. */
    private static int steps(double metres, double step) {
        return (int) Math.ceil(Math.max(0, metres) / step - ROUNDING);
    }

    /** The ground that is raised and what is told of it. */
    private record Raise(Situation at, Feature building, GradedStrip strip, List<Foot> feet) {

        /**
         * Every stretch raised by what it misses, but by no more than so many steps; by more than it misses where there are more
         * steps than the worst of them misses.
         */
        Optional<Change> by(int steps, int most) {
            double step = at.shown().heightStep();
            DoubleUnaryOperator raised =
                    missed -> step * Math.min(steps, steps(missed, step) + Math.max(0, steps - most));
            List<Polygon> triangles = strip.triangles(raised);
            Earthwork earth =
                    GradedStrip.earth(triangles, at.analysis().ground().orElseThrow());
            Site graded = graded(at.analysis().site(), triangles);
            Rims rims = new Rims(at, at.analysis().with(graded));
            WordsOfGrading words = new WordsOfGrading(at, building, feet);
            return Optional.of(new Change(rims.raised(), words.of(raised, earth, rims.says())));
        }
    }

    /** The plan with triangles of proposed ground over all the ground that it has. */
    static Site graded(Site site, List<Polygon> triangles) {
        Layer before = site.layer(Role.PROPOSED_GROUND);
        TreeSet<String> taken =
                new TreeSet<>(before.features().stream().map(Feature::id).toList());
        List<Feature> added = new ArrayList<>();
        for (Polygon triangle : triangles) {
            String id = "graded-" + (added.size() + 1);
            while (!taken.add(id)) {
                id = id + "a";
            }
            Place origin = Place.of("proposed_ground.geojson").feature(id);
            added.add(new Feature(Role.PROPOSED_GROUND, id, triangle, Attributes.none(), origin));
        }
        List<Feature> features =
                Stream.concat(before.features().stream(), added.stream()).toList();
        Map<Role, Layer> layers = new EnumMap<>(Role.class);
        layers.putAll(site.layers());
        layers.put(
                Role.PROPOSED_GROUND,
                before instanceof Layer.Raster raster
                        ? new Layer.Raster(raster.heights(), raster.file(), features)
                        : new Layer.Supplied(features, List.of()));
        return site.with(layers);
    }
}
