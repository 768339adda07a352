package org.fallrule.hydraulics.gradeline;

/**
 * What a pipe loses besides friction, each as a multiple of the velocity head in this pipe.
 *
 * @param exit where it enters the node downstream: 1 when all its speed is lost there, 0 when it is carried on; to 1
 * @param bend in its bends, zero or more
 * @param entrance where it leaves the node upstream, or for the whole structure there; zero or more
 */
public record LocalLosses(double exit, double bend, double entrance) {
    /** HEC-22, third edition, equation 7-8: so much of the velocity head is lost for each degree of a bend (from memory). */
    private static final double PER_DEGREE = 0.0033;

    public LocalLosses {
        if (!(exit >= 0 && exit <= 1 && bend >= 0 && entrance >= 0)) {
            throw new IllegalArgumentException("losses must be zero or more and that of the exit at most 1, were exit "
                    + exit + ", bend " + bend + ", entrance " + entrance);
        }
    }

    /** A pipe from one box to another, in which the water comes to rest. */
    public static LocalLosses betweenBoxes(double entrance) {
        return new LocalLosses(1, 0, entrance);
    }

    /** A pipe between structures whose loss as a whole is given as a multiple of the leaving pipe's velocity head. */
    public static LocalLosses throughStructure(double structure) {
        return new LocalLosses(0, 0, structure);
    }

    /** These losses and that of bends of so many degrees in all. */
    public LocalLosses withBends(double degrees) {
        return new LocalLosses(exit, bend + PER_DEGREE * Math.abs(degrees), entrance);
    }
}
