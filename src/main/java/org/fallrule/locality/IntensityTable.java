package org.fallrule.locality;

import java.util.List;
import org.fallrule.measure.Intensity;
import org.fallrule.measure.Time;

/**
 * Intensities by duration.
 *
 * @param rows one or more, shortest duration first
 */
public record IntensityTable(List<Row> rows) implements Rainfall {

    /** The mean intensity over a duration. */
    public record Row(Time duration, Intensity intensity) {}

    public IntensityTable {
        rows = List.copyOf(rows);
        if (rows.isEmpty()) {
            throw new IllegalArgumentException("an intensity table has at least one row");
        }
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            if (row.duration.seconds() <= 0 || row.intensity.metresPerSecond() <= 0) {
                throw new IllegalArgumentException("durations and intensities are above zero");
            }
            if (i > 0 && row.duration.seconds() <= rows.get(i - 1).duration.seconds()) {
                throw new IllegalArgumentException("durations rise from row to row");
            }
        }
    }
}
