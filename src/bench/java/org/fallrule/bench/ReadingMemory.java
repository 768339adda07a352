package org.fallrule.bench;

import java.io.BufferedOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.fallrule.reader.csv.SurveyedPoints;
import org.fallrule.reader.geojson.GeoJsonReader;
import org.fallrule.reader.geopackage.GeoPackageReader;
import org.fallrule.reader.layer.RawLayer;
import org.fallrule.reader.shapefile.ShapefileReader;

/**
 * How much memory reading a million points takes beyond what is kept of them. Each file is read in a Java machine of its own: once
 * with plenty, to see what is kept; then with the least heap, in steps of 32 MiB, that it can be read in.
 *
 * <p>Run as {@code java -cp … org.fallrule.bench.ReadingMemory FOLDER}; the folder takes some 500 MB.
 */
public final class ReadingMemory {
    private static final int FEATURES = 1_000_000;
    private static final int STEP = 32;
    private static final int MIB = 1 << 20;

    private ReadingMemory() {}

    public static void main(String[] arguments) throws IOException, InterruptedException, SQLException {
        Path folder = Path.of(arguments[0]);
        if (arguments.length > 1) {
            read(folder.resolve(arguments[1]));
            return;
        }
        Files.createDirectories(folder);
        for (String file : List.of("spot.geojson", "spot.shp", "spot.gpkg", "spot.csv")) {
            write(folder.resolve(file));
            int kept = Integer.parseInt(said(folder, file, 4096).orElseThrow().strip());
            int heap = kept;
            while (said(folder, file, heap).isEmpty()) {
                heap += STEP;
            }
            System.out.printf(
                    Locale.ROOT,
                    "%-13s %,d features, %d MiB file: %d MiB kept, read in a heap of %d MiB, %d above%n",
                    file,
                    FEATURES,
                    Files.size(folder.resolve(file)) / MIB,
                    kept,
                    heap,
                    heap - kept);
        }
    }

