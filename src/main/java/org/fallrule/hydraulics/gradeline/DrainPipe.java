package org.fallrule.hydraulics.gradeline;

import org.fallrule.hydraulics.pipe.RoundPipe;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.measure.Slope;

/**
 * A pipe between two nodes.
 *
 * @param id its name in results
 * @param from the node upstream
 * @param to the node downstream
 * @param pipe bore and roughness
 * @param length plan length, above zero
 * @param invertUp invert at the upstream end
 * @param invertDown invert at the downstream end; above the other when the pipe rises
 * @param losses what is lost at its ends and bends
 */
public record DrainPipe(
        String id,
        String from,
        String to,
        RoundPipe pipe,
        Length length,
        Elevation invertUp,
        Elevation invertDown,
        LocalLosses losses) {

    public DrainPipe {
        if (!(length.metres() > 0)) {
            throw new IllegalArgumentException("pipe " + id + ": its length must be above zero");
        }
    }

    public Slope slope() {
        return new Slope((invertUp.metres() - invertDown.metres()) / length.metres());
    }
}
