package org.fallrule.hydraulics.mechanics;

/** The constants of fresh water that the methods of hydraulics use. */
public final class Water {
    /** Standard acceleration of gravity, 9.80665 m/s² (NIST SP 811, 2008 edition, appendix B.8); 32.17 ft/s². */
    public static final double GRAVITY = 9.80665;

    /** Mass of a cubic metre in kg: 62.4 lb/ft³, as handbooks of the trade print it. Sea water is 2.5 % heavier. */
    public static final double DENSITY = 62.4 * 0.45359237 / (0.3048 * 0.3048 * 0.3048);

    private Water() {}

    /** The speed in m/s that water gains in falling so many metres: {@code sqrt(2 g h)}. */
    public static double speedAfterFall(double metres) {
        return Math.sqrt(2 * GRAVITY * metres);
    }

    /** The height in metres that water at such a speed in m/s would rise to: {@code V^2 / 2 g}. */
    public static double velocityHead(double metresPerSecond) {
        return metresPerSecond * metresPerSecond / (2 * GRAVITY);
    }
}
