package org.fallrule.remedy;

import java.util.List;

/** One kind of change of a drain. It knows what a check measures, and neither rules nor counties nor limits. */
interface Remedy {

    /** The changes of this kind that may help, those first that disturb the plan least; none where it is not for this finding. */
    List<Series> series(Situation at);
}
