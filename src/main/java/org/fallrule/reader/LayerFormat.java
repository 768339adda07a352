package org.fallrule.reader;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.fallrule.document.Node;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.csv.SurveyedPoints;
import org.fallrule.reader.geojson.GeoJsonReader;
import org.fallrule.reader.geopackage.GeoPackageReader;
import org.fallrule.reader.layer.RawFeature;
import org.fallrule.reader.layer.RawLayer;
import org.fallrule.reader.shapefile.ShapefileReader;

/** A kind of file that a layer can be read from, known by its ending. */
enum LayerFormat {
    GEOJSON(".geojson .json .geojsonl .geojsons .ndjson") {
        @Override
        RawLayer readIt(Path file, LayerSpec spec) {
            return GeoJsonReader.read(file, spec.source());
        }

        @Override
        RawLayer stream(Path file, LayerSpec spec, Consumer<RawFeature> features) {
            return GeoJsonReader.stream(file, spec.source(), features);
        }
    },
    SHAPEFILE(".shp") {
        @Override
        RawLayer readIt(Path file, LayerSpec spec) {
            return ShapefileReader.read(file, spec.source());
        }

        @Override
        RawLayer stream(Path file, LayerSpec spec, Consumer<RawFeature> features) {
            return ShapefileReader.stream(file, spec.source(), features);
        }
    },
    ZIPPED_SHAPEFILE(".zip") {
        @Override
        RawLayer readIt(Path file, LayerSpec spec) {
            return ShapefileReader.readZipped(file, spec.source(), spec.table().map(Node.Scalar::text));
        }

        @Override
        boolean holdsTables() {
            return true;
        }

        @Override
        List<String> tables(Path file, String shownAs) {
            return ShapefileReader.zipped(file, shownAs);
        }
    },
    GEOPACKAGE(".gpkg") {
        @Override
        RawLayer readIt(Path file, LayerSpec spec) {
            return GeoPackageReader.read(file, spec.source(), spec.table().map(Node.Scalar::text));
        }

        @Override
        RawLayer stream(Path file, LayerSpec spec, Consumer<RawFeature> features) {
            return GeoPackageReader.stream(file, spec.source(), spec.table().map(Node.Scalar::text), features);
        }

        @Override
        boolean holdsTables() {
            return true;
        }

        @Override
        List<String> tables(Path file, String shownAs) {
            return GeoPackageReader.tables(file, shownAs);
        }
    },
    SURVEYED_POINTS(".csv") {
        @Override
        RawLayer readIt(Path file, LayerSpec spec) {
            return SurveyedPoints.read(file, spec.source());
        }
    };

    private static final List<String> ALL_ENDINGS =
            Arrays.stream(values()).flatMap(LayerFormat::endings).toList();

    private final String endings;

    /** @param endings its endings, parted by blanks */
    LayerFormat(String endings) {
        this.endings = endings;
    }

    /** The format of a file by its ending, in any case. */
    static Optional<LayerFormat> of(String file) {
        String name = file.toLowerCase(Locale.ROOT);
        return Arrays.stream(values())
                .filter(format -> format.endings().anyMatch(name::endsWith))
                .findFirst();
    }

    /** The endings of all formats, in the order in which a file named for a role is looked for. */
    static List<String> allEndings() {
        return ALL_ENDINGS;
    }

    private Stream<String> endings() {
        return Arrays.stream(endings.split(" ", -1));
    }

    /** Reads a file of this format. */
    RawLayer read(Path file, LayerSpec spec) {
        refuseTable(spec);
        return readIt(file, spec);
    }

    /** Reads a file of this format, hands on its features one by one and gives the layer without them. */
    RawLayer read(Path file, LayerSpec spec, Consumer<RawFeature> features) {
        refuseTable(spec);
        return stream(file, spec, features);
    }

    private void refuseTable(LayerSpec spec) {
        if (spec.table().isPresent() && !holdsTables()) {
            throw new UnusableInput(
                    spec.table().get().place(),
                    spec.file() + " is a file of one layer and has no tables; take table: away");
        }
    }

    /** As {@link #readIt}, feature by feature; a format that has no way to do so is read whole first. */
    RawLayer stream(Path file, LayerSpec spec, Consumer<RawFeature> features) {
        RawLayer whole = readIt(file, spec);
        whole.features().forEach(features);
        return whole.with(List.of());
    }

    abstract RawLayer readIt(Path file, LayerSpec spec);

    /** Whether a file of this format may hold several layers, told apart by {@code table}. */
    boolean holdsTables() {
        return false;
    }

    /** The tables of a file of a format that holds such. */
    List<String> tables(Path file, String shownAs) {
        return List.of();
    }
}
