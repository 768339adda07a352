package org.fallrule.intake;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Length;
import org.fallrule.measure.Unit;
import org.fallrule.site.Attribute;
import org.fallrule.site.Role;

/**
 * Reads the sizes that stand with codes, as in {@code TREE 24"}, each with its unit. A number without a unit may be a size or only
 * tell points apart, the size of a basin may be that of its box, its grate or its pipe, and feet with a tree may be its height: that
 * is asked.
 */
final class CodeSizes {
    private static final String NO_SIZE = "no such size; not used";
    private static final int SHOWN = 3;
    private static final Map<Role, List<Attribute<Length>>> OF = Map.of(
            Role.TREE, List.of(Attribute.TRUNK_DIAMETER),
            Role.PIPE, List.of(Attribute.DIAMETER),
            Role.UTILITY, List.of(Attribute.DIAMETER),
            Role.INLET, List.of(Attribute.BOX_LENGTH, Attribute.BOX_WIDTH));

    private final Ledger ledger;
    private final Placement placed;
    private final String column;
    private final Map<String, SizedCode> sized = new LinkedHashMap<>();
    private final List<Attribute<Length>> attributes;
    private final boolean hasUnit;

    /**
     * @param codes the column of codes
     * @param settled attributes that need no size with a code
     * @param units the quantities, by name, whose units are settled
     */
    CodeSizes(Ledger ledger, Placement placed, String codes, Set<Attribute<?>> settled, Set<String> units) {
        this.ledger = ledger;
        this.placed = placed;
        this.column = codes;
        this.attributes = OF.getOrDefault(placed.role(), List.of()).stream()
                .filter(attribute -> !settled.contains(attribute))
                .toList();
        this.hasUnit = attributes.stream().allMatch(attribute -> units.contains(attribute.name()));
        placed.kinds().keySet().forEach(code -> SizedCode.of(code).ifPresent(size -> sized.put(code, size)));
    }

    /** Adds the lines under {@code fields} and {@code values} that hold the sizes; none where there are no sizes. */
    void add(List<Statement> fields, Map<String, List<Statement>> values) {
        tellUnused();
        sized.entrySet().removeIf(each -> !isUsed(each));
        if (sized.isEmpty()) {
            return;
        }
        boolean someBare = !hasUnit && sized.values().stream().anyMatch(SizedCode::isBare);
        boolean isAsked = someBare || placed.role() == Role.INLET;
        Optional<String> answer = isAsked ? asked(someBare) : Optional.empty();
        boolean isSure = !isAsked || answer.isPresent() || (placed.role() != Role.INLET && hasMarked());
        for (int i = 0; i < attributes.size(); i++) {
            int number = i;
            List<Statement> lines = new ArrayList<>();
            placed.kinds().keySet().forEach(code -> lines.add(line(code, number, answer, isSure)));
            if (lines.stream().allMatch(line -> line.value().isEmpty() && !line.isOpen())) {
                return;
            }
            String name = attributes.get(i).name();
            fields.add(
                    isSure
                            ? Statement.likely(name, column, "the size with the code")
                            : i == 0 ? Statement.open(name, opens()) : Statement.none(name, "the same as above"));
            values.put(name, lines);
        }
    }

    /** Of one measure only a size across is none. */
    private boolean isUsed(Map.Entry<String, SizedCode> each) {
        boolean isOfBasin =
                placed.role() != Role.INLET || "basin".equals(placed.kinds().get(each.getKey()));
        return isOfBasin && each.getValue().numbers().size() <= attributes.size();
    }

    private void tellUnused() {
        List<String> unused = sized.entrySet().stream()
                .filter(each -> !isUsed(each))
                .map(Map.Entry::getKey)
                .toList();
        if (!unused.isEmpty()) {
            ledger.tell(placed.table().source() + ": what stands with codes, as in " + shown(unused)
                    + ", is not used as a size of the layer " + placed.role().spoken());
        }
    }

    private boolean hasMarked() {
        return sized.values().stream().anyMatch(size -> !size.isBare() && !isHigh(size));
    }

    private boolean isHigh(SizedCode size) {
        return placed.role() == Role.TREE
                && size.unit()
                        .filter(unit -> unit == Unit.FOOT || unit == Unit.METRE)
                        .isPresent();
    }

    private Statement line(String code, int number, Optional<String> answer, boolean isSure) {
        SizedCode size = sized.get(code);
        if (size == null || (answer.equals(Optional.of(NO_SIZE)) && (size.isBare() || placed.role() == Role.INLET))) {
            return Statement.none(code, "");
        }
        if (isHigh(size)) {
            return Statement.open(code, "its " + spoken() + " with its unit; is it " + size.written(number) + "?");
        }
        if (!size.isBare() || hasUnit) {
            return Statement.likely(code, size.written(number), "");
        }
        if (answer.isEmpty() && isSure) {
            return Statement.open(code, "its " + spoken() + " with its unit, such as " + size.written(number) + " in?");
        }
        return Statement.likely(
                code, size.written(number) + answer.map(unit -> " " + unit).orElse(""), "");
    }

    private Optional<String> asked(boolean someBare) {
        Stream<String> units = someBare
                ? Stream.of(Unit.values())
                        .filter(unit -> unit.dimension() == Dimension.LENGTH)
                        .map(Unit::symbol)
                : Stream.of("the " + spoken());
        List<String> choices = Stream.concat(units, Stream.of(NO_SIZE)).toList();
        String source = placed.table().source();
        String asks = "is what stands with codes in " + source + ", as in " + shown(List.copyOf(sized.keySet()))
                + ", the " + spoken() + (someBare ? ", and in which unit?" : "?");
        return ledger.ask(Question.choice("size." + source + "." + placed.role().word(), asks, choices));
    }

    private String opens() {
        return "is what stands with the codes, as in " + shown(List.copyOf(sized.keySet())) + ", the " + spoken()
                + "? Then write " + column + " here"
                + (attributes.size() > 1 ? " and below" : "")
                + ", and its unit behind each number under values; else take this away, there too";
    }

    private String spoken() {
        return placed.role() == Role.INLET
                ? "inside of the box"
                : attributes.get(0).spoken();
    }

    private static String shown(List<String> codes) {
        return String.join(", ", codes.stream().limit(SHOWN).toList());
    }
}
