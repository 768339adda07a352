package org.fallrule.network;

import java.util.Optional;
import org.fallrule.measure.Elevation;

/** The invert of a pipe along its run: straight between the inverts at its ends. Needs no diameter. */
public final class InvertLine {
    private final double up;
    private final double fallPerMetre;

    private InvertLine(double length, Elevation up, Elevation down) {
        this.up = up.metres();
        this.fallPerMetre = length > 0 ? up.above(down).metres() / length : 0;
    }

    /** The inverts of a run; nothing when one of its ends has none. */
    public static Optional<InvertLine> of(PipeRun run) {
        return run.invertUp()
                .flatMap(up ->
                        run.invertDown().map(down -> new InvertLine(run.length().metres(), up, down)));
    }

    /** The invert at a station in metres from the upstream end. */
    public Elevation at(double station) {
        return new Elevation(up - fallPerMetre * station);
    }
}
