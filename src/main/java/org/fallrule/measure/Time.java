package org.fallrule.measure;

/**
 * A span of time, such as the duration of a rain.
 *
 * @param seconds the time in seconds
 */
public record Time(double seconds) implements Quantity {

    public Time {
        Quantity.finite(seconds);
    }

    @Override
    public double si() {
        return seconds;
    }

    @Override
    public Dimension dimension() {
        return Dimension.TIME;
    }
}
