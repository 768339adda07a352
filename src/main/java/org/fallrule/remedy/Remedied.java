package org.fallrule.remedy;

import java.util.Optional;
import org.fallrule.finding.Finding;

/**
 * What would pass a finding.
 *
 * @param finding the finding of the submitted plan
 * @param says the change, or what stands in its way; a clause without a full stop
 * @param change the change that was proved; empty where none was
 */
public record Remedied(Finding finding, String says, Optional<Change> change) {

    /** Whether the changed plan was reviewed and the finding then meets and no other is worse. */
    public boolean proved() {
        return change.isPresent();
    }
}
