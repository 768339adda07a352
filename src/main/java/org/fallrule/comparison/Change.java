package org.fallrule.comparison;

import java.util.Locale;

/** How a finding has changed from one state to the next. The order is that of a report. */
public enum Change {
    /** Open, and was not asked of this before: a new feature, a new rule. */
    NEW,
    /** Open, and was settled; or fails by more; or what was known is no longer told. */
    WORSE,
    /** Still open, but by less, or better known. */
    BETTER,
    /** Was open, and is settled or no longer asked. */
    GONE,
    /** As it was: open, or settled. */
    UNCHANGED;

    /** The word in files. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Whether the later state is the worse for it. */
    public boolean isForTheWorse() {
        return this == NEW || this == WORSE;
    }
}
