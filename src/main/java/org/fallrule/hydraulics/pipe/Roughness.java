package org.fallrule.hydraulics.pipe;

/**
 * How rough a pipe is inside, as Manning's n. By custom a number without a unit, the same in both systems; its true unit is
 * s/m^(1/3).
 *
 * @param n Manning's n, above 0 and below 1; {@link IllegalArgumentException} otherwise
 */
public record Roughness(double n) {

    public Roughness {
        if (!(n > 0 && n < 1)) {
            throw new IllegalArgumentException("Manning's n must lie between 0 and 1, such as 0.012, was " + n);
        }
    }
}
