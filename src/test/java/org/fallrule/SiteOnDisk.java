package org.fallrule;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** A site folder that a test writes file by file. */
public final class SiteOnDisk {
    private final Path folder;

    private SiteOnDisk(Path folder) {
        this.folder = folder;
    }

    /** A new folder in a place. */
    public static SiteOnDisk in(Path place, String name) {
        return new SiteOnDisk(made(place.resolve(name)));
    }

    /** A copy of a folder of sample-sites, to be changed. */
    public static SiteOnDisk copied(String sample, Path place) {
        SiteOnDisk site = in(place, sample);
        try (Stream<Path> files = Files.list(Path.of("sample-sites", sample))) {
            for (Path file : files.toList()) {
                Files.copy(file, site.folder.resolve(file.getFileName()));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return site;
    }

    public Path path() {
        return folder;
    }

    public Path path(String file) {
        return folder.resolve(file);
    }

    public SiteOnDisk with(String file, String text) {
        try {
            Files.writeString(folder.resolve(file), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return this;
    }

    public SiteOnDisk without(String file) {
        try {
            Files.delete(folder.resolve(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return this;
    }

    /** Replaces a text in a file; it has to be there. */
    public SiteOnDisk replacing(String file, String what, String by) {
        try {
            String text = Files.readString(folder.resolve(file));
            if (!text.contains(what)) {
                throw new IllegalArgumentException(file + " does not hold " + what);
            }
            return with(file, text.replace(what, by));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A GeoJSON file of features as {@link #feature} gives them. */
    public SiteOnDisk layer(String file, String... features) {
        return with(
                file, "{\"type\": \"FeatureCollection\", \"features\": [\n" + String.join(",\n", features) + "\n]}\n");
    }

    /**
     * A GeoJSON feature.
     *
     * @param properties the inside of its properties, with ' for "
     * @param type the geometry's type
     * @param coordinates its coordinates
     */
    public static String feature(String properties, String type, String coordinates) {
        return ("{'type': 'Feature', 'properties': {" + properties + "}, 'geometry': {'type': '" + type
                        + "', 'coordinates': " + coordinates + "}}")
                .replace('\'', '"');
    }

    private static Path made(Path folder) {
        try {
            return Files.createDirectories(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
