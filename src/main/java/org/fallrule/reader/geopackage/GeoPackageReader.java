package org.fallrule.reader.geopackage;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.layer.Findings;
import org.fallrule.reader.layer.RawFeature;
import org.fallrule.reader.layer.RawLayer;

/**
 * Reads a feature table, or a view registered as one, of a GeoPackage (OGC 12-128, clause 2.1). The file and what stands beside it are
 * never written to.
 *
 * <p>Features are labelled {@code feature N}, N being the value of the table's primary key, which desktop programs show as the feature's
 * id, or the row's position counted from 1 where there is no such key. The key stays a column. Columns become {@code Boolean},
 * {@code Long}, {@code Double}, {@code String} or a date as their declared type says (clause 1.1.1, table of data types); a value that
 * is of another kind than its column is kept as what it is, with a note.
 */
public final class GeoPackageReader implements AutoCloseable {
    private final Map<Path, Database> open = new HashMap<>();

    /** The layer that a table holds, as {@link #layer} reads it from a file that is opened for it alone. */
    public static RawLayer read(Path gpkg, String shownAs, Optional<String> table) {
        try (GeoPackageReader reader = new GeoPackageReader()) {
            return reader.layer(gpkg, shownAs, table);
        }
    }

    /**
     * Reads a table as {@link #read} does, and keeps none of its features.
     *
     * @param features is handed each feature in the table's order
     * @return the layer without its features
     */
    public static RawLayer stream(Path gpkg, String shownAs, Optional<String> table, Consumer<RawFeature> features) {
        try (GeoPackageReader reader = new GeoPackageReader()) {
            return reader.layer(gpkg, shownAs, table, features);
        }
    }

    /**
     * The layer that a table holds. The file stays open for its other tables until the reader is closed.
     *
     * @param gpkg the file; changes that another program left in a {@code -wal} or {@code -journal} beside it count
     * @param shownAs its path as the user knows it, with the table where one is named; used in every place
     * @param table the table's name, in any case; needed when the file has several
     * @return the layer; its {@code crs} is the organization's code where that is EPSG's, else the definition in well-known text, and
     *     empty where the file calls it undefined
     * @throws UnusableInput when the file is no GeoPackage or broken, when the table is not there or not named, or when a geometry in it
     *     is broken or curved
     */
    public RawLayer layer(Path gpkg, String shownAs, Optional<String> table) {
        List<RawFeature> features = new ArrayList<>();
        return layer(gpkg, shownAs, table, features::add).with(features);
    }

    private RawLayer layer(Path gpkg, String shownAs, Optional<String> table, Consumer<RawFeature> features) {
        Place place = Place.of(shownAs);
        Findings findings = new Findings();
        Database database = open.computeIfAbsent(gpkg, file -> Database.open(file, place));
        try {
            Connection connection = database.connection();
            database.noteApplication(place, findings);
            FeatureTable chosen = FeatureTables.in(connection, place).choose(table);
            Optional<String> crs = ReferenceSystems.text(connection, chosen.srsId(), place, findings);
            FeatureRows rows = FeatureRows.of(connection, chosen, place, findings);
            rows.read(features);
            findings.refuseIfFaulty();
            return new RawLayer(shownAs, crs, List.of(), findings.notes(), rows.columns());
        } catch (SQLException failed) {
            close(); // another table is read from a file opened anew
            throw Database.unusable(failed, place);
        }
    }

    /**
     * The names of a file's feature tables, in the file's order.
     *
     * @throws UnusableInput when the file is no GeoPackage or broken
     */
    public static List<String> tables(Path gpkg, String shownAs) {
        Place place = Place.of(shownAs);
        try (Database database = Database.open(gpkg, place)) {
            return FeatureTables.in(database.connection(), place).names();
        } catch (SQLException failed) {
            throw Database.unusable(failed, place);
        }
    }

    @Override
    public void close() {
        open.values().forEach(Database::close);
        open.clear();
    }
}
