package org.fallrule.reader.raster;

import java.io.IOException;

/** How a TIFF file's pixels are stored, checked so that decoding cannot be led to allocate or read beyond reason. */
final class TiffLayout {
    private static final long MOST_BLOCK_BYTES = 128_000_000;
    private static final long FLOATING = 3;
    private static final long UNSIGNED = 1;

    private final TiffDirectory tiff;
    private final long columns;
    private final long rows;
    private final long bits;

    TiffLayout(TiffDirectory tiff) throws IOException {
        this.tiff = tiff;
        this.columns = tiff.whole(TiffTag.IMAGE_WIDTH, 0);
        this.rows = tiff.whole(TiffTag.IMAGE_LENGTH, 0);
        this.bits = tiff.whole(TiffTag.BITS_PER_SAMPLE, 1);
        checkSize();
        checkSamples();
        checkBlocks();
    }

    int columns() {
        return (int) columns;
    }

    int rows() {
        return (int) rows;
    }

    /** Whether values are single precision, to which the value that stands for none is rounded as well. */
    boolean isSingle() {
        return bits == 32 && tiff.whole(TiffTag.SAMPLE_FORMAT, UNSIGNED) == FLOATING;
    }

    /** Whether values are unsigned whole numbers of 32 bits, which the decoder hands out as signed ones. */
    boolean isUnsigned32() {
        return bits == 32 && tiff.whole(TiffTag.SAMPLE_FORMAT, UNSIGNED) == UNSIGNED;
    }

    private void checkSize() throws IOException {
        if (columns < 1 || rows < 1 || columns > 10_000_000 || rows > 10_000_000) {
            throw new IOException(
                    "claims " + columns + " columns and " + rows + " rows; wanted each to be 1 to 10,000,000");
        }
    }

    private void checkSamples() throws IOException {
        long bands = tiff.whole(TiffTag.SAMPLES_PER_PIXEL, 1);
        if (bands != 1) {
            throw new IOException("has " + bands + " bands, as pictures have; wanted one band of heights");
        }
        long format = tiff.whole(TiffTag.SAMPLE_FORMAT, UNSIGNED);
        boolean floating = format == FLOATING && (bits == 32 || bits == 64);
        boolean whole = (format == UNSIGNED || format == 2) && (bits == 8 || bits == 16 || bits == 32);
        if (!floating && !whole) {
            throw new IOException("stores its values in " + bits + " bits of format " + format
                    + "; wanted whole numbers of 8, 16 or 32 bits or floating point of 32 or 64");
        }
    }

    private void checkBlocks() throws IOException {
        boolean tiled = tiff.has(TiffTag.TILE_OFFSETS);
        long width = tiled ? tiff.whole(TiffTag.TILE_WIDTH, 0) : columns;
        long height =
                tiled ? tiff.whole(TiffTag.TILE_LENGTH, 0) : Math.min(rows, tiff.whole(TiffTag.ROWS_PER_STRIP, rows));
        if (width < 1 || height < 1 || width * height > MOST_BLOCK_BYTES / (bits / 8)) {
            throw new IOException("stores its pixels in blocks of " + width + " by " + height
                    + ", which is more than is read; write it with tiles");
        }
        long blocks = ((columns + width - 1) / width) * ((rows + height - 1) / height);
        checkBlocks(
                tiff.wholes(tiled ? TiffTag.TILE_OFFSETS : TiffTag.STRIP_OFFSETS),
                tiff.wholes(tiled ? TiffTag.TILE_BYTE_COUNTS : TiffTag.STRIP_BYTE_COUNTS),
                blocks);
    }

    private void checkBlocks(long[] offsets, long[] counts, long blocks) throws IOException {
        if (offsets.length != blocks || counts.length != blocks) {
            throw new IOException("lists " + offsets.length + " places and " + counts.length
                    + " sizes of blocks of pixels; wanted " + blocks);
        }
        for (int i = 0; i < offsets.length; i++) {
            if (offsets[i] < 0 || counts[i] < 0 || offsets[i] > tiff.fileLength() - counts[i]) {
                throw new IOException("ends at byte " + tiff.fileLength() + "; its pixels go on to byte "
                        + (offsets[i] + counts[i]) + "; it seems cut off");
            }
        }
    }
}
