package org.fallrule.reader.shapefile;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.layer.Findings;
import org.fallrule.reader.layer.RawFeature;
import org.fallrule.reader.layer.RawLayer;
import org.locationtech.jts.geom.Geometry;

/** Reads a shapefile: the {@code .shp} with the {@code .dbf}, {@code .prj}, {@code .cpg} and {@code .shx} that stand beside it. */
public final class ShapefileReader {
    private final Companions files;
    private final Place place;
    private final Findings findings = new Findings();

    private ShapefileReader(Companions files, String shownAs) {
        this.files = files;
        place = Place.of(shownAs);
    }

    /**
     * The layer that a shapefile holds. Features are labelled {@code feature N}, N being the record's position counted from 1, deleted
     * ones included in the count but left out of the layer. Coordinates are in the file's own units.
     *
     * @param shp the main file; its companions are looked for beside it, whatever the case of their names
     * @param shownAs the main file's path as the user knows it, used in every place
     * @return the layer, with a note for everything that was read in spite of a disagreement
     * @throws UnusableInput when the files are missing, broken, contradict each other, or hold what has no meaning as a shape
     */
    public static RawLayer read(Path shp, String shownAs) {
        return new ShapefileReader(new FilesBeside(shp, shownAs), shownAs).read();
    }

    /**
     * Reads a shapefile as {@link #read(Path, String)} does, and keeps none of its features.
     *
     * @param features is handed each feature in file order
     * @return the layer without its features
     */
    public static RawLayer stream(Path shp, String shownAs, Consumer<RawFeature> features) {
        return new ShapefileReader(new FilesBeside(shp, shownAs), shownAs).read(features);
    }

    /**
     * The layer that a shapefile within a zip file holds, read as {@link #read(Path, String)} reads one beside its companions.
     *
     * @param zip the zip file, with the shapefile's files in one folder of it
     * @param shownAs its path as the user knows it, with the shapefile where one is named; used in every place
     * @param layer the shapefile's name, in any case, with its folder or without, without {@code .shp}; needed when there are several
     * @throws UnusableInput also when the zip file is broken, holds no such shapefile, names places outside of itself, or would unpack
     *     to more than {@value ZippedFiles#MOST_BYTES} bytes
     */
    public static RawLayer readZipped(Path zip, String shownAs, Optional<String> layer) {
        return new ShapefileReader(ZippedFiles.open(zip, Place.of(shownAs), layer), shownAs).read();
    }

    /**
     * The names of the shapefiles in a zip file, as {@link #readZipped} takes them.
     *
     * @throws UnusableInput when the zip file is broken or names places outside of itself
     */
    public static List<String> zipped(Path zip, String shownAs) {
        return ZippedFiles.layers(zip, Place.of(shownAs));
    }

    private RawLayer read() {
        List<RawFeature> features = new ArrayList<>();
        return read(features::add).with(features);
    }

    private RawLayer read(Consumer<RawFeature> features) {
        MainFile main = MainFile.open(files.main(), place, findings);
        files.find("shx").ifPresent(shx -> new IndexFileCheck(shx, findings).compare(main.frames()));
        Optional<DbfTable> table = table(main.frames().count());
        features(main, table, features);
        findings.refuseIfFaulty();
        Set<String> names = table.map(DbfTable::names).orElse(Set.of());
        Optional<String> crs = files.find("prj").flatMap(prj -> ProjectionFile.text(prj, findings));
        return new RawLayer(place.file(), crs, List.of(), findings.notes(), names);
    }

    private Optional<DbfTable> table(int shapes) {
        Optional<DbfTable> table = files.find("dbf").map(dbf -> DbfTable.open(dbf, files.find("cpg"), findings));
        if (table.isEmpty()) {
            findings.note(
                    place,
                    "no .dbf stands beside it, so its features have no attributes; put the .dbf in the same folder");
        }
        table.ifPresent(rows -> rows.requireRows(shapes, place.file()));
        return table;
    }

    private void features(MainFile main, Optional<DbfTable> table, Consumer<RawFeature> features) {
        for (int index = 0; index < main.frames().count(); index++) {
            if (table.isEmpty() || !table.get().deleted(index)) {
                features.accept(feature(index, main, table));
            }
        }
    }

    private RawFeature feature(int index, MainFile main, Optional<DbfTable> table) {
        String label = RecordFrames.label(index);
        Map<String, Object> columns =
                table.map(rows -> rows.columns(index, label)).orElse(Map.of());
        return new RawFeature(label, shape(index, main), columns);
    }

    private Optional<Geometry> shape(int index, MainFile main) {
        try {
            return main.shape(index);
        } catch (UnusableInput unusable) {
            findings.faults(unusable);
            return Optional.empty();
        }
    }
}
