package org.fallrule.bench;

import java.util.Random;

/**
 * Made-up ground: it falls southward by 2 %, in waves of a few inches, with a hollow for the basin behind the house, and is
 * as rough as measured ground is. The same seed gives the same ground.
 */
final class MadeGround {
    private static final double FALL = 0.02;
    private static final double WAVE = 0.08;
    private static final double ROUGH = 0.01;

    private final Random random;

    MadeGround(long seed) {
        this.random = new Random(seed);
    }

    /** Metres, without roughness, at a place in metres east and north of the lot's corner. */
    static double height(double x, double y) {
        double waves = WAVE * Math.sin(x / 7) * Math.cos(y / 9);
        double hollow = 0.4 * Math.exp(-Math.pow(Math.hypot(x - MadePlan.BASIN_X, y - MadePlan.BASIN_Y) / 3, 2));
        return 100 + FALL * y + waves - hollow;
    }

    /** Metres, with roughness. */
    double measured(double x, double y) {
        return height(x, y) + ROUGH * random.nextGaussian();
    }

    /** A share of 0 to 1, to shift a surveyed place by. */
    double shift() {
        return random.nextDouble();
    }
}
