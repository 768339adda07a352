package org.fallrule.reader.raster;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.frame.LocalFrame;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Broken and hostile rasters end in a fault that names the file, never in another exception. */
class HostileRasterTest {
    private static final LocalFrame FRAME = Fixture.frame("EPSG:2264", 1450240, 549820);
    private static final String HEADER = "ncols 2\nnrows 2\nxllcorner 1450200\nyllcorner 549800\ncellsize 50\n";

    @TempDir
    Path folder;

    private void read(Path file) {
        Fixture.read(file, "EPSG:2264", FRAME, Fixture.around(1000));
    }

    private Path tiff(byte[] bytes) throws IOException {
        return Files.write(folder.resolve("dem.tif"), bytes);
    }

    private Path grid(String text) throws IOException {
        return Files.writeString(folder.resolve("dem.asc"), text);
    }

    @ParameterizedTest(name = "{0} cut off anywhere")
    @ValueSource(strings = {"plain.tif", "deflate_float_tiled.tif", "zstd_float.tif", "bigtiff.tif", "lzw_int16.tif"})
    void aTiffThatIsCutOffIsRefused(String name) throws IOException {
        byte[] whole = Files.readAllBytes(Fixture.path(name));
        for (int length = 0; length < whole.length; length += length < 700 ? 7 : 211) {
            Path cut = tiff(Arrays.copyOf(whole, length));
            assertThatThrownBy(() -> read(cut))
                    .as("%d bytes", length)
                    .isInstanceOf(UnusableInput.class)
                    .hasMessageStartingWith("dem.tif: ");
        }
    }

    @ParameterizedTest(name = "{0} with bytes changed at random")
    @ValueSource(
            strings = {
                "plain.tif",
                "deflate_float_tiled.tif",
                "zstd_float.tif",
                "bigtiff.tif",
                "lzw_int16.tif",
                "turned.tif"
            })
    void aTiffWithChangedBytesIsReadOrRefused(String name) throws IOException {
        byte[] whole = Files.readAllBytes(Fixture.path(name));
        Random random = new Random(17);
        for (int run = 0; run < 300; run++) {
            byte[] changed = whole.clone();
            for (int i = 0; i < 3; i++) {
                changed[random.nextInt(run % 2 == 0 ? 600 : whole.length)] = (byte) random.nextInt(256);
            }
            Path file = tiff(changed);
            try {
                read(file);
            } catch (UnusableInput refused) {
                assertThat(refused.faults()).isNotEmpty();
            }
        }
    }

    @Test
    void aFileThatIsNoTiffIsRefused() throws IOException {
        Path file = tiff("%PDF-1.7 this is not a raster".getBytes(java.nio.charset.StandardCharsets.US_ASCII));
        assertThatThrownBy(() -> read(file))
                .isInstanceOf(UnusableInput.class)
                .hasMessage("dem.tif: does not begin as a TIFF file does (II or MM); give the GeoTIFF again");
    }

    @ParameterizedTest(name = "tag {0} set to {1}")
    @CsvSource({"256, 2000000000", "257, 2000000000", "256, 0", "277, 4", "258, 7", "278, 1", "256, 9000000"})
    void absurdSizesAreRefusedBeforeAnythingIsAllocated(int tag, int value) throws IOException {
        byte[] whole = Files.readAllBytes(Fixture.path("plain.tif"));
        ByteBuffer bytes = ByteBuffer.wrap(whole).order(ByteOrder.LITTLE_ENDIAN);
        int directory = bytes.getInt(4);
        for (int i = 0; i < bytes.getShort(directory); i++) {
            int at = directory + 2 + 12 * i;
            if (Short.toUnsignedInt(bytes.getShort(at)) == tag) {
                bytes.putShort(at + 2, (short) 4).putInt(at + 4, 1).putInt(at + 8, value);
            }
        }
        Path file = tiff(whole);
        assertThatThrownBy(() -> read(file)).isInstanceOf(UnusableInput.class).hasMessageStartingWith("dem.tif: ");
    }

    /** Each of many tags that claims the whole file would fill the memory, though no one of them is too long. */
    @Test
    void tagsThatClaimTheSameBytesOverAndOverAreRefused() throws IOException {
        int entries = 4000;
        ByteBuffer bytes = ByteBuffer.allocate(1 << 20).order(ByteOrder.LITTLE_ENDIAN);
        bytes.putShort((short) 0x4949).putShort((short) 42).putInt(8).putShort((short) entries);
        for (int i = 0; i < entries; i++) {
            bytes.putShort((short) (40_000 + i))
                    .putShort((short) 1)
                    .putInt(900_000)
                    .putInt(0);
        }
        Path file = tiff(bytes.array());
        assertThatThrownBy(() -> read(file))
                .isInstanceOf(UnusableInput.class)
                .hasMessage("dem.tif: claims more bytes of values for its tags than it has; it seems broken; give the"
                        + " GeoTIFF again");
    }

    @Test
    void textInPlaceOfAHeightIsRefusedWithItsLine() throws IOException {
        Path file = grid(HEADER + "1 2\n3 high\n");
        assertThatThrownBy(() -> read(file))
                .isInstanceOf(UnusableInput.class)
                .hasMessage("dem.asc:7: found \"high\"; wanted a number, such as 412.35");
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"1,5", "1d", "0x1p3", "1e", "--3", "Infinity", "1.2.3", "\u0661"})
    void whatIsNoNumberOfTheFormatIsRefused(String word) throws IOException {
        Path file = grid(HEADER + "1 2\n3 " + word + "\n");
        assertThatThrownBy(() -> read(file)).isInstanceOf(UnusableInput.class).hasMessageStartingWith("dem.asc:7: ");
    }

    @Test
    void absurdCountsAreRefusedBeforeAnythingIsAllocated() throws IOException {
        Path file = grid(HEADER.replace("ncols 2", "ncols 9999999").replace("nrows 2", "nrows 9999999") + "1 2\n3 4\n");
        assertThatThrownBy(() -> read(file))
                .isInstanceOf(UnusableInput.class)
                .hasMessageContaining("claims 9999999 columns and 9999999 rows, but has room for");
    }

    @ParameterizedTest(name = "{0} for {1}")
    @CsvSource({
        "ncols 2, ncols -2",
        "ncols 2, ncols 1e300",
        "ncols 2, ncols two",
        "ncols 2, ncols 2 ncols 2",
        "nrows 2, nrows 0.5",
        "nrows 2, ''",
        "cellsize 50, cellsize 0",
        "cellsize 50, cellsize -1",
        "cellsize 50, cellsize 1e-320",
        "cellsize 50, cellsize nan",
        "xllcorner 1450200, xllcorner 1e308",
        "xllcorner 1450200, origin 3",
        "ncols 2, ncols 3",
        "nrows 2, nrows 1",
    })
    void aBrokenHeaderIsRefused(String found, String replacement) throws IOException {
        Path file = grid(HEADER.replace(found, replacement) + "1 2\n3 4\n");
        assertThatThrownBy(() -> read(file)).isInstanceOf(UnusableInput.class).hasMessageStartingWith("dem.asc");
    }

    @Test
    void aWordWithoutEndIsRefused() throws IOException {
        Path file = grid(HEADER + "1".repeat(1_000_000));
        assertThatThrownBy(() -> read(file)).isInstanceOf(UnusableInput.class).hasMessageContaining("longer than any");
    }
}
