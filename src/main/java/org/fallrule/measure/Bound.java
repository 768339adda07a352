package org.fallrule.measure;

/** Which side of a limit is the good side. The limit itself is good on both. */
public enum Bound {
    AT_LEAST("at least"),
    AT_MOST("at most");

    private final String words;

    Bound(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** How far a value misses the limit, in SI; zero or less when it does not. */
    double shortfall(double value, double limit) {
        return this == AT_LEAST ? limit - value : value - limit;
    }
}
