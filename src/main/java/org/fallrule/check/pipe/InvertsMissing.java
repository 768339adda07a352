package org.fallrule.check.pipe;

import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Length;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Attribute;

/** The answer of every check that needs a pipe's inverts when the plan does not give them. */
final class InvertsMissing {
    private InvertsMissing() {}

    static Observation of(PipeRun run) {
        Observation seen = Observation.plain(Outcome.CANNOT_TELL, run.pipe()).at(run.axis());
        if (run.invertUp().isEmpty()) {
            seen = seen.lacking(upstream(run));
        }
        if (run.invertDown().isEmpty()) {
            seen = seen.lacking(downstream(run));
        }
        if (run.axis().getLength() == 0) {
            seen = seen.lacking(new Missing("a length in plan of " + run.pipe().spoken(), "draw the pipe to its end"));
        }
        return seen;
    }

    static Missing upstream(PipeRun run) {
        return missing(run, "upstream", "invert_up", Attribute.DEPTH_UP);
    }

    static Missing downstream(PipeRun run) {
        return missing(run, "downstream", "invert_down", Attribute.DEPTH_DOWN);
    }

    private static Missing missing(PipeRun run, String end, String attribute, Attribute<Length> depth) {
        if (run.pipe().get(depth).isPresent()) {
            return new Missing(
                    "the ground at the " + end + " end of " + run.pipe().spoken() + ", which its " + depth.spoken()
                            + " is measured from",
                    "give spot elevations around it, or " + attribute + " with its unit");
        }
        return new Missing(
                "the " + end + " invert of " + run.pipe().spoken(),
                "give " + attribute + " with its unit, or Z at the pipe's ends");
    }
}
