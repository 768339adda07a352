package org.fallrule.report.checklist;

import java.util.Locale;

/** How an item of a checklist stands. Missing is never a pass. */
public enum Standing {
    SHOWN,
    STATED_ABSENT,
    MISSING,
    TO_BE_SHOWN_BY_HAND;

    /** The word in files. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The words in a report. */
    public String spoken() {
        return word().replace('_', ' ');
    }
}
