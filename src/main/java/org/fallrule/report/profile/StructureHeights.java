package org.fallrule.report.profile;

import java.util.List;
import java.util.Optional;
import org.fallrule.finding.Measured;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.network.FlowLine;
import org.fallrule.network.Reach;
import org.fallrule.report.Report;
import org.fallrule.report.profile.HeightMeasured.Mark;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;

/** Heights measured at an inlet or a cleanout from its rim, or from the ground where no rim is given. */
final class StructureHeights {
    /** How much of the pipe that leaves it is shown, in metres. */
    private static final double BESIDE = 3;
    /** Where what was measured stands beside the structure, as a share of what is shown. */
    private static final double APART = 0.12;

    private final Report report;
    private final Measured measured;
    private final Length value;
    private final Length asked;

    StructureHeights(Report report, Measured measured) {
        this.report = report;
        this.measured = measured;
        this.value = new Length(measured.value().si());
        this.asked = new Length(LimitLine.asked(measured));
    }

    /** From the rim down, such as to the water or to the bottom of the sump. */
    Optional<HeightMeasured> down(Feature structure) {
        return at(structure, rim(structure), rim -> rim.minus(value), rim -> rim.minus(asked));
    }

    /** From the rim up, such as to the water above a grate. */
    Optional<HeightMeasured> up(Feature structure) {
        return at(structure, rim(structure), rim -> rim.plus(value), rim -> rim.plus(asked));
    }

    /** From the rim down to what it may stand only so far above. */
    Optional<HeightMeasured> above(Feature structure) {
        return at(
                structure,
                rim(structure),
                rim -> rim.minus(value),
                rim -> rim.minus(value).plus(asked));
    }

    private Optional<Elevation> rim(Feature structure) {
        return structure
                .get(Attribute.RIM)
                .or(() -> report.analysis()
                        .ground()
                        .flatMap(ground ->
                                ground.elevationAt(structure.geometry().getCoordinate())));
    }

    /** A level that follows from that of the rim. */
    private interface Level {
        Elevation from(Elevation rim);
    }

    private Optional<HeightMeasured> at(Feature structure, Optional<Elevation> rim, Level end, Level limit) {
        Optional<FlowLine> line = report.analysis()
                .network()
                .junctionOf(structure)
                .flatMap(report.analysis().network()::leaving)
                .map(run -> new FlowLine(List.of(run), Optional.empty()));
        return line.flatMap(pipe -> rim.map(level -> {
            Reach reach = new Reach(0, Math.min(pipe.length(), BESIDE));
            double station = APART * reach.to();
            Elevation asks = limit.from(level);
            return new HeightMeasured(
                    line,
                    reach,
                    new Mark(station, level),
                    new Mark(station, end.from(level)),
                    false,
                    scale -> LimitLine.through(measured, scale, new Mark(0, asks), new Mark(reach.to(), asks)));
        }));
    }
}
