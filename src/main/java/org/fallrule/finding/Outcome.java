package org.fallrule.finding;

import java.util.Locale;
import org.fallrule.measure.Standing;

/** How a plan stands to a rule. Not checked is never a pass. */
public enum Outcome {
    FAILS,
    /** The accuracy of the survey reaches across the limit. */
    BORDERLINE,
    /** The plan does not say enough; what is missing is named. */
    CANNOT_TELL,
    MEETS,
    /** The plan has nothing that the rule speaks of, and says so. */
    NOT_APPLICABLE,
    /** An authority has excused it. */
    WAIVED;

    private final String word = name().toLowerCase(Locale.ROOT);

    public static Outcome of(Standing standing) {
        return switch (standing) {
            case MEETS -> MEETS;
            case FAILS -> FAILS;
            case BORDERLINE -> BORDERLINE;
        };
    }

    /** Whether a person has to look at it: it fails, the survey cannot decide it, or the plan does not say enough. */
    public boolean isOpen() {
        return this == FAILS || this == BORDERLINE || this == CANNOT_TELL;
    }

    /** The word in files: {@code cannot_tell}. */
    public String word() {
        return word;
    }

    /** The word in sentences: {@code cannot tell}. */
    public String spoken() {
        return word().replace('_', ' ');
    }
}
