package org.fallrule.hydrology;

import java.util.Optional;
import org.fallrule.measure.Time;

/**
 * A place on a drain and what runs to it over the ground.
 *
 * @param id its name
 * @param runoff what drains to it; empty for a place that only passes water on
 * @param overland how long the farthest of its own water takes to it
 * @param downstream the place that its water goes on to; empty at an outfall
 * @param travel how long water takes from here to there
 */
public record Catchment(
        String id, Optional<CompositeRunoff> runoff, Time overland, Optional<String> downstream, Time travel) {}
