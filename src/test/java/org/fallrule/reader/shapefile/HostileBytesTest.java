package org.fallrule.reader.shapefile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fallrule.reader.shapefile.Content.line;
import static org.fallrule.reader.shapefile.Content.point;
import static org.fallrule.reader.shapefile.Content.polygon;
import static org.fallrule.reader.shapefile.Content.square;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.layer.RawLayer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HostileBytesTest {
    private static final List<String> EXTENSIONS = List.of("shp", "dbf", "shx", "cpg", "prj");

    @TempDir
    Path folder = Path.of("");

    private Made made = new Made(folder);

    @BeforeEach
    void startInTheFolder() {
        made = new Made(folder);
    }

    @ParameterizedTest(name = "a polygon that claims {0} parts and {1} points is refused")
    @CsvSource({
        "2147483647, 5, 'claims 2147483647 parts, which take 8589934632 bytes, but its content has 128'",
        "1, 2147483647, 'claims 2147483647 points, which take 34359738400 bytes, but its content has 128'",
        "1, 6, 'claims 6 points, which take 144 bytes, but its content has 128'",
        "23, 5, 'claims 23 parts, which take 136 bytes, but its content has 128'"
    })
    void countsBeyondTheContentAreRefused(int parts, int points, String found) {
        byte[] polygon = polygon(square(0, 0, 1));
        System.arraycopy(new Bytes().little(parts, points).toArray(), 0, polygon, 36, 8);

        assertThat(made.shapes(5, polygon).refusal())
                .containsExactly("in/marks.shp: feature 1: " + found + "; copy or export the file again");
    }

    @Test
    void negativeCountsAreRefused() {
        byte[] polygon = polygon(square(0, 0, 1));
        System.arraycopy(new Bytes().little(-1).toArray(), 0, polygon, 40, 4);
        byte[] points = new Bytes().little(8).doubles(0, 0, 0, 0).little(-2).toArray();

        assertThat(made.shapes(5, polygon, points).refusal())
                .contains(
                        "in/marks.shp: feature 1: claims -1 points; wanted none or more; export the layer again",
                        "in/marks.shp: feature 2: claims -2 points; wanted none or more; export the layer again");
    }

    @Test
    void aMultiPointThatClaimsMorePointsThanItHoldsIsRefused() {
        byte[] points = new Bytes()
                .little(8)
                .doubles(0, 0, 0, 0)
                .little(Integer.MAX_VALUE)
                .doubles(1, 2)
                .toArray();

        assertThat(made.shapes(8, points).refusal())
                .containsExactly("in/marks.shp: feature 1: claims 2147483647 points, which take 34359738392 bytes, "
                        + "but its content has 56; copy or export the file again");
    }

    @ParameterizedTest(name = "a second record that claims {0} bytes of content is refused")
    @CsvSource({"22,11", "4294967294,2147483647", "0,0", "2,1", "-2,-1", "-4294967296,-2147483648"})
    void aRecordThatClaimsMoreThanThereIsOrNothingIsRefused(long bytes, int words) {
        made.shapes(1, point(1, 2), point(3, 4));
        byte[] lying = Made.mainFile(1, point(1, 2), point(3, 4));
        System.arraycopy(new Bytes().big(words).toArray(), 0, lying, 132, 4);

        assertThat(made.with("marks.shp", lying).refusal())
                .containsExactly(
                        "in/marks.shp: feature 2: its record claims " + bytes + " bytes of content, where 20 are "
                                + "left in the file; wanted at least 4 bytes and no more than are there; "
                                + "copy or export the file again");
    }

    @Test
    void aFileThatEndsWithinARecordHeaderIsRefused() {
        made.shapes(1, point(1, 2), point(3, 4));

        assertThat(made.with("marks.shp", Arrays.copyOf(Made.mainFile(1, point(1, 2), point(3, 4)), 131))
                        .refusal())
                .containsExactly(
                        "in/marks.shp: feature 2: the file ends within its record header; wanted at least 4 bytes "
                                + "and no more than are there; copy or export the file again");
    }

    @ParameterizedTest(name = "marks.{0} cut off after any byte is read or refused")
    @ValueSource(strings = {"shp", "dbf", "shx", "cpg"})
    void aFileCutOffAnywhereIsReadOrRefused(String extension) throws IOException {
        copy("polygon_zm");
        byte[] whole = Files.readAllBytes(folder.resolve("marks." + extension));

        int refused = 0;
        for (int length = 0; length < whole.length; length++) {
            made.with("marks." + extension, Arrays.copyOf(whole, length));
            boolean read = readOrRefused();
            refused += read ? 0 : 1;
            assertThat(read && extension.equals("shp"))
                    .as("read though cut after %d", length)
                    .isFalse();
        }
        boolean needed = extension.equals("shp") || extension.equals("dbf");
        assertThat(refused > 0).isEqualTo(needed);
    }

    @ParameterizedTest(name = "{0} with bytes changed at random is read or refused")
    @ValueSource(
            strings = {
                "point",
                "point_zm",
                "multipoint_zm",
                "line_zm",
                "polygon",
                "polygon_z",
                "polygon_zm",
                "lots",
                "deleted"
            })
    void changedBytesAreReadOrRefused(String name) throws IOException {
        copy(name);
        Random random = new Random(20260131);
        int refused = 0;
        for (int round = 0; round < 400; round++) {
            String file = "marks." + EXTENSIONS.get(random.nextInt(3));
            byte[] whole = Files.readAllBytes(folder.resolve(file));
            made.with(file, changed(whole, random));
            refused += readOrRefused() ? 0 : 1;
            made.with(file, whole);
        }
        assertThat(refused).isBetween(1, 399);
    }

    @ParameterizedTest(name = "{0} random bytes behind a good header are read or refused")
    @ValueSource(ints = {1, 7, 8, 12, 50, 400, 5000})
    void randomRecordsAreReadOrRefused(int size) {
        Random random = new Random(size);
        made.shapes(5, polygon(square(0, 0, 1)));
        for (int round = 0; round < 50; round++) {
            byte[] noise = new byte[size];
            random.nextBytes(noise);
            made.with("marks.shp", new Bytes().raw(Made.mainFile(5)).raw(noise).toArray());
            assertThat(readOrRefused()).isFalse();
        }
    }

    @Test
    void ordinatesOfAnySizeAreReadOrRefused() {
        double[] sizes = {0, 1, -1, 1e-308, 4.9e-324, 1e38, 1e154, 1e300, 1.7e308, -9e37, 0.1};
        Random random = new Random(7);
        for (int round = 0; round < 2000; round++) {
            double[][] rings = new double[1 + random.nextInt(4)][];
            Arrays.setAll(
                    rings,
                    index -> random.ints(8 + 2 * random.nextInt(4), 0, sizes.length)
                            .mapToDouble(pick -> sizes[pick])
                            .toArray());
            RawLayer layer = made.shapes(5, polygon(rings)).read();
            assertThat(layer.features().get(0).geometry()).isPresent();
        }
        assertThat(made.shapes(3, line(1e308, 1e308, 0, 0)).firstShape().getNumPoints())
                .isEqualTo(2);
    }

    private boolean readOrRefused() {
        try {
            assertThat(made.read().file()).isEqualTo("in/marks.shp");
            return true;
        } catch (UnusableInput refused) {
            assertThat(refused.faults()).isNotEmpty().allSatisfy(fault -> {
                assertThat(fault.where().file()).startsWith("in/marks.");
                assertThat(fault.says()).contains(";");
            });
            return false;
        }
    }

    private void copy(String name) throws IOException {
        try (Stream<Path> fixtures =
                Files.list(FilesWrittenByGdalTest.fixture(name + ".shp").resolveSibling("."))) {
            for (Path fixture : fixtures.toList()) {
                String file = String.valueOf(fixture.getFileName());
                if (EXTENSIONS.stream().anyMatch(extension -> file.equals(name + "." + extension))) {
                    made.with("marks." + file.substring(name.length() + 1), Files.readAllBytes(fixture));
                }
            }
        }
    }

    private static byte[] changed(byte[] whole, Random random) {
        byte[] changed = whole.clone();
        for (int change = random.nextInt(4); change >= 0; change--) {
            changed[random.nextInt(changed.length)] = (byte) (random.nextBoolean() ? random.nextInt() : -1);
        }
        return changed;
    }
}
