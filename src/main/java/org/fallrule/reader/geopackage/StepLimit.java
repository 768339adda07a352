package org.fallrule.reader.geopackage;

import java.sql.Connection;
import java.sql.SQLException;
import org.sqlite.ProgressHandler;

/**
 * Stops SQLite after more steps of its machine than a plain reading of the file can take: a row takes a few steps for each of its
 * columns, and every value at least a byte of the file. Views may join, so the allowance is generous; it is counted in steps, not in
 * time, so that the same file always has the same outcome.
 */
final class StepLimit extends ProgressHandler {
    private static final int STEPS_A_CALL = 10_000;
    private static final long STEPS_FOR_ANY_FILE = 200_000_000;
    private static final long STEPS_A_BYTE = 50;

    private final long calls;
    private long callsLeft;

    /** @param bytes the file's length */
    StepLimit(long bytes) {
        calls = (STEPS_FOR_ANY_FILE + STEPS_A_BYTE * bytes) / STEPS_A_CALL;
        callsLeft = calls;
    }

    void on(Connection connection) throws SQLException {
        setHandler(connection, STEPS_A_CALL, this);
    }

    /** Allows as much again as a reading can take. */
    void renew() {
        callsLeft = calls;
    }

    @Override
    protected int progress() {
        callsLeft--;
        return callsLeft < 0 ? 1 : 0;
    }
}