    private static Optional<String> said(Path folder, String file, int heap) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-Xmx" + heap + "m",
                "-cp",
                System.getProperty("java.class.path"),
                ReadingMemory.class.getName(),
                folder.toString(),
                file));
        Process reading = new ProcessBuilder(command).start();
        String said = new String(reading.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return reading.waitFor() == 0 ? Optional.of(said) : Optional.empty();
    }

    /** Reads a file and says how many MiB are in use with what was read. */
    private static void read(Path file) {
        String name = file.getFileName().toString();
        RawLayer layer = switch (name.substring(name.lastIndexOf('.'))) {
            case ".geojson" -> GeoJsonReader.read(file, name);
            case ".shp" -> ShapefileReader.read(file, name);
            case ".gpkg" -> GeoPackageReader.read(file, name, Optional.empty());
            default -> SurveyedPoints.read(file, name);
        };
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        long used = runtime.totalMemory() - runtime.freeMemory();
        if (layer.features().size() != FEATURES) {
            throw new IllegalStateException("read " + layer.features().size());
        }
        System.out.println(used / MIB);
    }

    private static void write(Path file) throws IOException, SQLException {
        String name = file.getFileName().toString();
        switch (name.substring(name.lastIndexOf('.'))) {
            case ".geojson" -> writeGeoJson(file);
            case ".shp" -> writeShapefile(file);
            case ".gpkg" -> writeGeoPackage(file);
            default -> writeCsv(file);
        }
    }

    private static double x(int i) {
        return 2_050_000 + i % 1000 + 0.25;
    }

    private static double y(int i) {
        return 740_000 + i / 1000 + 0.5;
    }

    private static double height(int i) {
        return 640 + i % 97 / 10.0;
    }

    private static void writeGeoJson(Path file) throws IOException {
        try (var out = Files.newBufferedWriter(file)) {
            out.write("{\"type\": \"FeatureCollection\", \"features\": [\n");
            for (int i = 0; i < FEATURES; i++) {
                out.write((i == 0 ? "" : ",\n") + "{\"type\": \"Feature\", \"properties\": {\"id\": \"S-" + i
                        + "\", \"elev\": " + height(i) + "}, \"geometry\": {\"type\": \"Point\", \"coordinates\": ["
                        + x(i)
                        + ", " + y(i) + "]}}");
            }
            out.write("]}\n");
        }
    }

    private static void writeCsv(Path file) throws IOException {
        try (var out = Files.newBufferedWriter(file)) {
            out.write("id,easting,northing,elev\n");
            for (int i = 0; i < FEATURES; i++) {
                out.write("S-" + i + "," + x(i) + "," + y(i) + "," + height(i) + "\n");
            }
        }
    }

    /** A main file and a table as the Technical Description of 1998 and dBASE III have them. */
    private static void writeShapefile(Path shp) throws IOException {
        try (var out = new DataOutputStream(new BufferedOutputStream(Files.newOutputStream(shp)))) {
            ByteBuffer header = ByteBuffer.allocate(100);
            header.putInt(0, 9994).putInt(24, 50 + 14 * FEATURES);
            header.order(ByteOrder.LITTLE_ENDIAN).putInt(28, 1000).putInt(32, 1);
            out.write(header.array());
            ByteBuffer point = ByteBuffer.allocate(20).order(ByteOrder.LITTLE_ENDIAN);
            for (int i = 0; i < FEATURES; i++) {
                out.writeInt(i + 1);
                out.writeInt(10);
                out.write(point.putInt(0, 1)
                        .putDouble(4, x(i))
                        .putDouble(12, y(i))
                        .array());
            }
        }
        Path dbf = shp.resolveSibling("spot.dbf");
        try (var out = new BufferedOutputStream(Files.newOutputStream(dbf))) {
            ByteBuffer header = ByteBuffer.allocate(32 + 2 * 32 + 1).order(ByteOrder.LITTLE_ENDIAN);
            header.put(0, (byte) 3).put(1, (byte) 126).put(2, (byte) 1).put(3, (byte) 1);
            header.putInt(4, FEATURES).putShort(8, (short) 97).putShort(10, (short) 21);
            field(header, 32, "id", 'C', 10, 0);
            field(header, 64, "elev", 'N', 10, 2);
            header.put(96, (byte) 0x0D);
            out.write(header.array());
            for (int i = 0; i < FEATURES; i++) {
                String row = String.format(Locale.ROOT, " %-10s%10.2f", "S-" + i, height(i));
                out.write(row.getBytes(StandardCharsets.US_ASCII));
            }
        }
    }

    private static void field(ByteBuffer header, int at, String name, char type, int length, int decimals) {
        header.put(at, name.getBytes(StandardCharsets.US_ASCII)).put(at + 11, (byte) type);
        header.put(at + 16, (byte) length).put(at + 17, (byte) decimals);
    }

    private static void writeGeoPackage(Path file) throws IOException, SQLException {
        Files.deleteIfExists(file);
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file)) {
            try (Statement statement = connection.createStatement()) {
                for (String sql : List.of(
                        "PRAGMA application_id = 1196444487",
                        "PRAGMA user_version = 10300",
                        "CREATE TABLE gpkg_spatial_ref_sys (srs_name TEXT, srs_id INTEGER PRIMARY KEY, organization TEXT,"
                                + " organization_coordsys_id INTEGER, definition TEXT, description TEXT)",
                        "INSERT INTO gpkg_spatial_ref_sys VALUES ('NC', 2264, 'epsg', 2264, 'undefined', NULL)",
                        "CREATE TABLE gpkg_contents (table_name TEXT PRIMARY KEY, data_type TEXT, srs_id INTEGER)",
                        "CREATE TABLE gpkg_geometry_columns (table_name TEXT, column_name TEXT, geometry_type_name TEXT,"
                                + " srs_id INTEGER, z TINYINT, m TINYINT)",
                        "CREATE TABLE spot (fid INTEGER PRIMARY KEY, geom POINT, id TEXT, elev DOUBLE)",
                        "INSERT INTO gpkg_contents VALUES ('spot', 'features', 2264)",
                        "INSERT INTO gpkg_geometry_columns VALUES ('spot', 'geom', 'POINT', 2264, 0, 0)")) {
                    statement.execute(sql);
                }
            }
            connection.setAutoCommit(false);
            try (PreparedStatement row = connection.prepareStatement("INSERT INTO spot VALUES (?, ?, ?, ?)")) {
                for (int i = 0; i < FEATURES; i++) {
                    ByteBuffer blob = ByteBuffer.allocate(29).order(ByteOrder.LITTLE_ENDIAN);
                    blob.put(new byte[] {'G', 'P', 0, 1})
                            .putInt(2264)
                            .put((byte) 1)
                            .putInt(1);
                    blob.putDouble(x(i)).putDouble(y(i));
                    row.setInt(1, i + 1);
                    row.setBytes(2, blob.array());
                    row.setString(3, "S-" + i);
                    row.setDouble(4, height(i));
                    row.addBatch();
                    if (i % 10_000 == 9_999) {
                        row.executeBatch();
                    }
                }
            }
            connection.commit();
        }
    }
}
