package org.fallrule.report.map;

import org.locationtech.jts.geom.Envelope;

/** How much of the plan a map shows. */
final class Extent {
    private Extent() {}

    /** The envelope grown on all sides by a share of its larger side, and to a least width and height in metres. */
    static Envelope roomy(Envelope envelope, double share, double leastMetres) {
        Envelope roomy = envelope.copy();
        roomy.expandBy(share * Math.max(envelope.getWidth(), envelope.getHeight()));
        return atLeast(roomy, leastMetres, leastMetres);
    }

    /** The envelope grown until its height over its width lies between two bounds. */
    static Envelope shaped(Envelope envelope, double flattest, double tallest) {
        return atLeast(envelope, envelope.getHeight() / tallest, envelope.getWidth() * flattest);
    }

    private static Envelope atLeast(Envelope envelope, double width, double height) {
        Envelope grown = envelope.copy();
        grown.expandBy(Math.max(0, width - grown.getWidth()) / 2, Math.max(0, height - grown.getHeight()) / 2);
        return grown;
    }
}
