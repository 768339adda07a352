package org.fallrule.bench;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/** Adds layers to a GeoPackage made of the least that OGC 12-128 asks for. */
final class MadeGeoPackage {
    private static final String[] SKELETON = {
        "PRAGMA application_id = 1196444487",
        "PRAGMA user_version = 10300",
        "CREATE TABLE gpkg_spatial_ref_sys (srs_name TEXT NOT NULL, srs_id INTEGER PRIMARY KEY, organization TEXT NOT NULL,"
                + " organization_coordsys_id INTEGER NOT NULL, definition TEXT NOT NULL, description TEXT)",
        "CREATE TABLE gpkg_contents (table_name TEXT PRIMARY KEY, data_type TEXT NOT NULL, srs_id INTEGER)",
        "CREATE TABLE gpkg_geometry_columns (table_name TEXT NOT NULL, column_name TEXT NOT NULL, geometry_type_name TEXT,"
                + " srs_id INTEGER, z TINYINT, m TINYINT)"
    };

    private MadeGeoPackage() {}

    static void add(Path file, MadePlace place, String name, List<MadeFeature> features) throws IOException {
        boolean isNew = !Files.exists(file);
        int srs = Integer.parseInt(place.grid().substring("EPSG:".length()));
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA synchronous = OFF");
            statement.execute("PRAGMA journal_mode = OFF");
            if (isNew) {
                for (String sql : SKELETON) {
                    statement.execute(sql);
                }
                statement.execute("INSERT INTO gpkg_spatial_ref_sys VALUES ('grid', " + srs + ", 'epsg', " + srs
                        + ", 'undefined', NULL)");
            }
            connection.setAutoCommit(false);
            statement.execute("INSERT INTO gpkg_contents VALUES ('" + name + "', 'features', " + srs + ")");
            statement.execute(
                    "INSERT INTO gpkg_geometry_columns VALUES ('" + name + "', 'geom', 'GEOMETRY', " + srs + ", 2, 0)");
            rows(connection, statement, name, features, place, srs);
            connection.commit();
        } catch (SQLException e) {
            throw new IOException(e);
        }
    }

    private static void rows(
            Connection connection,
            Statement statement,
            String name,
            List<MadeFeature> features,
            MadePlace place,
            int srs)
            throws SQLException {
        List<String> columns = new ArrayList<>();
        for (MadeFeature feature : features) {
            feature.properties().keySet().stream()
                    .filter(column -> !columns.contains(column))
                    .forEach(columns::add);
        }
        if (features.get(0).z(0) != 0) {
            columns.add("elevation");
        }
        statement.execute(
                "CREATE TABLE " + name + " (fid INTEGER PRIMARY KEY, geom BLOB, " + String.join(", ", columns) + ")");
        String asked = String.join(", ", Collections.nCopies(columns.size() + 1, "?"));
        try (PreparedStatement insert = connection.prepareStatement(
                "INSERT INTO " + name + " (geom, " + String.join(", ", columns) + ") VALUES (" + asked + ")")) {
            for (MadeFeature feature : features) {
                insert.setBytes(1, blob(feature, place, srs));
                for (int i = 0; i < columns.size(); i++) {
                    Object height = columns.get(i).equals("elevation") ? feature.z(0) : null;
                    insert.setObject(
                            i + 2,
                            height != null ? height : feature.properties().get(columns.get(i)));
                }
                insert.executeUpdate();
            }
        }
    }

    /** The header of a GeoPackage's geometry without an envelope, and well-known binary. */
    private static byte[] blob(MadeFeature feature, MadePlace place, int srs) {
        int vertices = feature.vertices();
        ByteBuffer bytes = ByteBuffer.allocate(8 + 13 + 16 * vertices).order(ByteOrder.LITTLE_ENDIAN);
        bytes.put((byte) 'G')
                .put((byte) 'P')
                .put((byte) 0)
                .put((byte) 1)
                .putInt(srs)
                .put((byte) 1);
        switch (feature.kind()) {
            case POINT -> bytes.putInt(1);
            case LINE -> bytes.putInt(2).putInt(vertices);
            case AREA -> bytes.putInt(3).putInt(1).putInt(vertices);
        }
        for (int i = 0; i < vertices; i++) {
            Coordinate at = place.onGrid(feature, i);
            bytes.putDouble(at.x).putDouble(at.y);
        }
        byte[] blob = new byte[bytes.position()];
        bytes.flip().get(blob);
        return blob;
    }
}
