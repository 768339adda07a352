package org.fallrule.reader.geopackage;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.util.Optional;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.layer.Findings;

/**
 * What {@code gpkg_spatial_ref_sys} says of a reference system (OGC 12-128, clause 1.1.2). Coordinates are easting, northing or
 * longitude, latitude whatever order the definition gives (clause 2.1.3.1.1, after ISO 13249-3).
 */
final class ReferenceSystems {
    /** The keys of systems that are not known, projected and geographic (requirement 11). */
    private static final long UNDEFINED_PROJECTED = -1;

    private static final long UNDEFINED_GEOGRAPHIC = 0;
    private static final String UNDEFINED = "undefined";

    /** EPSG gives no code above this; programs number systems of their own from 100,000. */
    private static final long LAST_OF_EPSG = 69_999;

    private ReferenceSystems() {}

    /** A code or well-known text; empty where the file calls the system undefined, and with a note where it has no definition. */
    static Optional<String> text(Connection connection, long srsId, Place place, Findings findings)
            throws SQLException {
        if (srsId == UNDEFINED_PROJECTED || srsId == UNDEFINED_GEOGRAPHIC) {
            return Optional.empty();
        }
        try (PreparedStatement statement =
                connection.prepareStatement("SELECT * FROM gpkg_spatial_ref_sys WHERE srs_id = ?")) {
            statement.setLong(1, srsId);
            try (ResultSet row = statement.executeQuery()) {
                if (!row.next()) {
                    throw new UnusableInput(
                            place,
                            "its reference system " + srsId
                                    + " is not in gpkg_spatial_ref_sys; assign the layer its system and export it again");
                }
                return text(
                        text(row, "organization"),
                        row.getLong("organization_coordsys_id"),
                        definition(row),
                        place,
                        findings);
            }
        }
    }

    private static Optional<String> text(
            String organization, long id, String definition, Place place, Findings findings) {
        if (organization.equalsIgnoreCase("EPSG") && id > 0 && id <= LAST_OF_EPSG) {
            return Optional.of("EPSG:" + id);
        }
        if (!definition.isEmpty()) {
            return Optional.of(definition);
        }
        findings.note(
                place,
                "its reference system " + organization + ":" + id
                        + " has no definition in the file; name it in site.yaml, such as crs: EPSG:2264");
        return Optional.empty();
    }

    /**
     * The definition; where there is none, that in the column which the extension for well-known text of the second edition adds
     * (OGC 12-128, annex F.10).
     */
    private static String definition(ResultSet row) throws SQLException {
        ResultSetMetaData columns = row.getMetaData();
        String second = "";
        for (int column = 1; column <= columns.getColumnCount(); column++) {
            if (columns.getColumnName(column).equalsIgnoreCase("definition_12_063")) {
                second = columns.getColumnName(column);
            }
        }
        String first = stated(text(row, "definition"));
        return first.isEmpty() && !second.isEmpty() ? stated(text(row, second)) : first;
    }

    private static String stated(String definition) {
        return definition.equalsIgnoreCase(UNDEFINED) ? "" : definition;
    }

    private static String text(ResultSet row, String column) throws SQLException {
        String text = row.getString(column);
        return text == null ? "" : text.strip();
    }
}
