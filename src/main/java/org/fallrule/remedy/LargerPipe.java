package org.fallrule.remedy;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.DoubleStream;
import org.fallrule.measure.Length;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Attribute;

/**
 * A larger pipe, from the one in question down to the outfall, its inverts as they are. Nominal sizes are those that pipe for
 * drains is sold in, common practice: 3 to 24 in, or 75 to 600 mm.
 */
final class LargerPipe implements Remedy {
    private static final double[] INCHES = {3, 4, 6, 8, 10, 12, 15, 18, 24};
    private static final double[] MILLIMETRES = {75, 100, 150, 200, 250, 300, 375, 450, 600};

    @Override
    public Set<String> checks() {
        return Set.of("capacity", "grade_line", "diameter_downstream", "slope", "attribute", "velocity", "drain_down");
    }

    @Override
    public List<Series> series(Situation at) {
        return at.run()
                .filter(run -> run.diameter().isPresent())
                .map(run -> List.of(new Series(larger(at, run).length, steps -> laid(at, run, steps))))
                .orElse(List.of());
    }

    private static double[] larger(Situation at, PipeRun run) {
        double now = run.diameter().orElseThrow().metres();
        boolean metric = at.analysis().site().metric();
        return DoubleStream.of(metric ? MILLIMETRES : INCHES)
                .map(size -> size * (metric ? 0.001 : 0.0254))
                .filter(size -> size > now + 1e-3)
                .toArray();
    }

    private static Optional<Change> laid(Situation at, PipeRun first, int steps) {
        double[] sizes = larger(at, first);
        if (steps > sizes.length) {
            return Optional.empty();
        }
        Length size = new Length(sizes[steps - 1]);
        Edits edits = at.edits();
        boolean isWideBelow = false;
        for (PipeRun run : at.down(first)) {
            if (run.diameter()
                    .filter(now -> now.metres() >= size.metres() - 1e-3)
                    .isEmpty()) {
                edits.set(run.pipe(), Attribute.DIAMETER, size);
                run.pipe()
                        .get(Attribute.OUTSIDE_DIAMETER)
                        .ifPresent(outside ->
                                edits.set(run.pipe(), Attribute.OUTSIDE_DIAMETER, grown(run, outside, size)));
            } else {
                isWideBelow = true;
            }
        }
        return Optional.of(new Change(
                edits.site(),
                at.shown().inches(size.metres()) + " pipe from " + Shown.from(first)
                        + (isWideBelow ? " on, as far as the pipe is smaller" : " down to the outfall")));
    }

    /** The outside diameter of the larger pipe, its wall as much thicker as it is wider. */
    private static Length grown(PipeRun run, Length outside, Length size) {
        return run.diameter()
                .map(now -> outside.times(size.metres() / now.metres()))
                .orElse(outside);
    }
}
