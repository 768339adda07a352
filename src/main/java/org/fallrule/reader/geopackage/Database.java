package org.fallrule.reader.geopackage;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Locale;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.layer.Findings;
import org.sqlite.SQLiteConfig;

/**
 * A GeoPackage opened for reading only. No lock is taken and nothing is written beside the file: it is opened as one that does not
 * change, or, where another program's changes wait in a {@code -wal} or {@code -journal}, a private copy is opened with them.
 *
 * <p>A file from elsewhere may hold views that compute without end. So a value may be no longer than {@value #LONGEST_VALUE} bytes, and
 * SQLite may take only as many steps as a reading of the file can need ({@link StepLimit}).
 */
final class Database implements AutoCloseable {
    static final int LONGEST_VALUE = 64 << 20;

    private final Connection connection;
    private final Snapshot snapshot;
    private final SqliteHeader header;
    private final StepLimit steps;

    private Database(Connection connection, Snapshot snapshot, SqliteHeader header) {
        this.connection = connection;
        this.snapshot = snapshot;
        this.header = header;
        this.steps = new StepLimit(snapshot.length());
    }

    static Database open(Path gpkg, Place place) {
        Snapshot snapshot = Snapshot.of(gpkg, place);
        try {
            SqliteHeader header = SqliteHeader.read(snapshot.file(), place);
            header.refuseOther(snapshot.hasChanges());
            Connection connection = connect(snapshot, place);
            Database database = new Database(connection, snapshot, header);
            database.prepare(place);
            return database;
        } catch (RuntimeException failed) {
            snapshot.close();
            throw failed;
        }
    }

    private static Connection connect(Snapshot snapshot, Place place) {
        SQLiteConfig config = new SQLiteConfig();
        config.setReadOnly(!snapshot.hasChanges());
        config.setPragma(SQLiteConfig.Pragma.LIMIT_LENGTH, String.valueOf(LONGEST_VALUE));
        String path = snapshot.file().toUri().getRawPath();
        String how = snapshot.hasChanges() ? "mode=rw" : "mode=ro&immutable=1";
        try {
            return config.createConnection("jdbc:sqlite:file:" + path + "?" + how);
        } catch (SQLException failed) {
            throw unusable(failed, place);
        } catch (LinkageError failed) {
            throw new UnusableInput(
                    place,
                    "cannot be read on this computer, as SQLite does not start here (" + failed.getMessage()
                            + "); export its layers as GeoJSON or shapefiles");
        }
    }

    private void prepare(Place place) {
        try (Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA trusted_schema = OFF");
            statement.execute("PRAGMA cell_size_check = ON");
            steps.on(connection);
            statement.executeQuery("SELECT count(*) FROM sqlite_schema").close();
            statement.execute("PRAGMA query_only = ON");
        } catch (SQLException failed) {
            closeQuietly();
            throw unusable(failed, place);
        }
    }

    /** The connection, for the reading of one table. */
    Connection connection() {
        steps.renew();
        return connection;
    }

    /** Notes a file that says it belongs to another application, or to none. */
    void noteApplication(Place table, Findings findings) {
        header.noteApplication(table, findings);
    }

    @Override
    public void close() {
        closeQuietly();
        snapshot.close();
    }

    private void closeQuietly() {
        try {
            connection.close();
        } catch (SQLException ignored) {
            // nothing was written, so nothing can be lost
        }
    }

    /** What SQLite says went wrong, in a sentence with the way out. */
    static UnusableInput unusable(SQLException failed, Place place) {
        String said = String.valueOf(failed.getMessage());
        String lower = said.toLowerCase(Locale.ROOT);
        if (lower.contains("interrupt")) {
            return new UnusableInput(
                    place,
                    "takes more computing than a file of its size can need; export the layer as a plain table, not a"
                            + " view");
        }
        if (lower.contains("too big")) {
            return new UnusableInput(
                    place,
                    "holds a value of more than " + (LONGEST_VALUE >> 20)
                            + " MiB, which no feature of a site needs; split the feature or leave the column out");
        }
        String broken = lower.contains("malformed") || lower.contains("corrupt") || lower.contains("not a database")
                ? "is broken"
                : "cannot be read";
        return new UnusableInput(place, broken + " (SQLite says: " + said.strip() + "); copy or export it again");
    }
}
