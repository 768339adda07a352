package org.fallrule.reader.geopackage;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.fallrule.document.Nearest;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;

/** The feature tables that a GeoPackage lists in {@code gpkg_contents} (OGC 12-128, clause 1.1.3). */
final class FeatureTables {
    private final Connection connection;
    private final Place place;
    private final List<String> names;
    private final Set<String> otherKinds;

    private FeatureTables(Connection connection, Place place, List<String> names, Set<String> otherKinds) {
        this.connection = connection;
        this.place = place;
        this.names = names;
        this.otherKinds = otherKinds;
    }

    static FeatureTables in(Connection connection, Place place) throws SQLException {
        refuseOtherSqlite(connection, place);
        List<String> names = new ArrayList<>();
        Set<String> otherKinds = new TreeSet<>();
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery("SELECT table_name, data_type FROM gpkg_contents")) {
            while (rows.next()) {
                String kind = String.valueOf(rows.getString(2));
                if (kind.equalsIgnoreCase("features")) {
                    names.add(String.valueOf(rows.getString(1)));
                } else {
                    otherKinds.add(kind);
                }
            }
        }
        return new FeatureTables(connection, place, List.copyOf(names), otherKinds);
    }

    private static void refuseOtherSqlite(Connection connection, Place place) throws SQLException {
        for (String wanted : List.of("gpkg_contents", "gpkg_spatial_ref_sys")) {
            if (!has(connection, wanted)) {
                throw new UnusableInput(
                        place,
                        "is an SQLite file but not a GeoPackage: it has no table " + wanted
                                + "; export the layers as GeoPackage");
            }
        }
    }

    private static boolean has(Connection connection, String table) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(
                "SELECT 1 FROM sqlite_schema WHERE type IN ('table', 'view') AND lower(name) = lower(?)")) {
            statement.setString(1, table);
            try (ResultSet rows = statement.executeQuery()) {
                return rows.next();
            }
        }
    }

    List<String> names() {
        return names;
    }

    /** The table of that name, or the only one there is. */
    FeatureTable choose(Optional<String> wanted) throws SQLException {
        if (names.isEmpty()) {
            throw new UnusableInput(
                    place,
                    "holds no layer of features"
                            + (otherKinds.isEmpty() ? "" : ", only " + String.join(" and ", otherKinds))
                            + "; export the layer into it");
        }
        if (wanted.isPresent()) {
            return named(wanted.get());
        }
        if (names.size() > 1) {
            throw new UnusableInput(
                    place,
                    "holds " + names.size() + " tables: " + String.join(", ", names)
                            + "; say in site.yaml which one it is, such as {file: " + place.file() + ", table: "
                            + names.get(0) + "}");
        }
        return registered(names.get(0));
    }

    /** The table of a name; {@code drains.axis} is the table drains with the geometry in its column axis. */
    private FeatureTable named(String wanted) throws SQLException {
        Optional<String> whole = known(wanted);
        if (whole.isPresent()) {
            return registered(whole.get());
        }
        int dot = wanted.lastIndexOf('.');
        Optional<String> before = dot < 0 ? Optional.empty() : known(wanted.substring(0, dot));
        if (before.isEmpty()) {
            throw new UnusableInput(
                    place,
                    "has no table " + wanted + Nearest.hint(wanted, names) + " It has " + String.join(", ", names));
        }
        List<FeatureTable> columns = geometryColumns(before.get());
        return columns.stream()
                .filter(column -> column.geometry().equalsIgnoreCase(wanted.substring(dot + 1)))
                .findFirst()
                .orElseThrow(() -> new UnusableInput(place, misregistered(before.get(), columns)));
    }

    private Optional<String> known(String wanted) {
        return names.stream()
                .filter(wanted::equals)
                .findFirst()
                .or(() -> names.stream().filter(wanted::equalsIgnoreCase).findFirst());
    }

    /** Each feature table has one row in {@code gpkg_geometry_columns} (requirements 22 and 23); not all writers keep to it. */
    private FeatureTable registered(String name) throws SQLException {
        List<FeatureTable> found = geometryColumns(name);
        if (found.size() != 1) {
            throw new UnusableInput(place, misregistered(name, found));
        }
        return found.get(0);
    }

    private List<FeatureTable> geometryColumns(String name) throws SQLException {
        List<FeatureTable> found = new ArrayList<>();
        if (has(connection, "gpkg_geometry_columns") && has(connection, name)) {
            try (PreparedStatement statement = connection.prepareStatement(
                    "SELECT column_name, srs_id FROM gpkg_geometry_columns WHERE lower(table_name) = lower(?)")) {
                statement.setString(1, name);
                try (ResultSet rows = statement.executeQuery()) {
                    while (rows.next()) {
                        found.add(new FeatureTable(name, String.valueOf(rows.getString(1)), rows.getLong(2)));
                    }
                }
            }
        }
        return found;
    }

    private static String misregistered(String name, List<FeatureTable> found) {
        if (found.isEmpty()) {
            return "lists the table " + name + ", but it, or its row in gpkg_geometry_columns, is missing; export the"
                    + " layer again";
        }
        return "the table " + name + " has the geometry columns "
                + String.join(", ", found.stream().map(FeatureTable::geometry).toList())
                + "; say in site.yaml which one it is, such as table: " + name + "."
                + found.get(0).geometry();
    }
}
