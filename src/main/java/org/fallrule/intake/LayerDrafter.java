package org.fallrule.intake;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Unit;
import org.fallrule.reader.ColumnFinder.Column;
import org.fallrule.reader.KnownLayers;
import org.fallrule.reader.Vocabulary;
import org.fallrule.site.Attribute;
import org.fallrule.site.Role;

/** Drafts what site.yaml says of one layer: columns, units, values. */
final class LayerDrafter {
    private static final Set<Role> RAISED =
            Set.of(Role.SPOT, Role.CONTOUR, Role.BREAKLINE, Role.GROUND, Role.PROPOSED_GROUND, Role.PIPE);
    private static final String LEAVE_OUT = "leave them out";

    private final TradeWords words;
    private final Ledger ledger;
    private final KnownLayers known;
    private final UnitNeeds needs;
    private final Placement placed;
    private final Role role;
    private final ColumnTaker columns;
    private final ValueTaker values;
    private final Map<String, List<Statement>> said = new LinkedHashMap<>();
    private final List<Statement> units = new ArrayList<>();

    LayerDrafter(TradeWords words, Ledger ledger, KnownLayers known, UnitNeeds needs, Placement placed) {
        this.words = words;
        this.ledger = ledger;
        this.known = known;
        this.needs = needs;
        this.placed = placed;
        this.role = placed.role();
        this.columns = new ColumnTaker(words, ledger, placed);
        this.values = new ValueTaker(words, ledger);
    }

    DraftLayer draft() {
        Set<Attribute<?>> settled = new LinkedHashSet<>(known.columns(role));
        byCodes(settled);
        columns.take(settled);
        columns.taken().forEach((attribute, column) -> {
            unit(attribute, column);
            words(attribute, column);
        });
        heights();
        List<Statement> fields = new ArrayList<>(columns.fields());
        placed.codes().ifPresent(codes -> sizes(codes, settled, fields));
        fields.addAll(whatTheProfileLeavesOpen());
        if (role == Role.LOT
                && !settled.contains(Attribute.OWN)
                && !columns.taken().containsKey(Attribute.OWN)) {
            ownLot().ifPresent(fields::add);
        }
        return new DraftLayer(
                role,
                placed.table().file(),
                placed.table().table(),
                Drawn.counted(placed.table(), placed.features()),
                where(),
                fields,
                units,
                said,
                all(),
                placed.sureness(),
                placed.because());
    }

    /** The columns that the draft reads, by their names; to be asked after {@link #draft}. */
    Set<String> read() {
        Set<String> read = new LinkedHashSet<>();
        columns.taken().values().forEach(column -> read.add(column.name()));
        columns.fields().forEach(line -> read.add(line.value()));
        placed.codes().ifPresent(read::add);
        return read;
    }

    private void sizes(String codes, Set<Attribute<?>> settled, List<Statement> fields) {
        Set<Attribute<?>> told = new LinkedHashSet<>(settled);
        told.addAll(columns.taken().keySet());
        new CodeSizes(ledger, placed, codes, told, known.units(role)).add(fields, said);
    }

    /** A column of the attribute's own name needs no line, unless the profile says that none is known. */
    private List<Statement> whatTheProfileLeavesOpen() {
        List<Statement> named = new ArrayList<>();
        columns.taken().forEach((attribute, column) -> {
            boolean isSaid =
                    columns.fields().stream().anyMatch(line -> line.key().equals(attribute.name()));
            if (!isSaid && known.openColumns(role).contains(attribute)) {
                named.add(Statement.certain(attribute.name(), column.name()));
            }
        });
        return named;
    }

    /** The kind, where the codes that the layer was told by say it too; where no column does, that is asked. */
    private void byCodes(Set<Attribute<?>> settled) {
        Attribute<String> attribute = Meaning.attribute(role);
        boolean hasKind = Attribute.of(role).contains(attribute);
        if (placed.codes().isEmpty() || !hasKind || settled.contains(attribute)) {
            return;
        }
        boolean says = placed.kinds().values().stream().anyMatch(kind -> !kind.isEmpty());
        ColumnTaker others = new ColumnTaker(words, new Ledger(Asker.NOBODY), placed);
        others.take(settled);
        if (!says && others.taken().containsKey(attribute)) {
            return;
        }
        List<String> vocabulary = Vocabulary.of(role, attribute);
        if (!says && vocabulary.isEmpty()) {
            return;
        }
        settled.add(attribute);
        columns.fields().add(Statement.likely(attribute.name(), placed.codes().get(), ""));
        List<Statement> lines = new ArrayList<>();
        placed.kinds().forEach((code, kind) -> {
            if (!kind.isEmpty()) {
                lines.add(Statement.likely(code, kind, ""));
            } else if (!vocabulary.isEmpty()) {
                lines.add(values.asked(placed, attribute, code, vocabulary));
            }
        });
        if (!lines.isEmpty()) {
            said.put(attribute.name(), lines);
        }
    }

