package org.fallrule.reader.shapefile;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import org.fallrule.document.Nearest;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;

/**
 * The files of one shapefile in a zip file, unpacked into memory. What the zip file says of lengths is not believed: bytes are counted
 * as they come, up to {@value #MOST_BYTES} for all files of the layer together. Nothing is unpacked to disk.
 */
final class ZippedFiles implements Companions {
    /** 256 MiB. */
    static final int MOST_BYTES = 256 << 20;

    private static final int MOST_ENTRIES = 10_000;
    private static final Set<String> WANTED = Set.of("shp", "shx", "dbf", "prj", "cpg");
    private static final Pattern LEADS_OUT =
            Pattern.compile("(?:.*[/\\\\])?\\.\\.(?:[/\\\\].*)?|[/\\\\].*|[A-Za-z]:.*");
    private static final Pattern OF_THE_ARCHIVER = Pattern.compile("__MACOSX/.*|(?:.*/)?\\._[^/]*");

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
            return shapefiles(new ZippedFiles(place).names(file));
        } catch (IOException | IllegalArgumentException broken) {
            throw new UnusableInput(
                    place, "is no zip file that can be read (" + broken.getMessage() + "); zip or copy it again");
        }
    }

    private List<String> names(ZipFile zip) {
        if (zip.size() > MOST_ENTRIES) {
            throw new UnusableInput(
                    place, "holds " + zip.size() + " files, wanted at most " + MOST_ENTRIES + "; zip the layer alone");
        }
        List<String> names = zip.stream()
                .filter(entry -> !entry.isDirectory())
                .map(ZipEntry::getName)
                .filter(name -> !OF_THE_ARCHIVER.matcher(name).matches())
                .toList();
        names.stream()
                .filter(name -> LEADS_OUT.matcher(name).matches())
                .findFirst()
                .ifPresent(this::refuse);
        return names;
    }

    private static List<String> shapefiles(List<String> names) {
        return names.stream()
                .filter(name -> extension(name).equals("shp"))
                .map(ZippedFiles::stem)
                .toList();
    }

    private void unpack(ZipFile zip, Optional<String> layer) throws IOException {
        List<String> names = names(zip);
        String chosen = choose(shapefiles(names), layer);
        for (String name : names) {
            String extension = extension(name);
            if (WANTED.contains(extension)
                    && stem(name).equalsIgnoreCase(chosen)
                    && (stem(name).equals(chosen) || !files.containsKey(extension))) {
                files.put(extension, new HeldFile(unpacked(zip, name), Place.of(place.file() + "/" + base(name))));
            }
        }
    }

    private void refuse(String name) {
        throw new UnusableInput(
                place, "holds a file " + name + ", which leads out of it; zip the layer's files again without folders");
    }

    private String choose(List<String> stems, Optional<String> wanted) {
        List<String> shown = stems.stream().map(ZippedFiles::base).toList();
        if (stems.isEmpty()) {
            throw new UnusableInput(
                    place, "holds no shapefile (.shp); zip the .shp with its .shx, .dbf and .prj, or unpack it");
        }
        if (wanted.isEmpty() && stems.size() > 1) {
            throw new UnusableInput(
                    place,
                    "holds " + stems.size() + " shapefiles: " + String.join(", ", shown)
                            + "; say in site.yaml which one it is, such as {file: " + place.file() + ", table: "
                            + shown.get(0) + "}");
        }
        if (wanted.isEmpty()) {
            return stems.get(0);
        }
        String word = wanted.get().replaceFirst("(?i)\\.shp$", "");
        List<String> found = stems.stream()
                .filter(stem -> stem.equalsIgnoreCase(word) || base(stem).equalsIgnoreCase(word))
                .toList();
        if (found.size() == 1) {
            return found.get(0);
        }
        throw new UnusableInput(
                place,
                found.isEmpty()
                        ? "holds no shapefile " + word + Nearest.hint(word, shown) + " It has "
                                + String.join(", ", shown)
                        : "holds several shapefiles " + word + ": " + String.join(", ", found)
                                + "; name it with its folder");
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

    private static String extension(String name) {
        return name.substring(stem(name).length()).replace(".", "").toLowerCase(Locale.ROOT);
    }

    private static String stem(String name) {
        int dot = name.lastIndexOf('.');
        return dot > name.lastIndexOf('/') ? name.substring(0, dot) : name;
    }

    private static String base(String name) {
        return name.substring(name.lastIndexOf('/') + 1);
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
