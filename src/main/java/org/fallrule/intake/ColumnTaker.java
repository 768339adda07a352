package org.fallrule.intake;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fallrule.reader.ColumnFinder;
import org.fallrule.reader.ColumnFinder.Column;
import org.fallrule.reader.Vocabulary;
import org.fallrule.site.Attribute;
import org.fallrule.site.Role;

/** Finds the column of each attribute of a layer by name and values; two that could both be it are asked about. */
final class ColumnTaker {
    private static final String NONE = "none of them";

    private final TradeWords words;
    private final Ledger ledger;
    private final Placement placed;
    private final Cells cells;
    private final ValueTaker values;
    private final Map<Attribute<?>, Column> taken = new LinkedHashMap<>();
    /** Columns that a person named where the name alone was no help; one number may be length and width. */
    private final Set<String> answered = new HashSet<>();

    private final List<Statement> fields = new ArrayList<>();

    ColumnTaker(TradeWords words, Ledger ledger, Placement placed) {
        this.words = words;
        this.ledger = ledger;
        this.placed = placed;
        this.cells = Cells.of(placed.features(), placed.table().raw().columns());
        this.values = new ValueTaker(words, ledger);
    }

    /** The columns that were taken, after {@link #take}. */
    Map<Attribute<?>, Column> taken() {
        return taken;
    }

    /** The lines under {@code fields}, after {@link #take}. */
    List<Statement> fields() {
        return fields;
    }

    Cells cells() {
        return cells;
    }

    /** @param settled attributes that need no column */
    void take(Set<Attribute<?>> settled) {
        List<Attribute<?>> wanted = Attribute.of(placed.role()).stream()
                .filter(attribute -> !settled.contains(attribute))
                .toList();
        for (Attribute<?> attribute : wanted) {
            byKnownName(attribute, known(attribute));
        }
        for (Attribute<?> attribute : wanted) {
            if (!taken.containsKey(attribute) && fields.stream().noneMatch(line -> isOf(line, attribute))) {
                byOtherName(attribute);
            }
        }
    }

    private List<Column> known(Attribute<?> attribute) {
        List<Column> whole = ColumnFinder.candidates(attribute, cells.columns());
        return whole.isEmpty() && attribute != Attribute.ID
                ? ColumnFinder.candidates(
                        attribute,
                        CutNames.with(attribute.columns(), cells.columns(), words.askedColumns(attribute)),
                        cells.columns())
                : whole;
    }

    private static boolean isOf(Statement line, Attribute<?> attribute) {
        return line.key().equals(attribute.name());
    }

    private void byKnownName(Attribute<?> attribute, List<Column> known) {
        List<Column> usable = usable(attribute, known);
        boolean isNamed =
                known.size() == 1 && usable.size() == 1 && known.get(0).name().equals(attribute.name());
        if (usable.size() == 1) {
            taken.put(attribute, usable.get(0));
            if (!isNamed) {
                fields.add(Statement.certain(attribute.name(), usable.get(0).name()));
            }
        } else if (usable.size() > 1) {
            ask(attribute, usable);
        } else if (known.size() > 1
                || known.stream()
                        .anyMatch(column -> !cells.values(column.name()).isEmpty())) {
            String names = String.join(", ", known.stream().map(Column::name).toList());
            fields.add(Statement.none(attribute.name(), "no value of " + names + " is one"));
        }
    }

    /** The columns whose values can be the attribute's; of several columns of words, those whose words are all understood. */
    private List<Column> usable(Attribute<?> attribute, List<Column> columns) {
        List<Column> usable = columns.stream()
                .filter(column -> !placed.codes().equals(Optional.of(column.name())))
                .filter(column -> ValueForm.as(attribute, cells.values(column.name())))
                .toList();
        if (usable.size() > 1 && !Vocabulary.of(placed.role(), attribute).isEmpty()) {
            List<Column> understood = usable.stream()
                    .filter(column -> values.areKnown(placed.role(), attribute, cells, column.name()))
                    .toList();
            return understood.size() == 1 ? understood : usable;
        }
        return usable;
    }

    private void byOtherName(Attribute<?> attribute) {
        List<Column> likely = free(attribute, words.columns(attribute));
        if (likely.size() == 1 || (attribute == Attribute.ID && !likely.isEmpty())) {
            taken.put(attribute, likely.get(0));
            fields.add(Statement.likely(attribute.name(), likely.get(0).name(), "likely"));
        } else if (likely.size() > 1) {
            ask(attribute, likely);
        } else {
            List<Column> doubtful = free(attribute, words.askedColumns(attribute));
            if (!doubtful.isEmpty()) {
                ask(attribute, doubtful);
            }
        }
    }

    /** Columns of some names that no other attribute has. Words have to be understood, and ids have to differ. */
    private List<Column> free(Attribute<?> attribute, List<String> names) {
        boolean isWord =
                attribute == Attribute.KIND || attribute == Attribute.ACCESS || attribute == Attribute.GROUND_COVER;
        List<String> cut = CutNames.with(names, cells.columns(), words.askedColumns(attribute));
        return usable(attribute, ColumnFinder.candidates(attribute, cut, cells.columns())).stream()
                .filter(column -> answered.contains(column.name())
                        || taken.values().stream()
                                .noneMatch(other -> other.name().equals(column.name())))
                .filter(column -> !isWord || values.areKnown(placed.role(), attribute, cells, column.name()))
                .filter(column -> attribute != Attribute.ID
                        || cells.counts(column.name()).size()
                                == cells.features().size())
                .toList();
    }

    private void ask(Attribute<?> attribute, List<Column> columns) {
        List<String> choices =
                new ArrayList<>(columns.stream().map(Column::name).toList());
        choices.add(NONE);
        String source = placed.table().source();
        Role role = placed.role();
        List<String> shown = columns.stream()
                .map(column -> column.name() + " (" + cells.shown(column.name()) + ")")
                .toList();
        String asks = "which column of " + source + " is the " + attribute.spoken() + " in the layer " + role.spoken()
                + " (" + attribute.meaning() + ")? " + String.join(", ", shown);
        Optional<String> answer = ledger.ask(
                Question.choice("column." + source + "." + role.word() + "." + attribute.name(), asks, choices));
        if (answer.isEmpty()) {
            fields.add(Statement.open(attribute.name(), String.join(", or ", shown) + "?"));
        } else if (answer.get().equals(NONE)) {
            fields.add(Statement.none(attribute.name(), "none of its columns"));
        } else {
            Column column = columns.get(choices.indexOf(answer.get()));
            taken.put(attribute, column);
            answered.add(column.name());
            fields.add(Statement.certain(attribute.name(), column.name()));
        }
    }
}