    private void unit(Attribute<?> attribute, Column column) {
        Optional<Dimension> dimension = attribute.dimension().filter(each -> each != Dimension.RATIO);
        List<Object> numbers = columns.cells().values(column.name()).stream()
                .filter(ValueForm::isBare)
                .toList();
        String key = UnitNeeds.key(attribute);
        boolean isSaid = known.units(role).contains(key) || known.units(role).contains(attribute.name());
        if (dimension.isEmpty() || numbers.isEmpty() || isSaid) {
            return;
        }
        Optional<Unit> unit = column.unit();
        if (unit.isPresent()) {
            units.add(Statement.certain(attribute.name(), unit.get().symbol()));
            if (unit.get().symbol().equals(Unit.SURVEY_FOOT.symbol())) {
                UnitNeeds.explain(ledger);
            }
        } else {
            needs.add(key, column.name() + " (" + columns.cells().shown(column.name()) + ")");
        }
    }

    private void words(Attribute<?> attribute, Column column) {
        boolean isWord = attribute == Attribute.SURFACE
                || attribute == Attribute.KIND
                || !Vocabulary.of(role, attribute).isEmpty();
        if (isWord) {
            List<Statement> lines = values.take(placed, attribute, columns.cells(), column.name());
            if (!lines.isEmpty()) {
                said.put(attribute.name(), lines);
            }
        }
    }

    private void heights() {
        boolean isSaid = known.units(role).contains(Attribute.ELEVATION.name());
        if (RAISED.contains(role)
                && !columns.taken().containsKey(Attribute.ELEVATION)
                && Drawn.isRaised(placed.features())
                && !isSaid) {
            needs.add(Attribute.ELEVATION.name(), "Z in " + placed.table().source());
        }
    }

    /** The kind of every feature, where no column says it: by the name of the layer, else asked. */
    private List<Statement> all() {
        boolean isSaid = placed.codes().isPresent()
                || known.columns(role).contains(Attribute.KIND)
                || columns.fields().stream().anyMatch(line -> line.key().equals(Attribute.KIND.name()))
                || columns.taken().containsKey(Attribute.KIND);
        List<String> kinds = Vocabulary.of(role, Attribute.KIND);
        if (isSaid || kinds.isEmpty()) {
            return List.of();
        }
        String key = Attribute.KIND.name();
        if (placed.kind().isPresent()) {
            return List.of(Statement.likely(key, placed.kind().get(), "by the name of the layer"));
        }
        String source = placed.table().source();
        String asks = "what kind of " + role.spoken() + " are those in " + source + " ("
                + Drawn.counted(placed.table(), placed.features()) + ")?";
        return List.of(ledger.ask(Question.choice("kind." + source, asks, kinds))
                .map(answer -> Statement.certain(key, answer))
                .orElseGet(() -> Statement.open(key, String.join(", ", kinds) + "?")));
    }

    /** Abandoned lines may stay in or not: nobody but the designer knows what the rules should see. */
    private String where() {
        Column status = columns.taken().get(Attribute.STATUS);
        if (role != Role.UTILITY || status == null) {
            return placed.where();
        }
        List<String> abandoned = columns.cells().counts(status.name()).keySet().stream()
                .filter(raw -> values.meaning(role, Attribute.STATUS, raw).equals(Optional.of("abandoned")))
                .toList();
        if (abandoned.isEmpty()) {
            return placed.where();
        }
        String source = placed.table().source();
        String asks = "does the plan count abandoned utilities (" + status.name() + " is "
                + String.join(" or ", abandoned) + " in " + source + ")?";
        Optional<String> answer =
                ledger.ask(Question.choice("abandoned." + source, asks, List.of("keep them", LEAVE_OUT)));
        String out = "NOT (" + CodeColumn.where(status.name(), abandoned) + ")";
        if (answer.isEmpty()) {
            ledger.leaveOpen(
                    asks + " They are kept; to leave them out, give the layer this condition. Then take this line away",
                    List.of("where: " + SiteYaml.text(out)));
        }
        if (answer.equals(Optional.of(LEAVE_OUT))) {
            return placed.where().isEmpty() ? out : placed.where() + " AND " + out;
        }
        return placed.where();
    }

    private Optional<Statement> ownLot() {
        return new OwnLot(ledger, placed, columns).asked(said);
    }
}
