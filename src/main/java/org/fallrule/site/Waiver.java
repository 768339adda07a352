package org.fallrule.site;

import java.time.LocalDate;
import java.util.Optional;
import org.fallrule.document.Place;

/**
 * A finding that an authority has excused.
 *
 * @param rule the rule's id
 * @param feature the id of the feature it holds for; empty for every feature
 * @param by who granted it
 * @param date when
 * @param reason why
 * @param until the last day it holds; empty for no end
 * @param statedAt where the plan says so
 */
public record Waiver(
        String rule,
        Optional<String> feature,
        String by,
        LocalDate date,
        String reason,
        Optional<LocalDate> until,
        Place statedAt) {

    public boolean expired(LocalDate today) {
        return until.map(last -> today.isAfter(last)).orElse(false);
    }

    /** Whether it is dated later than a day, so that nobody has granted it by then. */
    public boolean ahead(LocalDate today) {
        return date.isAfter(today);
    }
}
