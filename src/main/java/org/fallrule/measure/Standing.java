package org.fallrule.measure;

/** How a value stands to a limit. */
public enum Standing {
    MEETS,
    FAILS,
    /** The accuracy of the value reaches across the limit, so that neither can be said. */
    BORDERLINE
}
