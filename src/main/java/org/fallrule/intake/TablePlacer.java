package org.fallrule.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fallrule.reader.ColumnFinder;
import org.fallrule.reader.LooseLayers;
import org.fallrule.reader.layer.RawFeature;
import org.fallrule.site.Attribute;
import org.fallrule.site.Role;

/** Finds what a table stands for: by its codes, by its name, by its columns; else asks. */
final class TablePlacer {
    private static final String NOTHING = "leave it out";

    private final TradeWords words;
    private final Ledger ledger;

    TablePlacer(TradeWords words, Ledger ledger) {
        this.words = words;
        this.ledger = ledger;
    }

    /** The roles that a table, or each of its parts, is taken for. */
    List<Placement> place(LooseLayers.Table table, List<RawFeature> features) {
        Optional<Role.Form> form = Drawn.as(features);
        if (form.isEmpty()) {
            ledger.tell(table.source() + " has no feature with geometry and is left out");
            return List.of();
        }
        LayerName name = LayerName.of(words, table, form.get());
        Optional<Role> exact = Arrays.stream(Role.values())
                .filter(role -> name.is(role) && Drawn.fits(role, form.get()))
                .findFirst();
        List<Meaning> byName = name.meanings(form.get());
        Cells cells = Cells.of(features, table.raw().columns());
        Optional<CodeColumn> colors =
                isOfUtilities(exact, byName) ? CodeColumn.ofColors(cells, words) : Optional.empty();
        if (colors.isPresent()) {
            return new CodePlacer(words, ledger, table, cells).place(colors.get());
        }
        if (exact.isPresent()) {
            Meaning meaning = Meaning.of(exact.get().word());
            return List.of(Placement.whole(table, meaning, features, Sureness.CERTAIN, "named for it"));
        }
        Optional<CodeColumn> codes = CodeColumn.of(cells, words).filter(column -> tellsMore(column, byName));
        return codes.isPresent()
                ? new CodePlacer(words, ledger, table, cells).place(codes.get())
                : byNameAndColumns(table, features, form.get(), byName).stream().toList();
    }

    /** Whether a layer is of utilities by its name, of which kind it leaves open. */
    private static boolean isOfUtilities(Optional<Role> exact, List<Meaning> byName) {
        return exact.equals(Optional.of(Role.UTILITY))
                || (byName.size() == 1
                        && byName.get(0).is(Role.UTILITY)
                        && byName.get(0).kind().isEmpty());
    }

    /** Whether codes say more than a name that stands for one role; what they say has to bear the name out. */
    private static boolean tellsMore(CodeColumn column, List<Meaning> byName) {
        if (byName.size() != 1) {
            return true;
        }
        Role named = byName.get(0).role().orElseThrow();
        return column.roles().contains(named) && !column.isAllOf(named);
    }

    private Optional<Placement> byNameAndColumns(
            LooseLayers.Table table, List<RawFeature> features, Role.Form form, List<Meaning> byName) {
        if (byName.size() == 1) {
            return Optional.of(
                    Placement.whole(table, byName.get(0), features, Sureness.LIKELY, "by its name and geometry"));
        }
        List<Meaning> candidates = byName.isEmpty() ? all(form) : byName;
        Optional<Meaning> best = best(table, candidates);
        if (best.isPresent()) {
            return Optional.of(Placement.whole(
                    table,
                    best.get(),
                    features,
                    Sureness.LIKELY,
                    byName.isEmpty() ? "by its columns" : "by its name and columns"));
        }
        return asked(table, features, candidates);
    }

    private static List<Meaning> all(Role.Form form) {
        return Arrays.stream(Role.values())
                .filter(role -> Drawn.fits(role, form))
                .map(role -> Meaning.of(role.word()))
                .toList();
    }

    /** The one whose attributes the columns tell most of, if they tell two or more and of no other as many. */
    private Optional<Meaning> best(LooseLayers.Table table, List<Meaning> candidates) {
        Map<Meaning, Long> told = new LinkedHashMap<>();
        candidates.forEach(
                meaning -> told.put(meaning, attributes(table, meaning.role().orElseThrow())));
        long most = told.values().stream().mapToLong(Long::longValue).max().orElse(0);
        List<Meaning> best = told.entrySet().stream()
                .filter(entry -> entry.getValue() == most)
                .map(Map.Entry::getKey)
                .toList();
        return most >= 2 && best.size() == 1 ? Optional.of(best.get(0)) : Optional.empty();
    }

    private long attributes(LooseLayers.Table table, Role role) {
        return Attribute.of(role).stream()
                .filter(attribute -> attribute != Attribute.ID)
                .filter(attribute -> isTold(attribute, table.raw().columns()))
                .count();
    }

    private boolean isTold(Attribute<?> attribute, Set<String> columns) {
        List<String> names = new ArrayList<>(List.of(attribute.name()));
        names.addAll(attribute.columns());
        names.addAll(words.columns(attribute));
        return !ColumnFinder.candidates(attribute, CutNames.with(names, columns, List.of()), columns)
                .isEmpty();
    }

    private Optional<Placement> asked(LooseLayers.Table table, List<RawFeature> features, List<Meaning> candidates) {
        List<String> choices = new ArrayList<>(
                candidates.stream().map(Meaning::spoken).distinct().toList());
        choices.add(NOTHING);
        String asks = "what is " + table.source() + " (" + Drawn.counted(table, features) + ")?";
        Optional<String> answer = ledger.ask(Question.choice("role." + table.source(), asks, choices));
        if (answer.isEmpty()) {
            ledger.leaveOpen(
                    asks + " Name it under its role below; then take this line away",
                    candidates.stream()
                            .limit(6)
                            .map(meaning -> meaning.role().orElseThrow().word() + ": " + SiteYaml.source(table))
                            .toList());
        }
        return answer.flatMap(said -> candidates.stream()
                        .filter(meaning -> meaning.spoken().equals(said))
                        .findFirst())
                .map(meaning -> Placement.whole(table, meaning, features, Sureness.CERTAIN, "as you said"));
    }
}
