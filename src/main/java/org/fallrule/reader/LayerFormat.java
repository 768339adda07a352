package org.fallrule.reader;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.document.Node;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.csv.SurveyedPoints;
import org.fallrule.reader.geojson.GeoJsonReader;
import org.fallrule.reader.geopackage.GeoPackageReader;
import org.fallrule.reader.layer.RawLayer;
import org.fallrule.reader.shapefile.ShapefileReader;

/** A kind of file that a layer can be read from, known by its ending. */
enum LayerFormat {
    GEOJSON(".geojson .json .geojsonl .geojsons .ndjson") {
        @Override
        RawLayer readIt(Path file, LayerSpec spec) {
            return GeoJsonReader.read(file, spec.source());
        }
    },
    SHAPEFILE(".shp") {
        @Override
        RawLayer readIt(Path file, LayerSpec spec) {
            return ShapefileReader.read(file, spec.source());
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
        return Arrays.stream(values()).flatMap(LayerFormat::endings).toList();
    }

    private Stream<String> endings() {
        return Arrays.stream(endings.split(" ", -1));
    }

    /** Reads a file of this format. */
    RawLayer read(Path file, LayerSpec spec) {
        if (spec.table().isPresent() && !holdsTables()) {
            throw new UnusableInput(
                    spec.table().get().place(),
                    spec.file() + " is a file of one layer and has no tables; take table: away");
        }
        return readIt(file, spec);
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
