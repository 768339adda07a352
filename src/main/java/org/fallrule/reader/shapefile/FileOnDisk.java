package org.fallrule.reader.shapefile;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.fallrule.document.Place;

/** A file on disk; a large one is mapped instead of copied. */
final class FileOnDisk extends ShownFile {
    private static final int MAPPED_FROM = 1 << 20;

    private final Path path;

    FileOnDisk(Path path, Place place) {
        super(place);
        this.path = path;
    }

    /** @throws org.fallrule.document.UnusableInput when it is missing, no plain file, unreadable, or 2 GiB or more */
    @Override
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

    static String reason(Exception failed) {
        if (failed instanceof NoSuchFileException) {
            return "there is no such file";
        }
        return failed instanceof AccessDeniedException
                ? "access denied"
                : failed.getClass().getSimpleName();
    }

    private Path plainFile() {
        if (!Files.isRegularFile(path) && Files.exists(path)) {
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
