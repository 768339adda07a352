package org.fallrule.remedy;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.fallrule.network.Junction;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;

/** Moves a junction of the drain away from a sewer that it touches, with what stands on it and the pipes that meet there. */
final class JunctionAside implements Remedy {
    private static final int MOST = 40;

    @Override
    public Set<String> checks() {
        return Set.of("not_joined");
    }

    @Override
    public List<Series> series(Situation at) {
        return junction(at)
                .filter(junction -> !junction.isOutfall())
                .filter(junction -> isDesigned(at, junction))
                .map(junction -> IntStream.range(0, Shown.DIRECTIONS)
                        .mapToObj(direction -> new Series(MOST, steps -> moved(at, junction, direction, steps)))
                        .toList())
                .orElse(List.of());
    }

    /** That of a structure; of a pipe the end that the finding shows. */
    private static Optional<Junction> junction(Situation at) {
        Optional<Junction> structure = Stream.of(Role.INLET, Role.CLEANOUT)
                .flatMap(role -> at.subject(role).stream())
                .findFirst()
                .flatMap(at.network()::junctionOf);
        return structure.or(() -> at.subject(Role.PIPE)
                .flatMap(at.network()::runOf)
                .flatMap(run -> at.finding().observation().where().map(where -> nearer(run, where))));
    }

    private static Junction nearer(PipeRun run, Geometry where) {
        return Stream.of(run.down(), run.up())
                .min(Comparator.comparingDouble(junction -> point(junction).distance(where)))
                .orElseThrow();
    }

    private static Point point(Junction junction) {
        return Edits.GEOMETRY.createPoint(junction.place());
    }

    private static boolean isDesigned(Situation at, Junction junction) {
        Stream<Feature> pipes = at.network().runs().stream()
                .filter(run ->
                        run.up().number() == junction.number() || run.down().number() == junction.number())
                .map(PipeRun::pipe);
        return Stream.concat(junction.structures().stream(), pipes).allMatch(Feature::isDesigned);
    }

    private static Optional<Change> moved(Situation at, Junction junction, int direction, int steps) {
        double by = steps * at.shown().asideStep();
        double angle = 2 * Math.PI * direction / Shown.DIRECTIONS;
        String what =
                junction.structures().stream().map(Feature::spoken).findFirst().orElse("the joint of the pipes there");
        return Optional.of(new Change(
                at.edits()
                        .move(junction, by * Math.cos(angle), by * Math.sin(angle))
                        .site(),
                "move " + what + ", with the pipes that meet there, "
                        + at.shown().plan(by) + " to the " + Shown.wind(direction)));
    }
}
