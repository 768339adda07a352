package org.fallrule.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.reader.ColumnFinder.Column;
import org.fallrule.site.Attribute;

/** Asks which of several lots is the site's own, where no column says it. */
final class OwnLot {
    /** Lots around a site; a whole county's are not listed. */
    private static final int MOST = 60;

    private final Ledger ledger;
    private final Placement placed;
    private final ColumnTaker columns;

    OwnLot(Ledger ledger, Placement placed, ColumnTaker columns) {
        this.ledger = ledger;
        this.placed = placed;
        this.columns = columns;
    }

    /**
     * The line that names the column which tells the own lot: the ids, each with a value that says whether it is.
     *
     * @param values the values of the layer, to which those of the ids are added
     */
    Optional<Statement> asked(Map<String, List<Statement>> values) {
        if (placed.features().size() < 2) {
            return Optional.empty();
        }
        Column id = columns.taken().get(Attribute.ID);
        List<String> ids = id == null
                ? List.of()
                : List.copyOf(columns.cells().counts(id.name()).keySet());
        if (id == null || ids.size() != placed.features().size() || ids.size() > MOST) {
            ledger.leaveOpen(
                    "which of the lots (" + Drawn.counted(placed.table(), placed.features()) + ") in "
                            + placed.table().source()
                            + " is the plan's own? Keep only it and its neighbours in the file, and mark it in a column"
                            + " own; then take this line away",
                    List.of());
            return Optional.empty();
        }
        Optional<String> own =
                ledger.ask(Question.choice("own." + placed.table().source(), "which lot is the plan's own?", ids));
        List<Statement> lines = new ArrayList<>();
        for (String each : ids) {
            lines.add(
                    own.isEmpty()
                            ? Statement.none(each, "")
                            : Statement.certain(each, String.valueOf(own.get().equals(each))));
        }
        if (own.isEmpty()) {
            ledger.leaveOpen(
                    "which lot is the plan's own? Write true behind it under values: own: of the lots; then take this"
                            + " line away",
                    List.of());
        }
        values.put(Attribute.OWN.name(), lines);
        return Optional.of(Statement.likely(Attribute.OWN.name(), id.name(), "see values"));
    }
}
