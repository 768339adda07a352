package org.fallrule.locality;

import java.util.Optional;
import org.fallrule.measure.Written;

/**
 * What a rule book says of the climate and the soil of its place.
 *
 * @param freezing whether the ground freezes
 * @param frostDepth how deep
 * @param soil the usual soil, in a word
 */
public record Climate(Optional<Boolean> freezing, Optional<Written> frostDepth, Optional<String> soil) {

    public static final Climate UNSAID = new Climate(Optional.empty(), Optional.empty(), Optional.empty());

    /** This climate with what a later book says laid over it. */
    public Climate overlaid(Climate over) {
        return new Climate(
                over.freezing.or(() -> freezing), over.frostDepth.or(() -> frostDepth), over.soil.or(() -> soil));
    }
}
