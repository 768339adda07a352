package org.fallrule.reader.geopackage;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.layer.Findings;
import org.fallrule.reader.layer.RawFeature;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;

/** The rows of a feature table (OGC 12-128, clause 2.1.6). */
final class FeatureRows {
    /** What one layer's geometries may come to, in bytes; the features stay in memory. */
    private static final long MOST_BYTES = Integer.MAX_VALUE;

    /** The fewest bytes that a row of a table takes (SQLite file format, sections 1.6 and 2.1; from memory). */
    private static final long LEAST_ROW = 4;

    private final Connection connection;
    private final FeatureTable table;
    private final List<TableColumn> columns;
    private final Place place;
    private final Findings findings;
    private long bytes;

    private FeatureRows(
            Connection connection, FeatureTable table, List<TableColumn> columns, Place place, Findings findings) {
        this.connection = connection;
        this.table = table;
        this.columns = columns;
        this.place = place;
        this.findings = findings;
    }

    static FeatureRows of(Connection connection, FeatureTable table, Place place, Findings findings)
            throws SQLException {
        List<TableColumn> all = TableColumn.of(connection, table.name());
        if (all.stream().noneMatch(column -> column.isNamed(table.geometry()))) {
            throw new UnusableInput(
                    place,
                    "its geometry column " + table.geometry() + " is not in the table; it has "
                            + all.stream().map(TableColumn::name).collect(Collectors.joining(", "))
                            + "; export the layer again");
        }
        List<TableColumn> columns = new ArrayList<>();
        for (TableColumn column : all) {
            if (column.isBlob() && !column.isNamed(table.geometry())) {
                findings.note(place.field(column.name()), "is a column of type BLOB; it was left out");
            } else if (!column.isNamed(table.geometry())) {
                columns.add(column);
            }
        }
        return new FeatureRows(connection, table, columns, place, findings);
    }

    /** The names of the columns but the geometry's. */
    Set<String> columns() {
        return columns.stream().map(TableColumn::name).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** Hands on each row's feature. */
    void read(Consumer<RawFeature> features) throws SQLException {
        int count = 0;
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(query())) {
            long most = mostRows();
            while (row.next()) {
                if (count >= most) {
                    throw new UnusableInput(
                            place,
                            "gives more rows than a file of its size can hold; export the layer as a plain table, not a"
                                    + " view");
                }
                count++;
                features.accept(feature(row, count));
            }
        }
    }

    /** As many rows as the pages can hold: each takes a pointer of two bytes and a cell of at least two. */
    private long mostRows() throws SQLException {
        return pragma("page_count") * pragma("page_size") / LEAST_ROW;
    }

    private long pragma(String name) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("PRAGMA " + name)) {
            return row.getLong(1);
        }
    }

    private String query() {
        StringBuilder sql = new StringBuilder("SELECT ").append(FeatureTable.quoted(table.geometry()));
        columns.forEach(column -> sql.append(", ").append(FeatureTable.quoted(column.name())));
        return sql.append(" FROM ").append(FeatureTable.quoted(table.name())).toString();
    }

    private RawFeature feature(ResultSet row, int position) throws SQLException {
        Map<String, Object> raw = new LinkedHashMap<>();
        String label = "feature " + position;
        for (int index = 0; index < columns.size(); index++) {
            Object value = row.getObject(index + 2);
            if (value != null) {
                raw.put(columns.get(index).name(), value);
                label = columns.get(index).isKey() ? "feature " + value : label;
            }
        }
        Place here = place.feature(label);
        return new RawFeature(label, geometry(row.getObject(1), here), values(raw, here));
    }

    private Map<String, Object> values(Map<String, Object> raw, Place feature) {
        Map<String, Object> values = new LinkedHashMap<>();
        for (TableColumn column : columns) {
            Object value = raw.get(column.name());
            if (value != null) {
                ColumnValue.of(value, column.type(), says -> findings.noteFeature(feature.field(column.name()), says))
                        .ifPresent(read -> values.put(column.name(), read));
            }
        }
        return values;
    }

    private Optional<Geometry> geometry(@Nullable Object value, Place feature) {
        if (value == null) {
            return Optional.empty();
        }
        try {
            if (!(value instanceof byte[] blob)) {
                throw new UnusableInput(feature, "its geometry is text or a number; wanted a GeoPackage geometry");
            }
            refuseTooMuch(blob.length);
            return Optional.of(new GeometryBlob(blob, feature, findings).geometry(table.srsId()));
        } catch (UnusableInput unusable) {
            findings.faults(unusable);
            return Optional.empty();
        }
    }

    private void refuseTooMuch(int length) {
        bytes += length;
        if (bytes > MOST_BYTES) {
            throw new UnusableInput(place, "its geometries come to more than 2 GiB; export the part around the site");
        }
    }
}
