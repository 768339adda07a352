package org.fallrule.hydrology;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Flow;
import org.fallrule.measure.Length;
import org.fallrule.measure.Printed;
import org.fallrule.measure.Slope;
import org.fallrule.measure.Unit;
import org.fallrule.measure.Written;
import org.fallrule.method.Answer;
import org.fallrule.method.Method;

/** A plumbing code's table of what storm drains and leaders carry by nominal size. The figures are data, with their source. */
public final class CodeTable {
    public static final Method METHOD = Method.named(
                    "code_table",
                    "Sizing table of a plumbing code",
                    "What a code lets a storm drain of a nominal size and slope, or a leader, carry.")
            .formula("capacity = the printed figure of the size, in the column of the next flatter slope")
            .symbol("capacity", "flow", "gpm")
            .source("International Plumbing Code, 2018, Table 1106.2 (read in a reprint)")
            .source("Uniform Plumbing Code, Table 1103.2 (from memory)")
            .source("National Standard Plumbing Code, 2006, Table 13.6.1 (read)")
            .limit(
                    "The edition counts: the same 4 in pipe at 1/8 in/ft carries 78 gpm in an older table and 115 gpm in a"
                            + " newer one.")
            .limit(
                    "Only sizes that the table lists, and no slope flatter than its flattest: no answer there. Between two"
                            + " columns the flatter one counts.")
            .limit("The 2 in and 5 in rows of the 2018 table do not follow the formula of the others; they are used as"
                    + " printed.");

    /** The tables that come with the program. */
    public enum Edition {
        IPC_2018,
        UPC,
        NSPC_2006;

        private String file() {
            return switch (this) {
                case IPC_2018 -> "ipc_2018_1106_2.csv";
                case UPC -> "upc_1103_2.csv";
                case NSPC_2006 -> "nspc_2006_13_6_1.csv";
            };
        }
    }

    private static final String VERTICAL = "vertical";

    private final Map<String, String> says = new LinkedHashMap<>();
    private List<String> columns = List.of();
    private final List<List<Double>> rows = new ArrayList<>();

    private CodeTable() {}

    /** The table of an edition. */
    public static CodeTable of(Edition edition) {
        CodeTable table = new CodeTable();
        try (InputStream file = Objects.requireNonNull(CodeTable.class.getResourceAsStream(edition.file()));
                BufferedReader lines = new BufferedReader(new InputStreamReader(file, StandardCharsets.UTF_8))) {
            lines.lines().forEach(table::line);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return table;
    }

    private void line(String line) {
        if (line.startsWith("#")) {
            String[] parts = line.substring(1).split(":", 2);
            says.put(parts[0].strip(), parts[1].strip());
        } else if (columns.isEmpty()) {
            columns = Arrays.asList(line.split(","));
        } else {
            rows.add(Arrays.stream(line.split(",")).map(Double::valueOf).toList());
        }
    }

    /** Document and table: {@code National Standard Plumbing Code, 2006 edition, Table 13.6.1, …}. */
    public String source() {
        return says.get("document") + ", " + says.get("section") + " (" + says.get("known") + ")";
    }

    /** What a leader of a nominal size carries, or why the table does not tell. */
    public Answer<Flow> leader(Length size) {
        int column = columns.indexOf(VERTICAL);
        return column < 0 ? Answer.none(source() + " lists no leaders") : cell(size, column);
    }

    /** What a drain of a nominal size at a slope carries, or why the table does not tell. */
    public Answer<Flow> drain(Length size, Slope slope) {
        int flatter = 0;
        for (int i = 1; i < columns.size(); i++) {
            if (!columns.get(i).equals(VERTICAL)
                    && slope(columns.get(i)) <= slope.ratio() + Dimension.SLOPE.tolerance()) {
                flatter = i;
            }
        }
        return flatter == 0
                ? Answer.none(source() + " lists no drain as flat as " + Printed.of(slope, Unit.PERCENT))
                : cell(size, flatter);
    }

    private static double slope(String column) {
        return Written.parse(column, Dimension.SLOPE).quantity().si();
    }

    private Answer<Flow> cell(Length size, int column) {
        Optional<List<Double>> row = rows.stream()
                .filter(each ->
                        Math.abs(Length.inches(each.get(0)).metres() - size.metres()) <= Dimension.LENGTH.tolerance())
                .findFirst();
        return row.map(found -> Answer.of(new Flow(found.get(column) * Unit.GALLON_PER_MINUTE.toSi())))
                .orElseGet(() -> Answer.none(source() + " lists no size of " + Printed.trimmed(size.in(Unit.INCH))
                        + " in; it lists "
                        + rows.stream()
                                .map(each -> Printed.trimmed(each.get(0)))
                                .collect(Collectors.joining(", "))
                        + " in"));
    }
}
