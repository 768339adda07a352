package org.fallrule.reader.geopackage;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A column as its table declares it.
 *
 * @param name its name
 * @param type its declared type in capitals, without a length: {@code TEXT}
 * @param isKey whether it is the integer primary key, or in a view, which has none, an integer in the first place (requirement 29)
 */
record TableColumn(String name, String type, boolean isKey) {

    static List<TableColumn> of(Connection connection, String table) throws SQLException {
        List<TableColumn> columns = new ArrayList<>();
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery("PRAGMA table_info(" + FeatureTable.quoted(table) + ")")) {
            while (rows.next()) {
                String type = String.valueOf(rows.getString("type"))
                        .toUpperCase(Locale.ROOT)
                        .replaceFirst("\\s*\\(.*", "")
                        .strip();
                columns.add(new TableColumn(
                        String.valueOf(rows.getString("name")),
                        type,
                        rows.getInt("pk") == 1 && type.equals("INTEGER")));
            }
        }
        return columns.stream().anyMatch(TableColumn::isKey) || columns.isEmpty() ? columns : withFirstAsKey(columns);
    }

    private static List<TableColumn> withFirstAsKey(List<TableColumn> columns) {
        TableColumn first = columns.get(0);
        columns.set(0, new TableColumn(first.name(), first.type(), first.type().equals("INTEGER")));
        return columns;
    }

    boolean isBlob() {
        return type.equals("BLOB");
    }

    boolean isNamed(String other) {
        return name.equalsIgnoreCase(other);
    }
}
