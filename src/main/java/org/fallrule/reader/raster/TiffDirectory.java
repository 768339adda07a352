package org.fallrule.reader.raster;

import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The first directory of a TIFF file (Adobe, TIFF Revision 6.0, 1992, section 2; BigTIFF as in its design, from memory).
 * Counts and offsets are held against the file's length before anything is allocated.
 */
final class TiffDirectory {
    private static final int MOST_ENTRIES = 4096;
    private static final long MOST_BYTES = 64_000_000;

    /** The bytes in one value of each type, by the type's number; 0 where there is no such type. */
    private static final int[] SIZES = {0, 1, 1, 2, 4, 8, 1, 1, 2, 4, 8, 4, 8, 4, 0, 0, 8, 8, 8};

    private record Entry(int type, int count, ByteBuffer bytes) {}

    private final Map<Integer, Entry> entries = new LinkedHashMap<>();
    private final FileChannel channel;
    private final long length;
    private long taken;
    private ByteOrder order = ByteOrder.LITTLE_ENDIAN;

    private TiffDirectory(FileChannel channel) throws IOException {
        this.channel = channel;
        this.length = channel.size();
    }

    /**
     * Reads a file's first directory.
     *
     * @throws IOException with what was found and wanted when it is no TIFF file, or a broken one
     */
    static TiffDirectory read(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file)) {
            TiffDirectory directory = new TiffDirectory(channel);
            directory.readHeader();
            return directory;
        }
    }

    long fileLength() {
        return length;
    }

    private void readHeader() throws IOException {
        ByteBuffer header = bytes(0, 8);
        short mark = header.getShort(0);
        if (mark != 0x4949 && mark != 0x4D4D) {
            throw new IOException("does not begin as a TIFF file does (II or MM)");
        }
        order = mark == 0x4949 ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN;
        header.order(order);
        int version = header.getShort(2);
        if (version == 42) {
            readEntries(Integer.toUnsignedLong(header.getInt(4)), false);
        } else if (version == 43) {
            readEntries(bytes(8, 8).getLong(0), true);
        } else {
            throw new IOException("has the TIFF version " + version + "; wanted 42 or 43");
        }
    }

    private void readEntries(long offset, boolean big) throws IOException {
        int countSize = big ? 8 : 2;
        ByteBuffer counted = bytes(offset, countSize);
        long count = big ? counted.getLong(0) : Short.toUnsignedInt(counted.getShort(0));
        if (count < 1 || count > MOST_ENTRIES) {
            throw new IOException("claims " + count + " entries in its directory; wanted 1 to " + MOST_ENTRIES);
        }
        int size = big ? 20 : 12;
        ByteBuffer table = bytes(offset + countSize, count * size);
        for (int i = 0; i < count; i++) {
            readEntry(table, i * size, big);
        }
    }

    private void readEntry(ByteBuffer table, int at, boolean big) throws IOException {
        int tag = Short.toUnsignedInt(table.getShort(at));
        int type = Short.toUnsignedInt(table.getShort(at + 2));
        long count = big ? table.getLong(at + 4) : Integer.toUnsignedLong(table.getInt(at + 4));
        int size = type < SIZES.length ? SIZES[type] : 0;
        if (size == 0) {
            return;
        }
        if (count < 0 || count > MOST_BYTES / size) {
            throw new IOException("claims " + count + " values for its tag " + tag);
        }
        int inline = big ? 8 : 4;
        int value = at + (big ? 12 : 8);
        long bytes = count * size;
        taken += bytes;
        if (taken > length) {
            throw new IOException("claims more bytes of values for its tags than it has; it seems broken");
        }
        ByteBuffer data = bytes <= inline
                ? table.slice(value, (int) bytes).order(order)
                : bytes(big ? table.getLong(value) : Integer.toUnsignedLong(table.getInt(value)), bytes);
        entries.put(tag, new Entry(type, (int) count, data));
    }

    private ByteBuffer bytes(long offset, long count) throws IOException {
        if (offset < 0 || count < 0 || offset > length - count) {
            throw new EOFException(
                    "ends at byte " + length + "; wanted " + count + " bytes at byte " + offset + "; it seems cut off");
        }
        ByteBuffer buffer = ByteBuffer.allocate((int) count).order(order);
        while (buffer.hasRemaining()) {
            if (channel.read(buffer, offset + buffer.position()) < 0) {
                throw new EOFException("ends early; it seems cut off");
            }
        }
        return buffer.flip().order(order);
    }

    boolean has(int tag) {
        return entries.containsKey(tag);
    }

    /** A tag's values as whole numbers; none when the tag is missing or of another type. */
    long[] wholes(int tag) {
        Entry entry = entries.get(tag);
        if (entry == null || !isWhole(entry.type)) {
            return new long[0];
        }
        long[] values = new long[entry.count];
        for (int i = 0; i < values.length; i++) {
            values[i] = switch (SIZES[entry.type]) {
                case 1 -> Byte.toUnsignedInt(entry.bytes.get(i));
                case 2 -> Short.toUnsignedInt(entry.bytes.getShort(2 * i));
                case 4 -> Integer.toUnsignedLong(entry.bytes.getInt(4 * i));
                default -> entry.bytes.getLong(8 * i);
            };
        }
        return values;
    }

    private static boolean isWhole(int type) {
        return type == 1 || type == 3 || type == 4 || type == 13 || type == 16 || type == 18;
    }

    /** The first value of a tag, or the one that the format gives to a missing tag. */
    long whole(int tag, long missing) {
        long[] values = wholes(tag);
        return values.length == 0 ? missing : values[0];
    }

    /** A tag's values of type DOUBLE; none when the tag is missing or of another type. */
    double[] doubles(int tag) {
        Entry entry = entries.get(tag);
        double[] values = new double[entry == null || entry.type != 12 ? 0 : entry.count];
        for (int i = 0; entry != null && i < values.length; i++) {
            values[i] = entry.bytes.getDouble(8 * i);
        }
        return values;
    }

    Optional<String> text(int tag) {
        Entry entry = entries.get(tag);
        if (entry == null || entry.type != 2) {
            return Optional.empty();
        }
        byte[] bytes = new byte[entry.count];
        entry.bytes.get(0, bytes);
        return Optional.of(new String(bytes, StandardCharsets.UTF_8).replace("\0", ""));
    }
}
