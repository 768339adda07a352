package org.fallrule.filter;

/** The answer to a condition. What the plan does not say is neither true nor false (S. C. Kleene, 1938). */
public enum Truth {
    TRUE,
    FALSE,
    UNKNOWN;

    public static Truth of(boolean value) {
        return value ? TRUE : FALSE;
    }

    public Truth and(Truth other) {
        if (this == FALSE || other == FALSE) {
            return FALSE;
        }
        return this == TRUE && other == TRUE ? TRUE : UNKNOWN;
    }

    public Truth or(Truth other) {
        return not().and(other.not()).not();
    }

    public Truth not() {
        return switch (this) {
            case TRUE -> FALSE;
            case FALSE -> TRUE;
            case UNKNOWN -> UNKNOWN;
        };
    }
}
