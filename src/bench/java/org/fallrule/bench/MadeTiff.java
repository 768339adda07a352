package org.fallrule.bench;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.Deflater;

/**
 * Writes a GeoTIFF of 32-bit heights in deflated strips (TIFF Revision 6.0, Adobe 1992, section 2; OGC 19-008r4, 2019, section
 * 7), as GIS programs write them unless told otherwise.
 */
final class MadeTiff {
    private static final int ROWS_PER_STRIP = 8;
    private static final int SHORT = 3;
    private static final int LONG = 4;
    private static final int DOUBLE = 12;

    /** A tag with its values, ready to be read. */
    private record Tag(int number, int type, int count, ByteBuffer value) {}

    private final int size;
    private final List<Tag> tags = new ArrayList<>();

    private MadeTiff(int size) {
        this.size = size;
    }

    /** The height in metres of the cell in a column and row, rows counted from the north. */
    interface Heights {
        double at(int column, int row);
    }

    /**
     * Writes a square raster of metres.
     *
     * @param size cells on each side
     * @param cell metres on each side of a cell
     * @param left the west edge in the projected system
     * @param top the north edge
     * @param epsg the code of the system
     */
    static void write(Path file, Heights heights, int size, double cell, double left, double top, int epsg)
            throws IOException {
        MadeTiff tiff = new MadeTiff(size);
        ByteBuffer content = little(8 + 5 * size * size + 100_000);
        content.put((byte) 'I').put((byte) 'I').putShort((short) 42).putInt(0);
        tiff.putPixels(content, heights);
        tiff.doubles(33550, cell, cell, 0);
        tiff.doubles(33922, 0, 0, 0, left, top, 0);
        tiff.shorts(34735, 1, 1, 1, 4, 1024, 0, 1, 1, 1025, 0, 1, 1, 3072, 0, 1, epsg, 4099, 0, 1, 9001);
        tiff.putDirectory(content);
        try (FileChannel channel = FileChannel.open(
                file, StandardOpenOption.CREATE, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING)) {
            channel.write(content.flip());
        }
    }

    private void putPixels(ByteBuffer content, Heights heights) {
        int strips = (size + ROWS_PER_STRIP - 1) / ROWS_PER_STRIP;
        ByteBuffer offsets = little(4 * strips);
        ByteBuffer lengths = little(4 * strips);
        for (int strip = 0; strip < strips; strip++) {
            offsets.putInt(content.position());
            Deflater packer = new Deflater();
            packer.setInput(strip(heights, strip * ROWS_PER_STRIP));
            packer.finish();
            lengths.putInt(packer.deflate(content));
            packer.end();
        }
        shorts(256, size);
        shorts(257, size);
        shorts(258, 32);
        shorts(259, 8);
        shorts(262, 1);
        tags.add(new Tag(273, LONG, strips, offsets.flip()));
        shorts(277, 1);
        shorts(278, ROWS_PER_STRIP);
        tags.add(new Tag(279, LONG, strips, lengths.flip()));
        shorts(339, 3);
    }

    private ByteBuffer strip(Heights heights, int first) {
        int rows = Math.min(ROWS_PER_STRIP, size - first);
        ByteBuffer strip = little(4 * size * rows);
        for (int row = first; row < first + rows; row++) {
            for (int column = 0; column < size; column++) {
                strip.putFloat((float) heights.at(column, row));
            }
        }
        return strip.flip();
    }

    private void putDirectory(ByteBuffer content) {
        content.position(content.position() + content.position() % 2);
        content.putInt(4, content.position());
        int more = content.position() + 2 + 12 * tags.size() + 4;
        content.putShort((short) tags.size());
        for (Tag tag : tags) {
            content.putShort((short) tag.number).putShort((short) tag.type).putInt(tag.count);
            int next = content.position() + 4;
            int bytes = tag.value.remaining();
            if (bytes <= 4) {
                content.put(tag.value).position(next);
            } else {
                content.putInt(more).position(more).put(tag.value).position(next);
                more += bytes;
            }
        }
        content.putInt(0).position(more);
    }

    private void shorts(int number, int... values) {
        ByteBuffer bytes = little(2 * values.length);
        for (int value : values) {
            bytes.putShort((short) value);
        }
        tags.add(new Tag(number, SHORT, values.length, bytes.flip()));
    }

    private void doubles(int number, double... values) {
        ByteBuffer bytes = little(8 * values.length);
        for (double value : values) {
            bytes.putDouble(value);
        }
        tags.add(new Tag(number, DOUBLE, values.length, bytes.flip()));
    }

    private static ByteBuffer little(int bytes) {
        return ByteBuffer.allocate(bytes).order(ByteOrder.LITTLE_ENDIAN);
    }
}
