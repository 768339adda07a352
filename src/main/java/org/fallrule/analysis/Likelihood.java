package org.fallrule.analysis;

import java.util.Locale;

/** How a crossing may be expected to turn out where the depth of the utility is not known. */
public enum Likelihood {
    /** Everywhere in the band that is expected the two come too near. */
    CONFLICT("likely conflict"),
    /** Nowhere in the band do they. */
    CLEAR("likely clear"),
    /** In a part of the band they do, or there is no band. */
    OPEN("open");

    private final String spoken;

    Likelihood(String spoken) {
        this.spoken = spoken;
    }

    public String spoken() {
        return spoken;
    }

    /** The word in files: {@code likely_conflict}. */
    public String word() {
        return spoken.toLowerCase(Locale.ROOT).replace(' ', '_');
    }
}
