package org.fallrule.comparison;

import java.util.Optional;
import org.fallrule.finding.Finding;

/**
 * What has become of a finding. One of both is there.
 *
 * @param change how it has changed
 * @param before as it was
 * @param after as it is
 * @param why in a clause, why it counts as that
 */
public record FindingChange(Change change, Optional<Finding> before, Optional<Finding> after, String why) {

    /** The finding as it is, or as it was where it is no more. */
    public Finding shown() {
        return after.or(() -> before).orElseThrow();
    }

    /** Whether a person has to look at it still. */
    public boolean isOpen() {
        return after.filter(finding -> finding.outcome().isOpen()).isPresent();
    }
}
