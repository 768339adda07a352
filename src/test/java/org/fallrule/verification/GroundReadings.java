package org.fallrule.verification;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.fallrule.terrain.GroundSurface;

/**
 * Readings of open ground data by another program, each of which a test compares.
 *
 * @param data what was read
 * @param readings how many places
 * @param heldTo how near the test holds this program to them
 */
record GroundReadings(String data, int readings, String heldTo) {

    static List<GroundReadings> all() {
        return List.of(
                of("heights between the cells of the raster of Olinda", "olinda_heights.txt", "0.2 mm"),
                of("grades at its cells", "olinda_grades.txt", "the turn of the local frame against the grid, 0.6 %"),
                of("heights between the spots of Davis (1973)", "davis_1973_linear.txt", "a millionth of a foot"));
    }

    private static GroundReadings of(String data, String file, String heldTo) {
        try (InputStream in = Objects.requireNonNull(GroundSurface.class.getResourceAsStream(file), file)) {
            int readings = (int) new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .count();
            return new GroundReadings(data, readings, heldTo);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    String row() {
        return VerificationPage.row(data, readings, heldTo);
    }
}
