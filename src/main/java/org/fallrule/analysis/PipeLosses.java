package org.fallrule.analysis;

import java.util.Optional;
import org.fallrule.hydraulics.gradeline.LocalLosses;
import org.fallrule.hydraulics.table.SourcedTable;
import org.fallrule.hydraulics.table.StructureLoss;
import org.fallrule.measure.Angle;
import org.fallrule.network.Junction;
import org.fallrule.network.PipeNetwork;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Coordinate;

/**
 * What each pipe loses at its ends and bends: at its head the loss of a square edge; behind an inlet or cleanout that other
 * water comes through the loss of the structure by the angle of the turn ({@link StructureLoss}); at a bare fitting and in its
 * own course that of the bends.
 */
final class PipeLosses {
    private static final double SQUARE_EDGE = SourcedTable.entrance()
            .only("square_edge")
            .value()
            .orElseThrow()
            .value()
            .si();
    /** The table of structures ends here; a sharper turn is taken as this one. */
    private static final double SHARPEST = Math.PI / 2;

    private final PipeNetwork network;

    PipeLosses(PipeNetwork network) {
        this.network = network;
    }

    LocalLosses of(PipeRun run) {
        double exit = run.down().isOutfall() || network.leaving(run.down()).isEmpty() ? 1 : 0;
        double turned = bends(run);
        if (network.into(run.up()).isEmpty()) {
            return new LocalLosses(exit, 0, SQUARE_EDGE).withBends(Math.toDegrees(turned));
        }
        double turn = sharpestInto(run);
        Optional<String> kind = structure(run.up());
        return kind.map(found -> new LocalLosses(exit, 0, loss(found, turn)))
                .orElseGet(() -> new LocalLosses(exit, 0, 0).withBends(Math.toDegrees(turn)))
                .withBends(Math.toDegrees(turned));
    }

    private static double loss(String kind, double turn) {
        return StructureLoss.of(kind, new Angle(Math.min(turn, SHARPEST)))
                .value()
                .orElseThrow();
    }

    private static Optional<String> structure(Junction junction) {
        if (junction.structure(Role.INLET).isPresent()) {
            return Optional.of("inlet");
        }
        return junction.structure(Role.CLEANOUT).map(any -> "access_hole");
    }

    private double sharpestInto(PipeRun run) {
        Coordinate[] axis = run.axis().getCoordinates();
        double sharpest = 0;
        for (PipeRun in : network.into(run.up())) {
            Coordinate[] before = in.axis().getCoordinates();
            sharpest = Math.max(sharpest, turn(before[before.length - 2], axis[0], axis[1]));
        }
        return sharpest;
    }

    private static double bends(PipeRun run) {
        Coordinate[] axis = run.axis().getCoordinates();
        double sum = 0;
        for (int i = 1; i < axis.length - 1; i++) {
            sum += turn(axis[i - 1], axis[i], axis[i + 1]);
        }
        return sum;
    }

    private static double turn(Coordinate from, Coordinate at, Coordinate to) {
        return Math.PI - org.locationtech.jts.algorithm.Angle.angleBetween(from, at, to);
    }
}
