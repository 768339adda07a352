package org.fallrule.hydraulics.table;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Flow;
import org.fallrule.measure.Length;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.Slope;
import org.fallrule.method.Answer;
import org.fallrule.method.Method;

/**
 * A plumbing code's printed table of what storm drains and leaders carry. Where a code is asked, its print counts and not a
 * formula: the print has rows that follow none.
 */
public final class StormDrainTable {
    public static final Method METHOD = Method.named(
                    "printed_storm_drain",
                    "Storm drains by a plumbing code's table",
                    "What a code's table lets a horizontal drain or a vertical leader of a size carry.")
            .formula("read in the table: the row of the size, the column of the steepest slope that the drain reaches")
            .formula("roof area = flow / (0.0104 i)")
            .symbol("i", "design intensity of the rain", "in/h")
            .source("International Plumbing Code 2018, table 1106.2 (read in a reprint)")
            .source("Uniform Plumbing Code, table 1103.2, older editions 11-2 (from memory but for one figure)")
            .source("National Standard Plumbing Code 2006, table 13.6.1 (read)")
            .limit(
                    "Only the sizes printed; nothing is interpolated. Between two slopes the flatter column counts; flatter"
                            + " than the first column there is no answer.")
            .limit("Editions differ: for a 4 in drain at 1/8 in/ft one prints 78 gpm, a later one 115. The edition is"
                    + " part of the question.")
            .limit("The 2018 table is Manning's formula with n = 0.010 on Schedule 40 bores but for its 2 in and 5 in"
                    + " rows; the older tables follow n = 0.015 on nominal bores.");

    private final String document;
    private final String known;
    private final List<Slope> slopes;
    private final List<Row> rows;

    private record Row(Length size, Optional<Flow> vertical, List<Flow> horizontal) {}

    private StormDrainTable(DataFile file) {
        this.document = file.text("document");
        this.known = file.text("known");
        this.slopes = file.quantities("slopes", Dimension.SLOPE).stream()
                .map(slope -> new Slope(slope.si()))
                .toList();
        this.rows = file.rows("rows").stream().map(StormDrainTable::row).toList();
    }

    /** International Plumbing Code 2018, table 1106.2. */
    public static StormDrainTable ipc2018() {
        return new StormDrainTable(DataFile.shipped("storm-drain-ipc-2018"));
    }

    /** Uniform Plumbing Code, table 1103.2. */
    public static StormDrainTable upc() {
        return new StormDrainTable(DataFile.shipped("storm-drain-upc"));
    }

    /** National Standard Plumbing Code 2006, table 13.6.1, leaders only. */
    public static StormDrainTable nspc2006() {
        return new StormDrainTable(DataFile.shipped("storm-drain-nspc-2006"));
    }

    private static Row row(DataFile row) {
        return new Row(
                new Length(row.quantity("size", Dimension.LENGTH).si()),
                row.findQuantity("vertical", Dimension.FLOW).map(StormDrainTable::flow),
                row.quantities("horizontal", Dimension.FLOW).stream()
                        .map(StormDrainTable::flow)
                        .toList());
    }

    private static Flow flow(Quantity quantity) {
        return new Flow(quantity.si());
    }

    /** The document that prints the table. */
    public String document() {
        return document;
    }

    /** How its figures are known. */
    public String known() {
        return known;
    }

    /** What a horizontal drain may carry; none where the table prints no such size or its first slope is steeper. */
    public Answer<Flow> horizontal(Length nominalSize, Slope slope) {
        return find(nominalSize).then(row -> {
            int column = steepestReached(Math.min(slopes.size(), row.horizontal.size()), slope);
            return column < 0
                    ? Answer.none(document + " prints no drain this flat; its flattest is "
                            + (slopes.isEmpty() ? "none" : slopes.get(0).ratio() * 100 + " %"))
                    : Answer.of(row.horizontal.get(column));
        });
    }

    /** What a vertical leader may carry; none where the table prints none. */
    public Answer<Flow> vertical(Length nominalSize) {
        return find(nominalSize)
                .then(row -> row.vertical
                        .map(Answer::of)
                        .orElseGet(() -> Answer.none(document + " prints no leader of this size")));
    }

    private int steepestReached(int columns, Slope slope) {
        double tolerance = Dimension.SLOPE.tolerance();
        return IntStream.range(0, columns)
                .filter(i -> slopes.get(i).ratio() <= slope.ratio() + tolerance)
                .max()
                .orElse(-1);
    }

    private Answer<Row> find(Length size) {
        Function<Row, Boolean> fits =
                row -> Math.abs(row.size.metres() - size.metres()) <= Dimension.LENGTH.tolerance();
        return rows.stream()
                .filter(fits::apply)
                .findFirst()
                .map(Answer::of)
                .orElseGet(() -> Answer.none(document + " prints no pipe of this size"));
    }
}
