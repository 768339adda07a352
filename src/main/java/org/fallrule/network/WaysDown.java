package org.fallrule.network;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.fallrule.document.Fault;

/** Finds where the water of a network has no single way down: rings, and junctions that several pipes lead away from. */
final class WaysDown {
    private final PipeNetwork network;

    WaysDown(PipeNetwork network) {
        this.network = network;
    }

    List<Fault> problems() {
        List<Fault> problems = new ArrayList<>();
        List<List<PipeRun>> rings = Rings.of(network.runs());
        rings.forEach(ring -> problems.add(new Fault(ring.get(0).pipe().origin(), says(ring))));
        for (Junction junction : network.junctions()) {
            List<PipeRun> leaving = network.touching(junction).stream()
                    .filter(run ->
                            run.up().number() == junction.number() && run.down().number() != junction.number())
                    .toList();
            if (leaving.size() > 1
                    && !junction.isOutfall()
                    && rings.stream().noneMatch(ring -> ring.containsAll(leaving))
                    && leaving.stream().allMatch(this::isLed)) {
                problems.add(new Fault(leaving.get(0).pipe().origin(), says(junction, leaving)));
            }
        }
        return problems;
    }

    /** Which way a pipe runs that leads to no outfall is only how it was drawn. */
    private boolean isLed(PipeRun run) {
        return network.outfallOf(run).isPresent();
    }

    private static String says(List<PipeRun> ring) {
        return ring.size() == 1
                ? ring.get(0).pipe().spoken() + " ends where it begins; draw it from its inlet to its outfall"
                : "pipes " + named(ring)
                        + " form a ring, in which the water has no single way down; take a pipe out, or mend the ends"
                        + " that should not meet";
    }

    private String says(Junction junction, List<PipeRun> leaving) {
        String from = junction.structures().stream()
                .findFirst()
                .map(structure -> structure.spoken())
                .orElse("one junction");
        String taken = network.leaving(junction)
                .map(run -> "; the water is taken down " + run.id() + ", the shortest way")
                .orElse("");
        return "pipes " + named(leaving) + " all lead down from " + from + taken
                + "; take the others out, or mend the ends that should not meet";
    }

    private static String named(List<PipeRun> runs) {
        List<String> ids = runs.stream().map(PipeRun::id).toList();
        return ids.subList(0, ids.size() - 1).stream().collect(Collectors.joining(", ")) + " and "
                + ids.get(ids.size() - 1);
    }
}
