package org.fallrule.network;

import java.util.Optional;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.linearref.LengthIndexedLine;

/** A pipe in long section: straight in height between the inverts at its ends. Stations run with the flow from its upstream end. */
public final class PipeProfile {
    private final LengthIndexedLine plan;
    private final double length;
    private final double invertUp;
    private final double fallPerMetre;
    private final double wall;
    private final double outside;

    private PipeProfile(PipeRun run, Elevation up, Elevation down, OutsideDiameter size) {
        this.plan = new LengthIndexedLine(run.axis());
        this.length = run.axis().getLength();
        this.invertUp = up.metres();
        this.fallPerMetre = length > 0 ? up.above(down).metres() / length : 0;
        this.outside = size.value().metres();
        double nominal = run.diameter().map(Length::metres).orElse(outside);
        this.wall = Math.max(0, (outside - nominal) / 2);
    }

    /** The profile of a run; nothing when an invert or the diameter is missing. */
    public static Optional<PipeProfile> of(PipeRun run) {
        return run.invertUp()
                .flatMap(up ->
                        run.invertDown().flatMap(down -> run.size().map(size -> new PipeProfile(run, up, down, size))));
    }

    public Length length() {
        return new Length(length);
    }

    /** The place in plan at a station in metres. */
    public Coordinate placeAt(double station) {
        return plan.extractPoint(station);
    }

    /** The station in metres of the place on the axis that is nearest to a place in plan. */
    public double stationOf(Coordinate place) {
        return plan.project(place);
    }

    public Elevation invertAt(double station) {
        return new Elevation(invertUp - fallPerMetre * station);
    }

    /** The outside top of the pipe. The wall is taken as half the difference of outside and nominal diameter. */
    public Elevation topAt(double station) {
        return bottomAt(station).plus(new Length(outside));
    }

    /** The outside bottom of the pipe: its invert less the wall. */
    public Elevation bottomAt(double station) {
        return new Elevation(invertUp - fallPerMetre * station - wall);
    }
}
