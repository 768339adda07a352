package org.fallrule.intake;

/** How sure it is what something stands for. */
public enum Sureness {
    /** Its name says it, and nothing speaks against it; or a person said it. */
    CERTAIN("certain"),
    /** Only one meaning fits, but its name alone does not say it. */
    LIKELY("likely"),
    /** It is left open. */
    ASKS("asks");

    private final String spoken;

    Sureness(String spoken) {
        this.spoken = spoken;
    }

    public String spoken() {
        return spoken;
    }

    Sureness and(Sureness other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
