package org.fallrule.method;

import java.util.Map;
import org.fallrule.document.Place;

/**
 * A figure that somebody outside this project printed, with ours beside it.
 *
 * @param place where the figure stands among the check values
 * @param what the quantity that is given: {@code capacity}
 * @param inputs what it is computed from, in the source's units, by name
 * @param published the figure, to the digits printed
 * @param within how far ours may lie from it, in the same unit
 * @param ours the figure that this program computes
 * @param unit the unit of these; empty for a number without one
 * @param source document and place
 * @param known how the figure is known: {@code read}, {@code read in a reprint}, {@code from memory}
 */
public record PublishedValue(
        Place place,
        String what,
        Map<String, String> inputs,
        String published,
        String within,
        String ours,
        String unit,
        String source,
        String known) {}
