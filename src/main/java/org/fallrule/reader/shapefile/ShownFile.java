package org.fallrule.reader.shapefile;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;

/**
 * A file together with the name that the user knows it by.
 *
 * @param path where it is
 * @param place its name in every fault
 */
record ShownFile(Path path, Place place) {
    private static final int MAPPED_FROM = 1 << 20;
    private static final long MOST_TEXT = 1 << 20;

    /**
     * Its whole content, little-endian, from 0 to its end. Large files are mapped instead of copied.
     *
     * @throws UnusableInput when it is missing, no plain file, unreadable, or 2 GiB or more
     */
    ByteBuffer bytes() {
        try (FileChannel channel = FileChannel.open(plainFile(), StandardOpenOption.READ)) {
            long size = channel.size();
            if (size > Integer.MAX_VALUE) {
                throw unusable("is " + size + " bytes long; wanted less than 2 GiB; split the layer");
            }
            ByteBuffer bytes = size < MAPPED_FROM ? copied(channel, (int) size) : mapped(channel, size);
            return bytes.order(ByteOrder.LITTLE_ENDIAN);
        } catch (IOException failed) {
            throw unusable("cannot be read (" + reason(failed) + "); check that the file is there and readable");
        }
    }

    /**
     * Its content as text: UTF-8 where it is that, else ISO 8859-1, without a byte order mark and outer blanks.
     *
     * @throws UnusableInput as {@link #bytes()}, and when it is too long to be the short text that is wanted
     */
    String text() {
        ByteBuffer bytes = bytes();
        if (bytes.remaining() > MOST_TEXT) {
            throw unusable("is " + bytes.remaining() + " bytes long; wanted a short text; replace it or take it away");
        }
        byte[] raw = new byte[bytes.remaining()];
        bytes.get(raw);
        String utf8 = new String(raw, StandardCharsets.UTF_8);
        String text = utf8.indexOf('\uFFFD') < 0 ? utf8 : new String(raw, StandardCharsets.ISO_8859_1);
        return (text.startsWith("\uFEFF") ? text.substring(1) : text).strip();
    }

    UnusableInput unusable(String says) {
        return new UnusableInput(place, says);
    }

    static String reason(Exception failed) {
        if (failed instanceof NoSuchFileException) {
            return "there is no such file";
        }
        return failed instanceof AccessDeniedException
                ? "access denied"
                : failed.getClass().getSimpleName();
    }

    private Path plainFile() {
        if (Files.exists(path) && !Files.isRegularFile(path)) {
            throw unusable("is not a plain file; name the file itself");
        }
        return path;
    }

    private static ByteBuffer copied(FileChannel channel, int size) throws IOException {
        ByteBuffer bytes = ByteBuffer.allocate(size);
        while (bytes.hasRemaining() && channel.read(bytes) >= 0) {
            // read on until all is there or the file ends
        }
        return bytes.flip();
    }

    private static ByteBuffer mapped(FileChannel channel, long size) throws IOException {
        return channel.map(FileChannel.MapMode.READ_ONLY, 0, size);
    }
}
