package org.fallrule.reader.geopackage;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
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
public final class GeoPackageReader {
    private GeoPackageReader() {}

    /**
     * The layer that a table holds.
     *
     * @param gpkg the file; changes that another program left in a {@code -wal} or {@code -journal} beside it count
     * @param shownAs its path as the user knows it, with the table where one is named; used in every place
     * @param table the table's name, in any case; needed when the file has several
     * @return the layer; its {@code crs} is the organization's code where that is EPSG's, else the definition in well-known text, and
     *     empty where the file calls it undefined
     * @throws UnusableInput when the file is no GeoPackage or broken, when the table is not there or not named, or when a geometry in it
     *     is broken or curved
     */
    public static RawLayer read(Path gpkg, String shownAs, Optional<String> table) {
        List<RawFeature> features = new ArrayList<>();
        return stream(gpkg, shownAs, table, features::add).with(features);
    }

    /**
     * Reads a table as {@link #read} does, and keeps none of its features.
     *
     * @param features is handed each feature in the table's order
     * @return the layer without its features
     */
    public static RawLayer stream(Path gpkg, String shownAs, Optional<String> table, Consumer<RawFeature> features) {
        Place place = Place.of(shownAs);
        Findings findings = new Findings();
        try (Database database = Database.open(gpkg, place, findings)) {
            Connection connection = database.connection();
            FeatureTable chosen = FeatureTables.in(connection, place).choose(table);
            Optional<String> crs = ReferenceSystems.text(connection, chosen.srsId(), place, findings);
            FeatureRows rows = FeatureRows.of(connection, chosen, place, findings);
            rows.read(features);
            findings.refuseIfFaulty();
            return new RawLayer(shownAs, crs, List.of(), findings.notes(), rows.columns());
        } catch (SQLException failed) {
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
        try (Database database = Database.open(gpkg, place, new Findings())) {
            return FeatureTables.in(database.connection(), place).names();
        } catch (SQLException failed) {
            throw Database.unusable(failed, place);
        }
    }
}
