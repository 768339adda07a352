package org.fallrule.remedy;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fallrule.network.PipeRun;

/** Takes a belly out of a pipe: lays it straight between the inverts at its ends. */
final class StraightPipe implements Remedy {

    @Override
    public Set<String> checks() {
        return Set.of("continuous_fall");
    }

    @Override
    public List<Series> series(Situation at) {
        return at.run().map(run -> List.of(Series.single(() -> laid(at, run)))).orElse(List.of());
    }

    private static Optional<Change> laid(Situation at, PipeRun run) {
        return run.invertUp()
                .flatMap(up -> run.invertDown()
                        .map(down -> new Change(
                                at.edits()
                                        .axis(run, Straight.between(run.axis(), up, down))
                                        .site(),
                                "lay " + run.pipe().spoken() + " straight between its ends")));
    }
}
