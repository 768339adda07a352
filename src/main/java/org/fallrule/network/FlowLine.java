package org.fallrule.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Pipes one after the other as the water runs through them, from an upper end down to an outfall, to the end of the drain, or
 * to the pipe that takes the water on. Stations run with the flow from the upper end.
 *
 * @param runs the pipes, the uppermost first; at least one
 * @param into the pipe of another line that takes the water on, where this one is a branch
 */
public record FlowLine(List<PipeRun> runs, Optional<PipeRun> into) {

    public FlowLine {
        runs = List.copyOf(runs);
        if (runs.isEmpty()) {
            throw new IllegalArgumentException("a flow line has at least one pipe");
        }
    }

    /**
     * One pipe of a line.
     *
     * @param run the pipe
     * @param start station in metres of its upstream end along the line
     */
    public record Leg(PipeRun run, double start) {
        public double end() {
            return start + run.axis().getLength();
        }
    }

    public List<Leg> legs() {
        List<Leg> legs = new ArrayList<>();
        double start = 0;
        for (PipeRun run : runs) {
            Leg leg = new Leg(run, start);
            legs.add(leg);
            start = leg.end();
        }
        return legs;
    }

    /** Plan length in metres. */
    public double length() {
        return runs.stream().mapToDouble(run -> run.axis().getLength()).sum();
    }

    public Junction from() {
        return runs.get(0).up();
    }

    public Junction to() {
        return runs.get(runs.size() - 1).down();
    }

    /** {@code IN-1 to OF-1}; an end on which no structure stands is named by its pipe, or by the pipe that it joins. */
    public String name() {
        PipeRun first = runs.get(0);
        PipeRun last = runs.get(runs.size() - 1);
        return structure(from()).orElse("upper end of " + first.id()) + " to "
                + structure(to()).or(() -> into.map(PipeRun::id)).orElse("lower end of " + last.id());
    }

    private static Optional<String> structure(Junction junction) {
        return junction.structures().stream().findFirst().map(feature -> feature.id());
    }
}
