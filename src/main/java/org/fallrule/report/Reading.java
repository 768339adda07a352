package org.fallrule.report;

import java.util.Optional;
import org.fallrule.finding.Measured;

/**
 * What was measured, with its words.
 *
 * @param measured the value and its limit
 * @param shown the value as printed: {@code 3.50 ft}
 * @param shortBy how far it misses its limit, as printed; empty when it meets it
 */
public record Reading(Measured measured, String shown, Optional<String> shortBy) {

    public static Reading of(Measured measured) {
        return new Reading(measured, Sentence.shown(measured), Sentence.shortBy(measured));
    }
}
