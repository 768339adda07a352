package org.fallrule.remedy;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fallrule.measure.Elevation;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.linearref.LengthIndexedLine;

/** Ends the last pipe earlier on its line; the outfall stands to the ground there as it did, where the ground is known. */
final class EarlierEnd implements Remedy {
    private static final int MOST = 600;

    /** A shorter pipe, in metres, is none. */
    static final double SHORTEST = 0.3;

    @Override
    public Set<String> checks() {
        return Set.of("clearance", "within", "outside", "flow_path", "not_joined");
    }

    @Override
    public List<Series> series(Situation at) {
        return at.lastOrJoined()
                .map(last -> List.of(Series.within(
                                MOST,
                                last.length().metres() - SHORTEST,
                                at.shown().stationStep(),
                                steps -> ended(at, last, steps * at.shown().stationStep()))
                        .first(
                                at.isOf("flow_path", "not_joined")
                                        ? 1
                                        : at.stepsShort(at.shown().stationStep()))))
                .orElse(List.of());
    }

    private static Optional<Change> ended(Situation at, PipeRun last, double earlier) {
        double length = last.length().metres() - earlier;
        LengthIndexedLine line = new LengthIndexedLine(last.axis());
        Coordinate end = line.extractPoint(length);
        Edits edits = at.edits();
        Optional<Elevation> up = last.invertUp();
        Optional<Elevation> invert = Daylight.invertAt(at.analysis(), last, end).or(() -> onItsSlope(last, length));
        up.ifPresent(high -> invert.ifPresent(low -> edits.level(last, high, low)));
        edits.axis(last, trimmed(line, length, last, up, invert));
        last.down().structure(Role.OUTFALL).ifPresent(outfall -> edits.move(outfall, end));
        String left = up.flatMap(high -> invert.map(low -> high.above(low).metres()))
                .map(fall -> left(at.shown(), fall, length))
                .orElse("");
        return Optional.of(new Change(
                edits.site(),
                "end " + last.pipe().spoken() + " " + at.shown().plan(earlier) + " earlier, at "
                        + at.shown().station(length) + left));
    }

    private static String left(Shown shown, double fall, double length) {
        return fall > 0
                ? ": fall left " + shown.height(fall) + ", slope " + Shown.slope(fall / length)
                : ", where the ground is too high for it to fall";
    }

    private static Optional<Elevation> onItsSlope(PipeRun last, double length) {
        return last.invertUp()
                .flatMap(up -> last.slope().map(slope -> new Elevation(up.metres() - slope.ratio() * length)));
    }

    /** The shorter line, with heights straight between its ends where it has any. */
    private static LineString trimmed(
            LengthIndexedLine line, double length, PipeRun last, Optional<Elevation> up, Optional<Elevation> invert) {
        LineString flat = (LineString) line.extractLine(0, length);
        boolean raised = Double.isFinite(last.axis().getCoordinate().getZ());
        if (!raised || up.isEmpty() || invert.isEmpty()) {
            return flat;
        }
        return Straight.between(flat, up.get(), invert.get());
    }
}
