package org.fallrule.remedy;

import java.util.Optional;
import org.fallrule.finding.Finding;

/**
 * What would pass a finding.
 *
 * @param finding the finding of the submitted plan
 * @param kind whether it is proved
 * @param says the change, or what stands in its way; a clause without a full stop
 * @param change the change that was proved; empty where none was
 */
public record Remedied(Finding finding, Kind kind, String says, Optional<Change> change) {

    /** How far a remedy goes. */
    public enum Kind {
        /** The changed plan was reviewed: the finding then meets, and no other is worse. */
        PROVED,
        /** The change passes the finding's own rule and makes something else worse. */
        TRADE_OFF,
        /** None of the changes passes the finding's own rule. */
        NONE
    }

    static Remedied proved(Finding finding, Change change) {
        return new Remedied(finding, Kind.PROVED, change.says(), Optional.of(change));
    }

    static Remedied unproved(Finding finding, Kind kind, String says) {
        return new Remedied(finding, kind, says, Optional.empty());
    }

    public boolean proved() {
        return kind == Kind.PROVED;
    }
}
