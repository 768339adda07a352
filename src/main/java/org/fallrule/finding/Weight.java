package org.fallrule.finding;

import java.util.Locale;

/** What hangs on a rule. */
public enum Weight {
    /** Failing it fails the plan. */
    MUST,
    /** Advice. */
    SHOULD,
    /** A fact for whoever builds it: noted, and never held against the plan. */
    NOTE;

    private final String word = name().toLowerCase(Locale.ROOT);

    public String word() {
        return word;
    }
}
