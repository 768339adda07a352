package org.fallrule.report.map;

/**
 * The form of a printed map.
 *
 * @param mapWidth width of the map in screen pixels
 * @param legendWidth width of the legend in screen pixels
 * @param legendBeside whether the legend stands to the right of the map instead of below it
 */
public record Sheet(int mapWidth, int legendWidth, boolean legendBeside) {
    /** An overview on a desktop screen. */
    public static final Sheet WIDE = new Sheet(790, 250, true);

    /** An overview on a telephone. */
    public static final Sheet NARROW = new Sheet(346, 346, false);

    /** An overview on a page of letter size, upright. */
    public static final Sheet PAPER = new Sheet(700, 700, false);

    /** The map of one finding, on either. */
    public static final Sheet SNIPPET = new Sheet(340, 340, false);
}
