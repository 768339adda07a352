package org.fallrule.locality;

/**
 * What the rule books say of the place that a plan lies in, for calculations that no single rule owns.
 *
 * @param climate its climate and usual soil
 */
public record Locality(Climate climate) {

    /** A place of which no book says anything. */
    public static final Locality UNSAID = new Locality(Climate.UNSAID);

    /** This locality with what a later book says laid over it, key by key. */
    public Locality overlaid(Locality over) {
        return new Locality(climate.overlaid(over.climate));
    }
}
