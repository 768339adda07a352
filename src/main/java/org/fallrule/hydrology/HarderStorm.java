package org.fallrule.hydrology;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.locality.IntensityCurve;
import org.fallrule.locality.IntensityTable;
import org.fallrule.locality.Rainfall;
import org.fallrule.locality.Storm;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Time;

/** Which of two places' design storms asks more of a drain, where a lot lies in both. */
public final class HarderStorm {
    /** Durations at which two storms are held against each other, evenly spread over the logarithm of what both cover. */
    private static final int DURATIONS = 25;

    private HarderStorm() {}

    /**
     * The storm whose intensity is at least the other's at every duration that both cover, each with its own return period and
     * shortest duration; a storm that is not stated asks nothing. Storms are taken whole. Empty when neither is the harder.
     */
    public static Optional<Storm> of(Storm one, Storm other) {
        if (one.equals(other) || DesignStorm.of(other).value().isEmpty()) {
            return Optional.of(one);
        }
        if (DesignStorm.of(one).value().isEmpty()) {
            return Optional.of(other);
        }
        List<Double> differences = DesignStorm.of(one)
                .value()
                .flatMap(a -> DesignStorm.of(other).value().map(b -> differences(a, b)))
                .orElse(List.of());
        double tolerance = Dimension.INTENSITY.tolerance();
        if (!differences.isEmpty() && differences.stream().allMatch(more -> more >= -tolerance)) {
            return Optional.of(one);
        }
        return !differences.isEmpty() && differences.stream().allMatch(more -> more <= tolerance)
                ? Optional.of(other)
                : Optional.empty();
    }

    /** How much harder the first rains, in m/s, at each duration. */
    private static List<Double> differences(DesignStorm one, DesignStorm other) {
        double from = Math.max(shortest(one), shortest(other));
        double to = Math.min(longest(one), longest(other));
        List<Double> differences = new ArrayList<>();
        for (int i = 0; i < DURATIONS && from <= to; i++) {
            Time water = new Time(from * Math.pow(to / from, i / (DURATIONS - 1.0)));
            one.intensity(one.duration(water))
                    .value()
                    .ifPresent(a -> other.intensity(other.duration(water))
                            .value()
                            .ifPresent(b -> differences.add(a.metresPerSecond() - b.metresPerSecond())));
        }
        return differences;
    }

    private static double shortest(DesignStorm storm) {
        Rainfall rain = storm.rainfall().value();
        return rain instanceof IntensityTable table
                ? table.rows().get(0).duration().seconds()
                : ((IntensityCurve) rain).from().seconds();
    }

    private static double longest(DesignStorm storm) {
        Rainfall rain = storm.rainfall().value();
        return rain instanceof IntensityTable table
                ? table.rows().get(table.rows().size() - 1).duration().seconds()
                : ((IntensityCurve) rain).to().seconds();
    }
}
