package org.fallrule.hydrology;

import java.util.Optional;
import org.fallrule.measure.Flow;
import org.fallrule.measure.Intensity;
import org.fallrule.measure.Time;

/**
 * The design flow at a place on a drain and how it came about.
 *
 * @param runoff all that drains to the place
 * @param longest the longest time that water takes to it
 * @param duration the duration of rain that counts
 * @param intensity the intensity over that duration
 * @param flow the design flow
 * @param fromPart the id of the branch, or of the place itself, whose water alone comes to more than all of it together does
 */
public record GatheredFlow(
        CompositeRunoff runoff,
        Time longest,
        Time duration,
        Intensity intensity,
        Flow flow,
        Optional<String> fromPart) {}
