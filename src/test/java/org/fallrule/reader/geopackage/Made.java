package org.fallrule.reader.geopackage;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;
import org.fallrule.reader.layer.RawLayer;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ByteOrderValues;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKBWriter;
import org.locationtech.jts.io.WKTReader;

/** A GeoPackage made of the least that OGC 12-128 asks for: one table {@code drains} with a geometry {@code geom} and a {@code mark}. */
final class Made {
    final Path file;

    private Made(Path file) {
        this.file = file;
    }

    static Made in(Path folder, String name) throws SQLException {
        Made made = new Made(folder.resolve(name));
        return made.sql(
                "PRAGMA application_id = 1196444487",
                "PRAGMA user_version = 10300",
                "CREATE TABLE gpkg_spatial_ref_sys (srs_name TEXT NOT NULL, srs_id INTEGER PRIMARY KEY, organization"
                        + " TEXT NOT NULL, organization_coordsys_id INTEGER NOT NULL, definition TEXT NOT NULL,"
                        + " description TEXT)",
                "INSERT INTO gpkg_spatial_ref_sys VALUES ('NC', 2264, 'epsg', 2264, 'undefined', NULL), ('c', -1, 'NONE',"
                        + " -1, 'undefined', NULL), ('g', 0, 'NONE', 0, 'undefined', NULL)",
                "CREATE TABLE gpkg_contents (table_name TEXT PRIMARY KEY, data_type TEXT NOT NULL, srs_id INTEGER)",
                "CREATE TABLE gpkg_geometry_columns (table_name TEXT NOT NULL, column_name TEXT NOT NULL,"
                        + " geometry_type_name TEXT, srs_id INTEGER, z TINYINT, m TINYINT)",
                "CREATE TABLE drains (fid INTEGER PRIMARY KEY, geom BLOB, mark TEXT)",
                "INSERT INTO gpkg_contents VALUES ('drains', 'features', 2264)",
                "INSERT INTO gpkg_geometry_columns VALUES ('drains', 'geom', 'GEOMETRY', 2264, 2, 2)");
    }

    Made sql(String... statements) throws SQLException {
        try (Connection connection = connect();
                Statement statement = connection.createStatement()) {
            for (String sql : statements) {
                statement.execute(sql);
            }
        }
        return this;
    }

    Connection connect() throws SQLException {
        return DriverManager.getConnection("jdbc:sqlite:file:" + file.toUri().getRawPath());
    }

    Made drain(byte[] geometry) throws SQLException {
        try (Connection connection = connect()) {
            insert(connection, geometry);
        }
        return this;
    }

    static void insert(Connection connection, byte[] geometry) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement("INSERT INTO drains (geom) VALUES (?)")) {
            statement.setBytes(1, geometry);
            statement.executeUpdate();
        }
    }

    RawLayer read() {
        return GeoPackageReader.read(file, "plan.gpkg", Optional.empty());
    }

    RawLayer read(String table) {
        return GeoPackageReader.read(file, "plan.gpkg", Optional.of(table));
    }

    /** A blob with the flags given, their byte order kept; the envelope's numbers follow the flags, then the well-known binary. */
    static byte[] blob(int flags, int srsId, double[] envelope, byte[] wkb) {
        ByteBuffer bytes = ByteBuffer.allocate(8 + 8 * envelope.length + wkb.length)
                .order((flags & 1) == 0 ? ByteOrder.BIG_ENDIAN : ByteOrder.LITTLE_ENDIAN);
        bytes.put((byte) 'G').put((byte) 'P').put((byte) 0).put((byte) flags).putInt(srsId);
        for (double number : envelope) {
            bytes.putDouble(number);
        }
        return bytes.put(wkb).array();
    }

    static byte[] blob(byte[] wkb) {
        return blob(1, 2264, new double[0], wkb);
    }

    static byte[] wkb(String wkt) {
        return new WKBWriter(2, ByteOrderValues.LITTLE_ENDIAN).write(geometry(wkt));
    }

    static Geometry geometry(String wkt) {
        try {
            return new WKTReader().read(wkt);
        } catch (ParseException wrong) {
            throw new IllegalArgumentException(wrong);
        }
    }
}
