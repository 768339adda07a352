package org.fallrule.reader;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.fallrule.document.Nearest;
import org.fallrule.document.Node;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.geopackage.GeoPackageReader;
import org.fallrule.reader.layer.RawFeature;
import org.fallrule.reader.layer.RawLayer;

/** The layer files of a site folder, each read once; a GeoPackage is opened once for all of its layers. */
final class LayerFiles implements AutoCloseable {
    /** The endings of rasters, which only a ground can be. */
    static final List<String> RASTER_ENDINGS = List.of(".tif", ".tiff", ".asc");

    private final Path folder;
    private final Path root;
    private final Map<String, RawLayer> read = new HashMap<>();
    private final Map<String, Path> checked = new HashMap<>();
    private final Map<Path, List<String>> names = new HashMap<>();
    private final GeoPackageReader geoPackages = new GeoPackageReader();

    LayerFiles(Path folder) {
        this.folder = folder;
        this.root = folder.toAbsolutePath().normalize();
    }

    /** @param names what stands in the folder */
    LayerFiles(Path folder, List<String> names) {
        this(folder);
        this.names.put(root, names);
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
        if (isPlainIn(folder, file)) {
            return file;
        }
        if (!Files.isRegularFile(file)) {
            throw new UnusableInput(
                    spec.place(),
                    "there is no file " + spec.file() + " in the site folder" + backslash(spec)
                            + Nearest.hint(spec.file(), names(root)));
        }
        refuseLinkOut(file, folder, spec.place());
        return file;
    }

    private RawLayer open(LayerSpec spec) {
        Path file = checked(spec);
        LayerFormat format = format(spec);
        return format == LayerFormat.GEOPACKAGE
                ? geoPackages.layer(file, spec.source(), spec.table().map(Node.Scalar::text))
                : format.read(file, spec);
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

    /** As {@link #path}, with what stands beside it and may be read with it inside of the folder too. */
    Path checked(LayerSpec spec) {
        return checked.computeIfAbsent(spec.file(), any -> {
            Path file = path(spec);
            companions(file, names(parent(file)))
                    .filter(beside -> !beside.equals(file))
                    .forEach(beside -> refuseLinkOut(beside, folder, spec.place()));
            return file;
        });
    }

    private static String backslash(LayerSpec spec) {
        return spec.file().contains("\\") ? ", or its path has to be written with / and not with \\" : "";
    }

    private Path inside(LayerSpec spec) {
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

    /** A link may not lead out of the folder either: a plan from elsewhere could name any file on the computer. */
    static void refuseLinkOut(Path file, Path folder, Place named) {
        if (isPlainIn(folder, file)) {
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

    /** Whether a file stands in the folder itself and is no link: it leads nowhere, and following paths takes long. */
    private static boolean isPlainIn(Path folder, Path file) {
        return folder.toAbsolutePath().equals(file.toAbsolutePath().getParent())
                && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
    }

    /** The files beside a layer's that differ from it in the ending only, upper and lower case alike; some are read with it. */
    static Stream<Path> companions(Path file) {
        return companions(file, SiteFolders.names(parent(file)));
    }

    private static Stream<Path> companions(Path file, List<String> names) {
        String base = stem(String.valueOf(file.getFileName()));
        return names.stream()
                .filter(name -> stem(name).equalsIgnoreCase(base))
                .map(name -> SiteFolders.path(parent(file), name));
    }

    private static Path parent(Path file) {
        return Optional.ofNullable(file.getParent()).orElse(file);
    }

    private static String stem(String name) {
        int dot = name.lastIndexOf('.');
        return dot < 0 ? name : name.substring(0, dot);
    }

    private List<String> names(Path place) {
        return names.computeIfAbsent(place, SiteFolders::names);
    }

    @Override
    public void close() {
        geoPackages.close();
    }
}
