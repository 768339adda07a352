package org.fallrule.remedy;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fallrule.measure.Elevation;
import org.fallrule.network.PipeRun;

/** Lays the line from a pipe down to its outfall at one even slope between the levels it has at its ends. */
final class EvenGrade implements Remedy {

    @Override
    public Set<String> checks() {
        return Set.of("slope", "velocity", "capacity", "continuous_fall", "fall_available", "separation");
    }

    @Override
    public List<Series> series(Situation at) {
        if (at.measured().contains("beside")) {
            return List.of();
        }
        return at.run()
                .map(run -> List.of(
                        Series.single(() -> even(at, fromHead(at, run))), Series.single(() -> even(at, at.down(run)))))
                .orElse(List.of());
    }

    /** The line that a pipe lies in, from the head of its longest way in. */
    private static List<PipeRun> fromHead(Situation at, PipeRun run) {
        PipeRun head = run;
        for (int i = 0; i < at.network().runs().size(); i++) {
            Optional<PipeRun> before = at.network().into(head.up()).stream()
                    .reduce((one, other) ->
                            one.length().metres() >= other.length().metres() ? one : other);
            if (before.isEmpty()) {
                break;
            }
            head = before.get();
        }
        return at.down(head);
    }

    private static Optional<Change> even(Situation at, List<PipeRun> path) {
        PipeRun first = path.get(0);
        PipeRun last = path.get(path.size() - 1);
        Optional<Elevation> high = first.invertUp();
        Optional<Elevation> low = last.invertDown();
        double length = path.stream().mapToDouble(run -> run.length().metres()).sum();
        boolean falls = high.isPresent()
                && low.isPresent()
                && high.get().metres() > low.get().metres();
        if (path.size() < 2
                || !falls
                || length <= 0
                || path.stream().anyMatch(run -> !run.pipe().isDesigned())) {
            return Optional.empty();
        }
        double slope = high.get().above(low.get()).metres() / length;
        Edits edits = at.edits();
        double station = 0;
        for (PipeRun run : path) {
            double from = high.get().metres() - slope * station;
            station += run.length().metres();
            edits.level(run, new Elevation(from), new Elevation(high.get().metres() - slope * station));
        }
        return Optional.of(new Change(
                edits.site(),
                "lay the line from " + Shown.from(first) + " to " + Shown.to(last) + " at one even slope of "
                        + Shown.slope(slope) + ", its ends as they are"));
    }
}
