package org.fallrule.remedy;

import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.finding.Finding;
import org.fallrule.measure.Length;

/** What speaks against a change that its own rule would pass. */
sealed interface Drawback {

    /**
     * Another finding gets worse.
     *
     * @param finding as it is in the changed plan
     * @param changed the changed plan
     */
    record Worse(Finding finding, SiteAnalysis changed) implements Drawback {}

    /** The drain no longer hangs together. */
    record Problem(String says) implements Drawback {}

    /** The drain no longer comes out anywhere in the open. */
    record NoOutlet(String pipe) implements Drawback {}

    /** An outfall or a grate would lie in the ground. */
    record Buried(String structure, Length below) implements Drawback {}
}
