package org.fallrule.reader.shapefile;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Optional;
import org.fallrule.Fuzzed;

/** Each file of a shapefile by itself; the others beside it are sound or left out. */
class ShapefileFuzzTest {
    @FuzzTest
    void anyMainFileIsReadOrRefused(byte[] bytes) {
        Path shp = Fuzzed.file("main/marks.shp", bytes);
        Fuzzed.readOrRefuse(() -> ShapefileReader.read(shp, "marks.shp"));
    }

    @FuzzTest
    void anyTableIsReadOrRefused(byte[] bytes) {
        Path shp = points("table/marks.shp");
        Fuzzed.file("table/marks.dbf", bytes);
        Fuzzed.readOrRefuse(() -> ShapefileReader.read(shp, "marks.shp"));
    }

    @FuzzTest
    void anyIndexIsReadOrRefused(byte[] bytes) {
        Path shp = points("index/marks.shp");
        Fuzzed.file("index/marks.shx", bytes);
        Fuzzed.readOrRefuse(() -> ShapefileReader.read(shp, "marks.shp"));
    }

    @FuzzTest
    void anyZipFileIsReadOrRefused(byte[] bytes) {
        Path zip = Fuzzed.file("marks.zip", bytes);
        Fuzzed.readOrRefuse(() -> ShapefileReader.readZipped(zip, "marks.zip", Optional.empty()));
    }

    private static Path points(String name) {
        byte[][] points = Collections.nCopies(2, Content.point(1, 2)).toArray(new byte[0][]);
        return Fuzzed.file(name, Made.mainFile(1, points));
    }
}
