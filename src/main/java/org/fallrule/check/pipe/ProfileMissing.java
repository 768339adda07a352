package org.fallrule.check.pipe;

import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.network.PipeRun;

/** The answer of every check that needs a pipe's long section when the plan gives no inverts or no diameter. */
final class ProfileMissing {
    private ProfileMissing() {}

    static Observation of(PipeRun run) {
        Observation seen = run.slope().isEmpty()
                ? InvertsMissing.of(run)
                : Observation.plain(Outcome.CANNOT_TELL, run.pipe()).at(run.axis());
        return run.size().isPresent()
                ? seen
                : seen.lacking(new Missing("diameter of " + run.pipe().spoken(), "give diameter with its unit"));
    }
}
