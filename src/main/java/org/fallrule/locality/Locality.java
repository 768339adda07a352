package org.fallrule.locality;

/**
 * What the rule books say of the place that a plan lies in, for calculations that no single rule owns.
 *
 * @param climate its climate and usual soil
 * @param storm the rain to design for
 * @param runoff how much of it runs off
 * @param markAccuracy how well marks of utilities are known there
 * @param expectedCover how deep utilities usually lie there
 * @param laying how a line is laid there
 */
public record Locality(
        Climate climate,
        Storm storm,
        Runoff runoff,
        MarkAccuracy markAccuracy,
        ExpectedCover expectedCover,
        Laying laying) {

    /** A place of which no book says how lines are laid. */
    public Locality(
            Climate climate, Storm storm, Runoff runoff, MarkAccuracy markAccuracy, ExpectedCover expectedCover) {
        this(climate, storm, runoff, markAccuracy, expectedCover, Laying.UNSAID);
    }

    /** A place of which no book says anything. */
    public static final Locality UNSAID =
            new Locality(Climate.UNSAID, Storm.UNSAID, Runoff.UNSAID, MarkAccuracy.UNSAID, ExpectedCover.UNSAID);

    /** This locality with what a later book says laid over it, key by key. */
    public Locality overlaid(Locality over) {
        return new Locality(
                climate.overlaid(over.climate),
                storm.overlaid(over.storm),
                runoff.overlaid(over.runoff),
                markAccuracy.overlaid(over.markAccuracy),
                expectedCover.overlaid(over.expectedCover),
                laying.overlaid(over.laying));
    }

    /** This locality with the rain that a site states for itself laid over it. */
    public Locality with(Storm site) {
        return new Locality(climate, storm.overlaid(site), runoff, markAccuracy, expectedCover, laying);
    }
}
