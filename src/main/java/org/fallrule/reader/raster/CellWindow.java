package org.fallrule.reader.raster;

/**
 * A rectangle of a raster's cells.
 *
 * @param column the first column, counted from 0 at the left
 * @param row the first row, counted from 0 at the top
 * @param columns how many columns, at least one
 * @param rows how many rows, at least one
 */
record CellWindow(int column, int row, int columns, int rows) {
    /** So many heights take 200 MB; a lot and its surroundings need far fewer. */
    static final long MOST_CELLS = 25_000_000;

    long cells() {
        return (long) columns * rows;
    }
}
