package org.fallrule.locality;

import java.util.List;
import java.util.Optional;
import org.fallrule.measure.Slope;
import org.fallrule.measure.Unit;

/**
 * What a runoff coefficient may hang on; the names that conditions of a book may ask for.
 *
 * @param soil the soil, in a word
 * @param slope how steep the surface lies
 * @param returnPeriod how rare the storm is
 */
public record Setting(Optional<String> soil, Optional<Slope> slope, Optional<ReturnPeriod> returnPeriod) {
    private static final String SOIL = "soil";
    private static final String SLOPE = "slope_percent";
    private static final String RETURN_PERIOD = "return_period_yr";

    /** Nothing is known. */
    public static final Setting UNKNOWN = new Setting(Optional.empty(), Optional.empty(), Optional.empty());

    /** The names that a condition may use. */
    public static final List<String> NAMES = List.of(SOIL, SLOPE, RETURN_PERIOD);

    Optional<Object> value(String name) {
        return switch (name) {
            case SOIL -> soil.map(Object.class::cast);
            case SLOPE -> slope.map(steep -> steep.in(Unit.PERCENT));
            case RETURN_PERIOD -> returnPeriod.map(ReturnPeriod::years);
            default -> Optional.empty();
        };
    }
}
