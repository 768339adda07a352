package org.fallrule.hydraulics.gradeline;

/** How the water runs in a pipe. */
public enum PipeState {
    /** No water flows in it. */
    NO_FLOW,
    /** With a free surface, tranquil; what stands downstream is felt upstream. */
    TRANQUIL,
    /** With a free surface and rapid at its upper end; what stands downstream is not felt upstream. */
    RAPID,
    /** Full over a part of its length, with a free surface over the rest. */
    PARTLY_FULL,
    /** Full from end to end. */
    FULL
}
