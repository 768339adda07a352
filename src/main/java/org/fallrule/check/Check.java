package org.fallrule.check;

import java.util.List;
import java.util.Set;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.finding.Observation;
import org.fallrule.site.Attribute;

/**
 * One thing that can be asked of a plan. Stateless; a rule book says of what, and with which limits. Implementations are
 * found as services ({@link java.util.ServiceLoader}).
 */
public interface Check {
    /** What pipes, inlets and outfalls are made like, which most checks do not ask. */
    Set<Attribute<?>> DETAILS = Set.of(
            Attribute.APRON_LENGTH,
            Attribute.SUMP,
            Attribute.WEEP_HOLE_AREA,
            Attribute.WEIGHT,
            Attribute.GRATE_OPEN_AREA,
            Attribute.GRATE_OPENING,
            Attribute.PERFORATED,
            Attribute.JOINT,
            Attribute.JOINT_TIGHTNESS,
            Attribute.WALL);

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
     * Whether what it finds may change with heights of the drain alone: inverts, rims. What follows from where things lie
     * in plan is not looked at again when only heights are tried.
     */
    default boolean looksAtHeights() {
        return true;
    }

    /** Whether what it finds may change with the proposed ground, as heights of the drain do that are given by their depth. */
    default boolean looksAtGround() {
        return looksAtHeights();
    }

    /**
     * Those of the {@link #DETAILS} that what it finds may change with, beside those that a rule's conditions name. The others are
     * not looked at again when a change of them is tried.
     */
    default Set<Attribute<?>> looksAtDetails() {
        return Set.of();
    }
}
