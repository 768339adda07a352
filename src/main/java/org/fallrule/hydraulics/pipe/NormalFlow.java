package org.fallrule.hydraulics.pipe;

import java.util.Optional;
import org.fallrule.measure.Flow;
import org.fallrule.measure.Length;
import org.fallrule.measure.Slope;
import org.fallrule.measure.Velocity;

/** How a steady flow runs in a long round pipe. */
public sealed interface NormalFlow {

    /** No water flows, in a pipe that falls. */
    record Dry() implements NormalFlow {}

    /**
     * It runs with a free surface.
     *
     * @param depth the lower depth at which the pipe carries the flow
     * @param filling depth over diameter
     * @param velocity mean velocity at that depth
     * @param upperDepth the second depth that carries the same flow, where the flow is what the full pipe carries or more;
     *     the pipe may then change from one to the other and fill
     */
    record Open(Length depth, double filling, Velocity velocity, Optional<Length> upperDepth) implements NormalFlow {}

    /**
     * It is more than the pipe carries with a free surface at any depth; the pipe runs full and water stands above it upstream.
     *
     * @param greatestOpen the greatest flow with a free surface, at 0.938 of the diameter
     * @param frictionSlope the slope of the energy line
     */
    record Full(Flow greatestOpen, Slope frictionSlope) implements NormalFlow {}

    /**
     * The pipe is level or rises: no depth is normal to it.
     *
     * @param slope its slope, zero or below
     */
    record NoFall(Slope slope) implements NormalFlow {}
}
