package org.fallrule.hydraulics.table;

import java.util.List;
import java.util.Optional;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.Slope;
import org.fallrule.measure.Velocity;
import org.fallrule.method.Answer;

/** The greatest velocity that grass stands, by kind of grass, slope and soil; after the Soil Conservation Service's TP-61. */
public final class GrassVelocity {
    private static final DataFile FILE = DataFile.shipped("grass-velocity");

    /** How well the soil under the grass holds. */
    public enum Soil {
        RESISTANT("resistant"),
        EASILY_ERODED("easily_eroded");

        private final String key;

        Soil(String key) {
            this.key = key;
        }
    }

    private GrassVelocity() {}

    /** The document that prints the figures, and how they are known. */
    public static String source() {
        return FILE.text("document") + " (" + FILE.text("known") + ")";
    }

    /** The velocity; none for a grass that is not in the table or a slope steeper than it goes for that grass. */
    public static Answer<Velocity> permissible(String grass, Slope slope, Soil soil) {
        List<DataFile> rows = FILE.rows("rows").stream()
                .filter(row -> row.text("grass").equals(grass))
                .toList();
        if (rows.isEmpty()) {
            return Answer.none("no permissible velocity of \"" + grass + "\" is known; known are "
                    + String.join(
                            ", ",
                            FILE.rows("rows").stream()
                                    .map(row -> row.text("grass"))
                                    .distinct()
                                    .toList()));
        }
        return rows.stream()
                .filter(row -> reaches(row.findQuantity("to_slope", Dimension.SLOPE), slope))
                .findFirst()
                .map(row -> row.quantity(soil.key, Dimension.VELOCITY))
                .map(found -> Answer.of(new Velocity(found.si())))
                .orElseGet(() -> Answer.none("the table gives " + grass + " no velocity on a slope this steep"));
    }

    private static boolean reaches(Optional<Quantity> most, Slope slope) {
        return most.map(limit -> slope.ratio() <= limit.si() + Dimension.SLOPE.tolerance())
                .orElse(true);
    }
}
