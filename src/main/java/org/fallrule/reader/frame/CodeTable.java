package org.fallrule.reader.frame;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.Optional;
import java.util.zip.GZIPInputStream;

/**
 * The codes that plans in the United States use, with their definitions, as the EPSG Geodetic Parameter Dataset has them. Taken
 * from the library's own copy of that dataset when the table was made, as opening the copy takes more than a second.
 */
final class CodeTable {
    static final String RESOURCE = "epsg-codes.tsv.gz";

    /**
     * One code.
     *
     * @param wkt its well-known text, first edition, on one line
     */
    record Row(int code, AreaOfUse area, String wkt) {

        boolean isGeographic() {
            return wkt.startsWith("GEOGCS");
        }

        String name() {
            return wkt.split("\"", 3)[1];
        }

        String line() {
            return code + "\t" + area.west() + "\t" + area.south() + "\t" + area.east() + "\t" + area.north() + "\t"
                    + wkt;
        }

        private static Row of(String line) {
            String[] cells = line.split("\t", 6);
            AreaOfUse area = new AreaOfUse(number(cells[1]), number(cells[2]), number(cells[3]), number(cells[4]));
            return new Row(Integer.parseInt(cells[0]), area, cells[5]);
        }

        private static double number(String cell) {
            return Double.parseDouble(cell);
        }
    }

    private CodeTable() {}

    /** The row of an EPSG code; empty when the table does not have it. */
    static Optional<Row> find(int code) {
        String start = code + "\t";
        try (BufferedReader lines = open()) {
            return lines.lines()
                    .filter(line -> line.startsWith(start))
                    .findFirst()
                    .map(Row::of);
        } catch (IOException e) {
            throw new UncheckedIOException("The table of codes that comes with the program cannot be read", e);
        }
    }

    static BufferedReader open() throws IOException {
        InputStream resource = Objects.requireNonNull(
                CodeTable.class.getResourceAsStream(RESOURCE), "no table of codes in the program");
        return new BufferedReader(new InputStreamReader(new GZIPInputStream(resource), StandardCharsets.UTF_8));
    }
}
