package org.fallrule.remedy;

import java.util.List;
import java.util.Set;

/** One kind of change of a drain. It knows what a check measures, and neither rules nor counties nor limits. */
interface Remedy {

    /** The checks whose findings it may pass. */
    Set<String> checks();

    /**
     * The changes of this kind that may help, those first that disturb the plan least, for a finding of one of its checks; none
     * where they are not for this one.
     */
    List<Series> series(Situation at);

    /** How many changes of this kind are put to the proof before the next kind is tried. */
    default int mostProofs() {
        return 6;
    }
}
