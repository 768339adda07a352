package org.fallrule.measure;

/**
 * Water that passes in a time.
 *
 * @param cubicMetresPerSecond the flow in cubic metres per second
 */
public record Flow(double cubicMetresPerSecond) implements Quantity {

    public Flow {
        Quantity.finite(cubicMetresPerSecond);
    }

    @Override
    public double si() {
        return cubicMetresPerSecond;
    }

    @Override
    public Dimension dimension() {
        return Dimension.FLOW;
    }
}
