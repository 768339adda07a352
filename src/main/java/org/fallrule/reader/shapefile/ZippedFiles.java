package org.fallrule.reader.shapefile;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;

/**
 * The files of one shapefile in a zip file, unpacked into memory. What the zip file says of lengths is not believed: bytes are counted
 * as they come, up to {@value #MOST_BYTES} for all files of the layer together. Nothing is unpacked to disk.
 */
final class ZippedFiles implements Companions {
    /** 256 MiB. */
    static final int MOST_BYTES = 256 << 20;

    private final Place place;
    private final Map<String, ShownFile> files = new HashMap<>();
    private long bytes;

    private ZippedFiles(Place place) {
        this.place = place;
    }

    static ZippedFiles open(Path zip, Place place, Optional<String> layer) {
        try (ZipFile file = opened(zip)) {
            ZippedFiles files = new ZippedFiles(place);
            files.unpack(file, layer);
            return files;
        } catch (ZipException | IllegalArgumentException broken) {
            throw new UnusableInput(
                    place, "is no zip file that can be read (" + broken.getMessage() + "); zip or copy it again");
        } catch (IOException failed) {
            throw new UnusableInput(
                    place,
                    "cannot be read (" + FileOnDisk.reason(failed) + "); check that the file is there and readable");
        }
    }

    /** Names are UTF-8, or of an older archiver's code page, in which any byte is a letter. */
    private static ZipFile opened(Path zip) throws IOException {
        try {
            return new ZipFile(zip.toFile());
        } catch (ZipException otherNames) {
            return new ZipFile(zip.toFile(), StandardCharsets.ISO_8859_1);
        }
    }

    /** The shapefiles in a zip file, with their folders, without {@code .shp}. */
    static List<String> layers(Path zip, Place place) {
        try (ZipFile file = opened(zip)) {
            return ZipContents.of(file, place).shapefiles();
        } catch (IOException | IllegalArgumentException broken) {
            throw new UnusableInput(
                    place, "is no zip file that can be read (" + broken.getMessage() + "); zip or copy it again");
        }
    }

    private void unpack(ZipFile zip, Optional<String> layer) throws IOException {
        ZipContents contents = ZipContents.of(zip, place);
        Map<String, String> names = contents.filesOf(contents.shapefile(layer));
        for (Map.Entry<String, String> named : names.entrySet()) {
            Place shown = Place.of(place.file() + "/" + ZipContents.base(named.getValue()));
            files.put(named.getKey(), new HeldFile(unpacked(zip, named.getValue()), shown));
        }
    }

    private byte[] unpacked(ZipFile zip, String name) throws IOException {
        try (InputStream in = zip.getInputStream(zip.getEntry(name))) {
            byte[] content = in.readNBytes((int) (MOST_BYTES - bytes + 1));
            bytes += content.length;
            if (bytes > MOST_BYTES) {
                throw new UnusableInput(
                        place,
                        "unpacks to more than " + (MOST_BYTES >> 20)
                                + " MiB; unpack it, or export the part around the site");
            }
            return content;
        }
    }

    @Override
    public ShownFile main() {
        return find("shp").orElseThrow();
    }

    @Override
    public Optional<ShownFile> find(String extension) {
        return Optional.ofNullable(files.get(extension));
    }

    /** A file that is in memory. */
    private static final class HeldFile extends ShownFile {
        private final byte[] content;

        HeldFile(byte[] content, Place place) {
            super(place);
            this.content = content;
        }

        @Override
        ByteBuffer bytes() {
            return ByteBuffer.wrap(content).order(ByteOrder.LITTLE_ENDIAN);
        }
    }
}
