package org.fallrule.report.map;

/**
 * A colour as it stands on a light and on a dark ground.
 *
 * @param light CSS colour on a light ground and on paper
 * @param dark CSS colour on a dark ground
 */
public record Tone(String light, String dark) {
    /** Nothing is painted. */
    public static final Tone NONE = new Tone("none", "none");

    public boolean isNone() {
        return this.equals(NONE);
    }
}
