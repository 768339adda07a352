package org.fallrule.hydraulics.inlet;

import org.fallrule.measure.Length;

/** How deep the water stands above a grate that takes a flow. */
public sealed interface GrateHead {

    /**
     * So deep.
     *
     * @param depth above the grate
     */
    record Standing(Length depth) implements GrateHead {}

    /** The grate takes nothing; the water stands as high as the ground holds it. */
    record Clogged() implements GrateHead {}
}
