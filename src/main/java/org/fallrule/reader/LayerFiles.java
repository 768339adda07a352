package org.fallrule.reader;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.fallrule.document.Nearest;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.layer.RawFeature;
import org.fallrule.reader.layer.RawLayer;

/** The layer files of a site folder, each read once. */
final class LayerFiles {
    /** The endings of rasters, which only a ground can be. */
    static final List<String> RASTER_ENDINGS = List.of(".tif", ".tiff", ".asc");

    private final Path folder;
    private final Map<String, RawLayer> read = new HashMap<>();
    private final Map<Path, List<Path>> entries = new HashMap<>();

    LayerFiles(Path folder) {
        this.folder = folder;
    }

    /** The layer in a file, as the file gives it. */
    RawLayer layer(LayerSpec spec) {
        RawLayer known = read.get(spec.source());
        if (known == null) {
            known = open(spec);
            read.put(spec.source(), known);
        }
        return known;
    }

    /** Whether a file is a raster by its ending. */
    static boolean isRaster(String file) {
        String name = file.toLowerCase(Locale.ROOT);
        return RASTER_ENDINGS.stream().anyMatch(name::endsWith);
    }

    /** The path of a layer's file, which is there and inside of the site folder. */
    Path path(LayerSpec spec) {
        Path file = inside(spec);
        if (!Files.isRegularFile(file)) {
            throw new UnusableInput(
                    spec.place(),
                    "there is no file " + spec.file() + " in the site folder" + backslash(spec)
                            + Nearest.hint(spec.file(), names()));
        }
        refuseLinkOut(file, spec);
        return file;
    }

    private RawLayer open(LayerSpec spec) {
        Path file = checked(spec);
        return format(spec).read(file, spec);
    }

    /** The layer in a file without its features, which are handed on one by one. */
    RawLayer stream(LayerSpec spec, Consumer<RawFeature> features) {
        Path file = checked(spec);
        return format(spec).read(file, spec, features);
    }

    private static LayerFormat format(LayerSpec spec) {
        return LayerFormat.of(spec.file())
                .orElseThrow(() -> new UnusableInput(
                        Place.of(spec.file()),
                        "is not a kind of file that can be read; give " + String.join(", ", LayerFormat.allEndings())));
    }

    private Path checked(LayerSpec spec) {
        Path file = path(spec);
        List<Path> beside = Optional.ofNullable(file.getParent())
                .map(place -> entries.computeIfAbsent(place, LayerFiles::entries))
                .orElse(List.of());
        companions(file, beside).forEach(companion -> refuseLinkOut(companion, spec));
        return file;
    }

    private static String backslash(LayerSpec spec) {
        return spec.file().contains("\\") ? ", or its path has to be written with / and not with \\" : "";
    }

    private Path inside(LayerSpec spec) {
        Path root = folder.toAbsolutePath().normalize();
        try {
            Path file = root.resolve(spec.file()).normalize();
            if (file.startsWith(root)) {
                return file;
            }
        } catch (InvalidPathException e) {
            throw new UnusableInput(
                    spec.place(), "\"" + spec.file() + "\" cannot be a file's name; name the layer's file");
        }
        throw new UnusableInput(spec.place(), spec.file() + " lies outside of the site folder; copy it in");
    }

    private void refuseLinkOut(Path file, LayerSpec spec) {
        refuseLinkOut(file, folder, spec.place());
    }

    /**
     * A link may not lead out of the folder either: a plan from elsewhere could name any file on the computer. What stands in the
     * folder itself and is no link leads nowhere, and following a path costs as much as reading a small file.
     */
    static void refuseLinkOut(Path file, Path folder, Place named) {
        if (folder.toAbsolutePath().equals(file.toAbsolutePath().getParent()) && !Files.isSymbolicLink(file)) {
            return;
        }
        try {
            if (!file.toRealPath().startsWith(folder.toRealPath())) {
                throw new UnusableInput(
                        named,
                        file.getFileName() + " is a link to a place outside of the site folder; copy the file in");
            }
        } catch (IOException e) {
            throw new UnusableInput(named, file.getFileName() + " cannot be read (" + e + "); check the file");
        }
    }

    /** The files beside a layer's that differ from it in the ending only, upper and lower case alike; some are read with it. */
    static List<Path> companions(Path shp) {
        return Optional.ofNullable(shp.getParent())
                .map(place -> companions(shp, entries(place)))
                .orElse(List.of());
    }

    private static List<Path> companions(Path shp, List<Path> beside) {
        String base = stem(shp);
        return beside.stream().filter(file -> stem(file).equalsIgnoreCase(base)).toList();
    }

    private static List<Path> entries(Path place) {
        try (Stream<Path> files = Files.list(place)) {
            return files.toList();
        } catch (IOException e) {
            throw new UnusableInput(Place.of(place.toString()), "cannot be listed (" + e + "); make it readable");
        }
    }

    private static String stem(Path file) {
        String name = String.valueOf(file.getFileName());
        int dot = name.lastIndexOf('.');
        return dot < 0 ? name : name.substring(0, dot);
    }

    private List<String> names() {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> String.valueOf(file.getFileName())).toList();
        } catch (IOException e) {
            return List.of();
        }
    }
}
