package org.fallrule.hydrology;

import java.util.Optional;
import java.util.stream.Collectors;
import org.fallrule.locality.IntensityCurve;
import org.fallrule.locality.IntensityTable;
import org.fallrule.locality.Rainfall;
import org.fallrule.locality.ReturnPeriod;
import org.fallrule.locality.Stated;
import org.fallrule.locality.Storm;
import org.fallrule.measure.Intensity;
import org.fallrule.measure.Time;
import org.fallrule.method.Answer;

/**
 * The rain that a drain must carry: the storms of one return period.
 *
 * @param returnPeriod how rare
 * @param rainfall how hard it rains by duration, and who says so
 * @param shortestDuration the shortest duration that counts, if one is stated
 */
public record DesignStorm(
        ReturnPeriod returnPeriod, Stated<Rainfall> rainfall, Optional<Stated<Time>> shortestDuration) {

    /** The storm of the return period that the place designs for, or what is missing. */
    public static Answer<DesignStorm> of(Storm storm) {
        return storm.returnPeriod()
                .map(period -> of(storm, period.value()))
                .orElseGet(() -> Answer.none(
                        "no return period is stated; give storm: return_period in the rule book or in site.yaml"));
    }

    /** The storm of a return period, or what is missing. Nothing is carried over from another return period. */
    public static Answer<DesignStorm> of(Storm storm, ReturnPeriod period) {
        return Optional.ofNullable(storm.rainfall().get(period))
                .map(rainfall -> Answer.of(new DesignStorm(period, rainfall, storm.shortestDuration())))
                .orElseGet(() -> Answer.none(missing(storm, period)));
    }

    private static String missing(Storm storm, ReturnPeriod period) {
        String known =
                storm.rainfall().keySet().stream().map(ReturnPeriod::toString).collect(Collectors.joining(", "));
        return "no rain of " + period + " is stated" + (known.isEmpty() ? "" : ", only of " + known)
                + "; give storm: intensity in the rule book or in site.yaml";
    }

    /** The mean intensity over a duration, or why there is none. */
    public Answer<Intensity> intensity(Time duration) {
        if (rainfall.value() instanceof IntensityTable table) {
            return TableIntensity.of(table, duration);
        }
        return CurveIntensity.of((IntensityCurve) rainfall.value(), duration);
    }

    /** The duration that counts for water that takes so long to come: that time, and no less than the shortest. */
    public Time duration(Time concentration) {
        return shortestDuration
                .map(Stated::value)
                .filter(shortest -> shortest.seconds() > concentration.seconds())
                .orElse(concentration);
    }
}
