package org.fallrule.hydrology;

import java.util.List;
import org.fallrule.locality.IntensityTable;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Intensity;
import org.fallrule.measure.Printed;
import org.fallrule.measure.Time;
import org.fallrule.measure.Unit;
import org.fallrule.method.Answer;
import org.fallrule.method.Method;

/** The intensity of a duration between the rows of a table. */
public final class TableIntensity {
    public static final Method METHOD = Method.named(
                    "intensity_table",
                    "Intensity from a table",
                    "The mean intensity of a storm of a given duration, from a table by duration for one return period.")
            .formula("ln i = ln i1 + (ln i2 - ln i1) (ln t - ln t1) / (ln t2 - ln t1)")
            .symbol("i", "intensity of the duration t", "any")
            .symbol("t", "duration", "any")
            .symbol("t1, i1", "duration and intensity of the next shorter row", "as t and i")
            .symbol("t2, i2", "duration and intensity of the next longer row", "as t and i")
            .source("Common practice with no published source: intensities are straight between rows when both axes are"
                    + " logarithmic.")
            .source(
                    "Rows as printed by a precipitation atlas, such as NOAA Atlas 14 (partial or annual series: take the"
                            + " one that the county asks for).")
            .limit("Nothing shorter than the first row or longer than the last: no answer there.")
            .limit(
                    "Keep every row: in a printed table of 5, 10, 15, 30 and 60 minutes, the 10 minute row found from its"
                            + " neighbours comes out up to 3 % low, the 15 minute row 2.6 %, the 30 minute row 5.4 %.");

    private TableIntensity() {}

    /** The intensity of a duration; none outside the table. */
    public static Answer<Intensity> of(IntensityTable table, Time duration) {
        List<IntensityTable.Row> rows = table.rows();
        double seconds = duration.seconds();
        double first = rows.get(0).duration().seconds();
        double last = rows.get(rows.size() - 1).duration().seconds();
        double tolerance = Dimension.TIME.tolerance();
        if (seconds < first - tolerance) {
            return Answer.none("outside the table: " + shown(seconds) + ", the table begins at " + shown(first));
        }
        if (seconds > last + tolerance) {
            return Answer.none("outside the table: " + shown(seconds) + ", the table ends at " + shown(last));
        }
        return Answer.of(between(rows, Math.min(last, Math.max(first, seconds))));
    }

    private static Intensity between(List<IntensityTable.Row> rows, double seconds) {
        IntensityTable.Row before = rows.get(0);
        for (IntensityTable.Row row : rows) {
            if (row.duration().seconds() == seconds) {
                return row.intensity();
            }
            if (row.duration().seconds() > seconds) {
                return interpolated(before, row, seconds);
            }
            before = row;
        }
        return before.intensity();
    }

    private static Intensity interpolated(IntensityTable.Row one, IntensityTable.Row two, double seconds) {
        double share = Math.log(seconds / one.duration().seconds())
                / Math.log(two.duration().seconds() / one.duration().seconds());
        double rise = two.intensity().metresPerSecond() / one.intensity().metresPerSecond();
        return new Intensity(one.intensity().metresPerSecond() * Math.pow(rise, share));
    }

    static String shown(double seconds) {
        return Printed.trimmed(Math.round(seconds / Unit.MINUTE.toSi() * 100) / 100.0) + " min";
    }
}
