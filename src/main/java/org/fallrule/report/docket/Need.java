package org.fallrule.report.docket;

import java.util.Locale;

/** What a plan needs from the reviewer, the most urgent first. */
public enum Need {
    /** A rule of weight must fails. */
    BINDING_FAILS("binding rules fail"),
    /** Nothing binding fails, but something is borderline or cannot be told. */
    OPEN("open"),
    /** Only advice is not followed. */
    ADVICE_FAILS("advice not followed"),
    /** The plan could not be checked; that is never a pass. */
    BROKEN("could not be checked"),
    /** Nothing fails and nothing is open. */
    CLEAN("nothing open");

    private final String spoken;

    Need(String spoken) {
        this.spoken = spoken;
    }

    /** The word in files: {@code binding_fails}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The words for people. */
    public String spoken() {
        return spoken;
    }
}
