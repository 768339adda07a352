package org.fallrule.reader.geopackage;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.file.Path;
import java.util.Optional;
import org.fallrule.Fuzzed;
import org.fallrule.document.Place;
import org.fallrule.reader.layer.Findings;

/** A whole database, which is mostly SQLite's to read, and a geometry in it, which is ours. */
class GeoPackageFuzzTest {
    @FuzzTest
    void anyGeometryIsReadOrRefused(byte[] blob) {
        Place place = Place.of("plan.gpkg").feature("feature 1");
        Fuzzed.readOrRefuse(() -> new GeometryBlob(blob, place, new Findings()).geometry(2264));
    }

    @FuzzTest
    void anyDatabaseIsReadOrRefused(byte[] bytes) {
        Path gpkg = Fuzzed.file("plan.gpkg", bytes);
        Fuzzed.readOrRefuse(() -> GeoPackageReader.tables(gpkg, "plan.gpkg").stream()
                .limit(3)
                .forEach(table ->
                        Fuzzed.readOrRefuse(() -> GeoPackageReader.read(gpkg, "plan.gpkg", Optional.of(table)))));
    }
}
