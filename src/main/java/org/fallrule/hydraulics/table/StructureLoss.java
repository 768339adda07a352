package org.fallrule.hydraulics.table;

import java.util.Comparator;
import java.util.List;
import org.fallrule.measure.Angle;
import org.fallrule.measure.Dimension;
import org.fallrule.method.Answer;

/** The loss of an inlet or access hole as a whole, by the angle that the flow turns through in it; HEC-22, table 7-5a. */
public final class StructureLoss {
    private static final DataFile FILE = DataFile.shipped("structure-loss");

    private StructureLoss() {}

    /** The document that prints the figures, and how they are known. */
    public static String source() {
        return FILE.text("document") + " (" + FILE.text("known") + ")";
    }

    /**
     * The loss as a multiple of the velocity head in the pipe that leaves; for an angle between two printed ones the greater
     * of both. None for a kind that is not in the table or a turn of more than 90 degrees.
     *
     * @param kind {@code inlet} or {@code access_hole}
     * @param turn 0 for straight on
     */
    public static Answer<Double> of(String kind, Angle turn) {
        List<DataFile> rows = FILE.rows("rows").stream()
                .filter(row -> row.text("kind").equals(kind))
                .toList();
        if (rows.isEmpty()) {
            return Answer.none("no loss of \"" + kind + "\" is known; known are inlet and access_hole");
        }
        double wanted = Math.abs(turn.radians()) - Dimension.ANGLE.tolerance();
        return rows.stream()
                .filter(row -> angle(row) >= wanted)
                .min(Comparator.comparingDouble(StructureLoss::angle))
                .map(row -> Answer.of(row.quantity("loss", Dimension.RATIO).si()))
                .orElseGet(() -> Answer.none("the table ends at a turn of 90 degrees"));
    }

    private static double angle(DataFile row) {
        return row.quantity("turn", Dimension.ANGLE).si();
    }
}
