package org.fallrule.analysis;

import java.util.List;
import java.util.Optional;
import org.fallrule.hydrology.DesignStorm;
import org.fallrule.locality.OverlandTime;
import org.fallrule.locality.Storm;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Ratio;
import org.fallrule.measure.Slope;
import org.fallrule.measure.Time;
import org.fallrule.method.Answer;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.terrain.flow.ContributingArea;

/**
 * How long water takes over the ground to an inlet, and what that rests on. Where it cannot be told it is none, so that the
 * storm's shortest duration counts, which asks for the most.
 *
 * @param time the time
 * @param by what it rests on: {@code given by drainage area DA-1}, {@code faa_time}
 */
record TimeOverGround(Time time, String by) {
    /** Where no book says how: the method that needs no figure of the place. */
    private static final OverlandTime BY_COEFFICIENT =
            new OverlandTime(OverlandTime.By.FAA_TIME, Optional.empty(), Optional.empty());

    /** The longest of the times that the plan gives for drainage areas; empty where it gives none. */
    static Optional<TimeOverGround> given(List<Feature> areas) {
        return areas.stream()
                .flatMap(area -> area
                        .get(Attribute.CONCENTRATION_TIME)
                        .map(time -> new TimeOverGround(time, "given by " + area.spoken()))
                        .stream())
                .max((one, other) -> Double.compare(one.time.seconds(), other.time.seconds()));
    }

    /** The time along the farthest way, by the method that the book names under storm: overland. */
    static TimeOverGround along(Optional<ContributingArea.FlowWay> way, Ratio coefficient, Storm storm) {
        if (way.isEmpty()) {
            return new TimeOverGround(new Time(0), "no way over the ground; the shortest duration counts");
        }
        OverlandTime how = storm.overland().orElse(BY_COEFFICIENT);
        Answer<Time> time = slope(way.get())
                .map(slope -> new OverlandWay(way.get().length(), slope, coefficient))
                .map(over -> DesignStorm.of(storm).then(rain -> over.time(how, rain)))
                .orElseGet(() -> Answer.none("the flow path does not fall"));
        return time.value()
                .map(found -> new TimeOverGround(found, how.by().word()))
                .orElseGet(() -> new TimeOverGround(
                        new Time(0), time.why() + "; the shortest duration counts, which asks for the most"));
    }

    /** How steep a way is; empty where it does not fall. */
    static Optional<Slope> slope(ContributingArea.FlowWay way) {
        return Optional.of(way)
                .filter(found -> found.length().metres() > 0)
                .map(found -> new Slope(found.fall().metres() / found.length().metres()))
                .filter(slope -> slope.ratio() > Dimension.SLOPE.tolerance());
    }
}
