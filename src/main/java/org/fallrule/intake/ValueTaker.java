package org.fallrule.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.fallrule.reader.Vocabulary;
import org.fallrule.site.Attribute;
import org.fallrule.site.Role;

/** Finds what the values of a column of words stand for. */
final class ValueTaker {
    /** Values of a column that are asked about; a column with more holds something else. */
    private static final int MOST_ASKED = 12;

    private final TradeWords words;
    private final Ledger ledger;

    ValueTaker(TradeWords words, Ledger ledger) {
        this.words = words;
        this.ledger = ledger;
    }

    /** The word that a value stands for by itself or as offices write it; nothing where that is not known. */
    Optional<String> meaning(Role role, Attribute<?> attribute, String raw) {
        List<String> known = Vocabulary.of(role, attribute);
        String word = raw.toLowerCase(Locale.ROOT).replaceAll("[\\s-]+", "_");
        String canonical = attribute == Attribute.QUALITY ? word.toUpperCase(Locale.ROOT) : word;
        if (known.contains(canonical)) {
            return Optional.of(canonical);
        }
        Optional<String> byCode = attribute == Meaning.attribute(role)
                ? words.code(raw).stream()
                        .filter(meaning -> meaning.is(role))
                        .flatMap(meaning -> meaning.kind().stream())
                        .findFirst()
                        .filter(any -> words.code(raw).size() == 1)
                : Optional.empty();
        return byCode.or(() -> words.value(attribute, raw)).filter(found -> known.isEmpty() || known.contains(found));
    }

    /** Whether every value of a column is understood. */
    boolean areKnown(Role role, Attribute<?> attribute, Cells cells, String column) {
        return cells.counts(column).keySet().stream()
                .allMatch(raw -> meaning(role, attribute, raw).isPresent());
    }

    /** A line for each value that does not say itself what it stands for. */
    List<Statement> take(Placement placed, Attribute<?> attribute, Cells cells, String column) {
        List<String> known = Vocabulary.of(placed.role(), attribute);
        List<Statement> values = new ArrayList<>();
        for (String raw : cells.counts(column).keySet()) {
            Optional<String> meaning = meaning(placed.role(), attribute, raw);
            boolean saysItself = meaning.filter(word -> word.equals(
                            attribute == Attribute.QUALITY
                                    ? raw.toUpperCase(Locale.ROOT)
                                    : raw.toLowerCase(Locale.ROOT).replaceAll("[\\s-]+", "_")))
                    .isPresent();
            if (meaning.isPresent() && !saysItself) {
                values.add(Statement.likely(raw, meaning.get(), ""));
            } else if (meaning.isEmpty() && !known.isEmpty() && values.size() < MOST_ASKED) {
                values.add(asked(placed, attribute, raw, known));
            }
        }
        return values;
    }

    /** A line for a value that is not known. */
    Statement asked(Placement placed, Attribute<?> attribute, String raw, List<String> known) {
        String key =
                "value." + placed.table().source() + "." + placed.role().word() + "." + attribute.name() + "." + raw;
        String asks = "what " + attribute.spoken() + " does " + raw + " in "
                + placed.table().source() + " stand for (layer " + placed.role().spoken() + ")?";
        return ledger.ask(Question.choice(key, asks, known))
                .map(answer -> Statement.certain(raw, answer))
                .orElseGet(() -> Statement.open(raw, String.join(", ", known) + "?"));
    }
}
