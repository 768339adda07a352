package org.fallrule.locality;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.document.Fault;
import org.fallrule.document.Keys;
import org.fallrule.document.Node;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Intensity;
import org.fallrule.measure.Time;
import org.fallrule.measure.Unit;
import org.fallrule.measure.UnreadableQuantity;
import org.fallrule.measure.Written;

/** Reads rows such as {@code {minutes: 5, by: 6.9 in/h}}; gathers every fault. */
final class IntensityTableReader {
    private final List<Fault> faults;

    IntensityTableReader(List<Fault> faults) {
        this.faults = faults;
    }

    /** A row as written, to be held against the row before it. */
    private record Row(Node node, Time duration, Written intensity) {}

    /** The table; none where a row could not be read, so that nobody computes from half a table. */
    Optional<IntensityTable> read(Node node) {
        if (!(node instanceof Node.Sequence list) || list.items().isEmpty()) {
            faults.add(new Fault(
                    node.place(),
                    "intensity: found " + node.kind() + ", wanted rows such as {minutes: 5, by: 6.9 in/h}"));
            return Optional.empty();
        }
        int before = faults.size();
        List<Row> rows = new ArrayList<>();
        list.items().forEach(item -> row(item).ifPresent(rows::add));
        for (int i = 1; i < rows.size(); i++) {
            compare(rows.get(i - 1), rows.get(i));
        }
        return faults.size() > before
                ? Optional.empty()
                : Optional.of(new IntensityTable(rows.stream()
                        .map(row -> new IntensityTable.Row(row.duration, (Intensity) row.intensity.quantity()))
                        .toList()));
    }

    private Optional<Row> row(Node item) {
        if (!(item instanceof Node.Mapping mapping)) {
            faults.add(new Fault(item.place(), "found " + item.kind() + ", wanted {minutes: 5, by: 6.9 in/h}"));
            return Optional.empty();
        }
        Keys keys = new Keys(mapping, faults);
        Optional<Time> duration = keys.required("minutes", "the duration in minutes, such as 5")
                .flatMap(text -> positive(text, Dimension.RATIO))
                .map(minutes -> new Time(minutes.quantity().si() * Unit.MINUTE.toSi()));
        Optional<Written> intensity = keys.required("by", "the intensity with its unit, such as 6.9 in/h")
                .flatMap(text -> positive(text, Dimension.INTENSITY));
        keys.refuseOthers("a row of intensity");
        return duration.flatMap(time -> intensity.map(by -> new Row(item, time, by)));
    }

    private Optional<Written> positive(Node.Scalar text, Dimension dimension) {
        try {
            Written written = Written.parse(text.text(), dimension);
            if (written.quantity().si() > 0) {
                return Optional.of(written);
            }
            faults.add(new Fault(text.place(), text.kind() + " is not above zero; give what the table prints"));
        } catch (UnreadableQuantity e) {
            faults.add(new Fault(text.place(), e.says()));
        }
        return Optional.empty();
    }

    private void compare(Row before, Row row) {
        if (row.duration.seconds() <= before.duration.seconds()) {
            fault(row, "the duration is not longer than that of the row before; write the shortest first, each once");
        }
        if (row.intensity.unit() != before.intensity.unit()) {
            fault(
                    row,
                    "the row before is in " + before.intensity.unit().symbol() + ", this one in "
                            + row.intensity.unit().symbol() + "; write the whole table in one unit");
        } else if (row.intensity.quantity().si() > before.intensity.quantity().si()) {
            fault(
                    row,
                    "it rains harder than in the shorter row before; check the table, a longer rain is a weaker one");
        }
    }

    private void fault(Row row, String says) {
        faults.add(new Fault(row.node.place(), says));
    }
}
