package org.fallrule.reader.csv;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Consumer;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;

/**
 * A table of named columns (RFC 4180, section 2, with a header line). Lines without any value are passed over. Its rows are read
 * from the text each time anew: as objects a large table would take some twenty times as much memory.
 *
 * @param text the text
 * @param file the file that it stands in
 * @param separator what parts the cells
 * @param header the columns' names
 */
record CsvTable(String text, Place file, char separator, List<String> header) {
    private static final List<Character> SEPARATORS = List.of(',', ';', '\t');
    private static final int MOST_COLUMNS = 1000;

    /**
     * A row.
     *
     * @param line the line of the file that it begins in, counted from 1
     * @param cells its cells as text, blank where there is nothing
     */
    record Row(int line, List<String> cells) {
        boolean isBlank() {
            return cells.stream().allMatch(String::isBlank);
        }
    }

    static CsvTable parse(String text, Place file) {
        char separator = separator(text);
        CsvCells cells = new CsvCells(text, separator, file);
        while (cells.hasNext()) {
            Row row = cells.next();
            if (!row.isBlank()) {
                return new CsvTable(text, file, separator, header(row, file));
            }
        }
        throw new UnusableInput(file, "is empty; wanted a line of column names, then a line for each point");
    }

    /** Hands on each row, of as many cells as there are names. */
    void read(Consumer<Row> rows) {
        CsvCells cells = new CsvCells(text, separator, file);
        boolean begun = false;
        while (cells.hasNext()) {
            Row row = cells.next();
            if (!row.isBlank() && begun) {
                rows.accept(fitted(row, header, file));
            }
            begun |= !row.isBlank();
        }
    }

    /** The sign that parts the names of the first line: the one that it has most of, a comma where it has none. */
    private static char separator(String text) {
        String first = text.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
        char best = ',';
        for (char sign : SEPARATORS) {
            if (count(first, sign) > count(first, best)) {
                best = sign;
            }
        }
        return best;
    }

    private static long count(String text, char sign) {
        return text.chars().filter(found -> found == sign).count();
    }

    private static List<String> header(Row row, Place file) {
        Place place = file.at(row.line(), 0);
        List<String> cells = withoutBlanksAtEnd(row.cells(), 1);
        if (cells.size() > MOST_COLUMNS) {
            throw new UnusableInput(place, "has " + cells.size() + " columns, wanted at most " + MOST_COLUMNS);
        }
        List<String> names = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        for (String cell : cells) {
            String name = cell.strip().isEmpty() ? "column " + (names.size() + 1) : cell.strip();
            if (!taken.add(name.toLowerCase(Locale.ROOT))) {
                throw new UnusableInput(place, "names the column " + name + " twice; give each a name of its own");
            }
            names.add(name);
        }
        if (row.cells().stream().filter(CsvTable::isNumber).count() > 1) {
            throw new UnusableInput(
                    place,
                    "holds numbers where the columns' names are wanted; write a first line that names them, such as"
                            + " point,northing,easting,elevation,code");
        }
        return names;
    }

    private static boolean isNumber(String cell) {
        return CsvColumn.number(cell.strip(), ';').isPresent();
    }

    private static Row fitted(Row row, List<String> header, Place file) {
        List<String> cells = withoutBlanksAtEnd(row.cells(), header.size());
        if (cells.size() != header.size()) {
            throw new UnusableInput(
                    file.at(row.line(), 0),
                    String.format(
                            Locale.ROOT,
                            "has %d cells where the first line names %d columns; put texts that hold the separator in"
                                    + " quotes",
                            cells.size(),
                            header.size()));
        }
        return new Row(row.line(), cells);
    }

    /** Some writers end a line, or only the first, with a separator. */
    private static List<String> withoutBlanksAtEnd(List<String> cells, int least) {
        int size = cells.size();
        while (size > least && cells.get(size - 1).isBlank()) {
            size--;
        }
        return cells.subList(0, size);
    }
}
