package org.fallrule.check;

import java.util.List;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.finding.Observation;

/**
 * One thing that can be asked of a plan. Stateless; a rule book says of what, and with which limits. Implementations are
 * found as services ({@link java.util.ServiceLoader}).
 */
public interface Check {

    /** The name that rule books use. */
    String name();

    /** What its page says. */
    CheckPage page();

    /** What a rule may tell it. */
    List<Parameter<?>> parameters();

    /** What it cannot do without, under the terms of a rule. */
    List<Need> needs(Terms terms);

    /**
     * Looks at the plan, everything in {@link #needs} being there.
     *
     * @return one observation for each thing that the rule speaks of; none when there is no such thing
     */
    List<Observation> observe(SiteAnalysis analysis, Terms terms);

    /**
     * Whether what it finds may change with the pipes, inlets, outfalls and cleanouts. What does not is not looked at again when
     * a change of the drain is tried.
     */
    default boolean looksAtDrain() {
        return true;
    }

    /**
     * Whether what it finds may change with heights of the drain alone: inverts, rims, sumps. What follows from where things lie
     * in plan is not looked at again when only heights are tried.
     */
    default boolean looksAtHeights() {
        return true;
    }
}
