package org.fallrule.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fallrule.measure.Length;
import org.fallrule.network.PipeRun;

/** Lowers or raises inverts: one end of a pipe, a junction with all that meets there, or the line from a pipe down. */
final class OtherInverts implements Remedy {
    /** Steps of height; 3 ft, or 1 m. */
    private static final int MOST = 300;

    @Override
    public Set<String> checks() {
        return Set.of(
                "slope",
                "velocity",
                "capacity",
                "fall_available",
                "continuous_fall",
                "cover",
                "frost",
                "depth",
                "footing_plane",
                "separation",
                "grade_line");
    }

    @Override
    public List<Series> series(Situation at) {
        return at.run().map(run -> series(at, run)).orElse(List.of());
    }

    private static List<Series> series(Situation at, PipeRun run) {
        if (at.isOf("slope", "velocity", "capacity")) {
            boolean steeper = at.asksMore() || at.isOf("capacity");
            return tilted(at, run, steeper ? 1 : -1);
        }
        if (at.isOf("fall_available")) {
            return Stream.concat(
                            tilted(at, run, 1).stream(),
                            Stream.of(outfall(at, run)).flatMap(Optional::stream))
                    .toList();
        }
        if (at.isOf("continuous_fall")) {
            return List.of(end(at, run, false, 1), end(at, run, true, 1), lowerNext(at, run));
        }
        if (at.isOf("cover", "frost")) {
            return sunk(at, run, -1);
        }
        if (at.isOf("depth", "footing_plane")) {
            return sunk(at, run, 1);
        }
        if (at.isOf("separation") && at.measured().startsWith("height")) {
            return Stream.concat(sunk(at, run, -1).stream(), sunk(at, run, 1).stream())
                    .toList();
        }
        return at.isOf("grade_line") ? sunk(at, run, -1) : List.of();
    }

    /** Steeper where {@code way} is 1, flatter where it is -1. */
    private static List<Series> tilted(Situation at, PipeRun run, int way) {
        return List.of(
                end(at, run, false, -way),
                end(at, run, true, way),
                junctions(at, List.of(run.down().number()), -way, "at " + Shown.to(run)),
                junctions(at, List.of(run.up().number()), way, "at " + Shown.from(run)));
    }

    /** Higher where {@code way} is 1, lower where it is -1. */
    private static List<Series> sunk(Situation at, PipeRun run, int way) {
        List<Series> series = new ArrayList<>(List.of(end(at, run, false, way), end(at, run, true, way)));
        List<Integer> ends = List.of(run.up().number(), run.down().number());
        series.add(both(at, run, way));
        series.add(junctions(at, ends, way, "at both ends of " + run.pipe().spoken()));
        List<Integer> down = Stream.concat(
                        Stream.of(run.up().number()),
                        at.down(run).stream().map(each -> each.down().number()))
                .distinct()
                .toList();
        series.add(junctions(at, down, way, "from " + Shown.from(run) + " down to the outfall"));
        return series;
    }

    private static Series end(Situation at, PipeRun run, boolean upper, int way) {
        return stepped(
                at,
                way,
                by -> at.edits().raise(run, upper ? by : none(), upper ? none() : by),
                by -> verb(way) + " the " + (upper ? "upper" : "lower") + " end of "
                        + run.pipe().spoken() + " by " + by + now(run, upper));
    }

    private static String now(PipeRun run, boolean upper) {
        return (upper ? run.invertUp() : run.invertDown()).isPresent()
                ? ", at " + (upper ? Shown.from(run) : Shown.to(run))
                : "";
    }

    private static Series both(Situation at, PipeRun run, int way) {
        return stepped(
                at,
                way,
                by -> at.edits().raise(run, by, by),
                by -> verb(way) + " " + run.pipe().spoken() + " by " + by);
    }

    private static Optional<Series> outfall(Situation at, PipeRun run) {
        List<PipeRun> path = at.down(run);
        PipeRun last = path.get(path.size() - 1);
        return last.down().isOutfall()
                ? Optional.of(stepped(
                        at,
                        -1,
                        by -> at.edits().raise(last, none(), by),
                        by -> "lower the invert of " + Shown.to(last) + " by " + by))
                : Optional.empty();
    }

    private static Series lowerNext(Situation at, PipeRun run) {
        Optional<PipeRun> next = at.network().leaving(run.down());
        return stepped(
                at,
                -1,
                by -> {
                    Edits edits = at.edits();
                    next.ifPresent(out -> edits.raise(out, by, none()));
                    return edits;
                },
                by -> "lower the upper end of "
                        + next.map(out -> out.pipe().spoken()).orElse("the next pipe") + " by " + by);
    }

    /** All pipe ends at some junctions; where they are lowered, those of pipes that come in from aside stay and drop in. */
    private static Series junctions(Situation at, List<Integer> numbers, int way, String where) {
        Set<Integer> moved = numbers.stream().collect(Collectors.toSet());
        return stepped(
                at,
                way,
                by -> {
                    Edits edits = at.edits();
                    for (PipeRun each : at.network().runs()) {
                        boolean up = moved.contains(each.up().number());
                        boolean down = moved.contains(each.down().number());
                        if (up || down) {
                            edits.raise(each, up ? by : none(), down ? by : none());
                        }
                    }
                    return edits;
                },
                by -> verb(way) + " the inverts " + where + " by " + by);
    }

    private static Series stepped(Situation at, int way, Function<Length, Edits> edits, UnaryOperator<String> says) {
        return new Series(MOST, steps -> {
                    double metres = steps * at.shown().heightStep();
                    Edits made = edits.apply(new Length(way * metres));
                    return Optional.of(
                            new Change(made.site(), says.apply(at.shown().height(metres))));
                })
                .first(at.stepsShort(at.shown().heightStep()));
    }

    private static Length none() {
        return new Length(0);
    }

    private static String verb(int way) {
        return way > 0 ? "raise" : "lower";
    }
}
