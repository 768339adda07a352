package org.fallrule.hydraulics.gradeline;

import org.fallrule.measure.Elevation;
import org.fallrule.measure.Flow;
import org.fallrule.measure.Length;
import org.fallrule.measure.Velocity;

/**
 * The grade line along one pipe.
 *
 * @param pipe its id
 * @param flow the flow in it
 * @param state how the water runs
 * @param down grade line at the lower end, inside the pipe
 * @param up grade line at the upper end, inside the pipe
 * @param depthDown depth there; the pressure head where it is more than the bore
 * @param depthUp depth there; the pressure head where it is more than the bore
 * @param velocityDown mean velocity at the lower end
 * @param velocityUp mean velocity at the upper end
 * @param losses what the energy line loses on the way
 */
public record PipeGrade(
        String pipe,
        Flow flow,
        PipeState state,
        Elevation down,
        Elevation up,
        Length depthDown,
        Length depthUp,
        Velocity velocityDown,
        Velocity velocityUp,
        Losses losses) {

    /**
     * Heights that the energy line loses.
     *
     * @param exit into the node downstream
     * @param friction along the pipe, with the jump where there is one
     * @param bend in its bends
     * @param entrance out of the node upstream
     */
    public record Losses(Length exit, Length friction, Length bend, Length entrance) {}
}
