package org.fallrule.intake;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fallrule.reader.ColumnFinder;
import org.fallrule.reader.LooseLayers;
import org.fallrule.reader.layer.RawFeature;
import org.fallrule.site.Attribute;
import org.fallrule.site.Role;

/** Takes a table apart by the codes in one of its columns. A code with two meanings, or with none that is known, is asked about. */
final class CodePlacer {
    private static final String NO_USE = " (not used)";
    private static final int MOST_UNKNOWN = 8;

    private final TradeWords words;
    private final Ledger ledger;
    private final LooseLayers.Table table;
    private final Cells cells;

    CodePlacer(TradeWords words, Ledger ledger, LooseLayers.Table table, Cells cells) {
        this.words = words;
        this.ledger = ledger;
        this.table = table;
        this.cells = cells;
    }

    List<Placement> place(CodeColumn column) {
        Map<Role, Map<String, String>> taken = new LinkedHashMap<>();
        Map<String, Optional<Meaning>> answers = new HashMap<>();
        List<String> unused = new ArrayList<>();
        List<String> unknown = new ArrayList<>();
        column.meanings().forEach((code, meanings) -> {
            List<RawFeature> features = CodeColumn.with(column.name(), code, cells.features());
            Optional<Meaning> meaning = meanings.size() > 1
                    ? answers.computeIfAbsent(base(code), base -> asked(column, base, meanings))
                    : meanings.stream().findFirst();
            Optional<Meaning> otherwise =
                    meanings.isEmpty() ? new LayerName(words, code).onlyMeaning() : Optional.empty();
            // what is drawn otherwise than it has to be is told, not asked about
            otherwise.ifPresent(drawn -> unused.add(code + ", " + drawn.spoken() + why(drawn, features)));
            if (meanings.isEmpty() && otherwise.isEmpty()) {
                unknown.add(code + " (" + (table.isSampled() ? "at least " : "") + features.size() + ")");
            }
            meaning.ifPresent(known -> {
                Optional<Role> role = known.role().filter(each -> isUsable(each, features));
                role.ifPresent(each -> taken.computeIfAbsent(each, any -> new LinkedHashMap<>())
                        .put(code, known.kind().orElse("")));
                if (role.isEmpty()) {
                    unused.add(code + ", " + known.spoken() + why(known, features));
                }
            });
        });
        tell(column, unused, unknown);
        return taken.entrySet().stream()
                .map(entry -> placement(column, entry.getKey(), entry.getValue()))
                .toList();
    }

    private boolean isUsable(Role role, List<RawFeature> features) {
        Optional<Role.Form> form = Drawn.as(features);
        boolean isLine = role != Role.UTILITY
                || (!ColumnFinder.candidates(Attribute.LINE, cells.columns()).isEmpty()
                        && !ColumnFinder.candidates(Attribute.SEQUENCE, cells.columns())
                                .isEmpty());
        return form.isPresent()
                && (Drawn.canBe(role, form.get()) || (role == Role.UTILITY && form.get() == Role.Form.POINT && isLine));
    }

    private String why(Meaning meaning, List<RawFeature> features) {
        return meaning.role()
                .map(role -> " (" + Drawn.counted(table, features) + "; wanted "
                        + role.form().spoken() + ")")
                .orElse("");
    }

    /** A code without the size that stands with it. */
    private static String base(String code) {
        return SizedCode.of(code).map(SizedCode::code).orElse(code);
    }

    /** What a code stands for, whatever size stands with it. */
    private Optional<Meaning> asked(CodeColumn column, String base, List<Meaning> meanings) {
        List<String> codes = column.meanings().keySet().stream()
                .filter(code -> base(code).equals(base)
                        && meanings.equals(column.meanings().get(code)))
                .toList();
        String code = codes.size() == 1 ? codes.get(0) : base;
        List<RawFeature> features = codes.stream()
                .flatMap(each -> CodeColumn.with(column.name(), each, cells.features()).stream())
                .toList();
        List<String> choices = meanings.stream()
                .map(meaning -> meaning.spoken() + (meaning.role().isPresent() ? "" : NO_USE))
                .toList();
        String asks = "what does the code " + code + " stand for (" + Drawn.counted(table, features) + " in "
                + table.source() + ")?";
        Optional<String> answer = ledger.ask(Question.choice("code." + table.source() + "." + code, asks, choices));
        if (answer.isEmpty()) {
            ledger.leaveOpen(
                    asks + " " + String.join(", or ", choices)
                            + ". If it is one of these layers, take it in below or add it to the layer's where; then"
                            + " take this line away",
                    meanings.stream()
                            .filter(meaning -> meaning.role().isPresent())
                            .map(meaning -> offered(meaning, CodeColumn.where(column.name(), codes)))
                            .toList());
        }
        return answer.map(said -> meanings.get(choices.indexOf(said)));
    }

    /** A line that takes some features in as what they may stand for. */
    private String offered(Meaning meaning, String where) {
        Role role = meaning.role().orElseThrow();
        String all = meaning.kind()
                .map(kind -> ", all: {" + Meaning.attribute(role).name() + ": " + kind + "}")
                .orElse("");
        String of = table.table().map(name -> ", table: " + SiteYaml.text(name)).orElse("");
        return role.word() + ": {file: " + SiteYaml.text(table.file()) + of + ", where: " + SiteYaml.text(where) + all
                + "}";
    }

    private void tell(CodeColumn column, List<String> unused, List<String> unknown) {
        if (!unused.isEmpty()) {
            ledger.tell(table.source() + ", not used: " + String.join("; ", unused));
        }
        if (!unknown.isEmpty()) {
            ledger.leaveOpen(
                    "what do these codes in " + column.name() + " of " + table.source() + " stand for? "
                            + unknown.stream().limit(MOST_UNKNOWN).collect(Collectors.joining(", "))
                            + (unknown.size() > MOST_UNKNOWN ? " and " + (unknown.size() - MOST_UNKNOWN) + " more" : "")
                            + ". Add those that belong to a layer to its where; then take this line away",
                    List.of());
        }
    }

    private Placement placement(CodeColumn column, Role role, Map<String, String> kinds) {
        List<RawFeature> features = kinds.keySet().stream()
                .flatMap(code -> CodeColumn.with(column.name(), code, cells.features()).stream())
                .toList();
        return new Placement(
                role,
                table,
                features,
                CodeColumn.where(column.name(), kinds.keySet()),
                Optional.of(column.name()),
                kinds,
                Optional.empty(),
                Sureness.LIKELY,
                "by the codes in " + column.name());
    }
}
