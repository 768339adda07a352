package org.fallrule.reader;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.geojson.GeoJsonReader;
import org.fallrule.reader.layer.RawLayer;
import org.fallrule.reader.shapefile.ShapefileReader;

/** The layer files of a site folder, each read once. */
final class LayerFiles {
    /** The endings of files that can be read, in the order in which a file named for a role is looked for. */
    static final List<String> ENDINGS = List.of(".geojson", ".json", ".shp");

    private final Path folder;
    private final Map<String, RawLayer> read = new HashMap<>();

    LayerFiles(Path folder) {
        this.folder = folder;
    }

    /** The layer in a file, as the file gives it. */
    RawLayer layer(LayerSpec spec) {
        RawLayer known = read.get(spec.file());
        if (known == null) {
            known = open(spec);
            read.put(spec.file(), known);
        }
        return known;
    }

    private RawLayer open(LayerSpec spec) {
        Path file = folder.resolve(spec.file()).normalize();
        if (!file.startsWith(folder.normalize())) {
            throw new UnusableInput(spec.place(), spec.file() + " lies outside of the site folder; copy it in");
        }
        if (!Files.isRegularFile(file)) {
            throw new UnusableInput(spec.place(), "there is no file " + spec.file() + " in the site folder");
        }
        String name = spec.file().toLowerCase(Locale.ROOT);
        if (name.endsWith(".shp")) {
            return ShapefileReader.read(file, spec.file());
        }
        if (name.endsWith(".geojson") || name.endsWith(".json")) {
            return GeoJsonReader.read(file, spec.file());
        }
        throw new UnusableInput(
                Place.of(spec.file()), "is not a kind of file that can be read; give " + String.join(", ", ENDINGS));
    }
}
