package org.fallrule.reader;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.fallrule.document.Fault;
import org.fallrule.document.Nearest;
import org.fallrule.document.Place;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Unit;
import org.fallrule.measure.UnreadableQuantity;
import org.fallrule.measure.Written;
import org.fallrule.site.Attribute;

/**
 * Makes an attribute's value from what a column holds. What is written wrongly is a fault; what is not said, such as a number
 * without a unit or a word that means nothing here, is a problem, and the value stays unknown.
 */
final class ValueReader {
    private static final Pattern BARE_NUMBER = Pattern.compile("[-+]?(\\d+\\.?\\d*|\\.\\d+)([eE][-+]?\\d{1,3})?");

    private final LayerSpec spec;
    private final Map<String, Unit> siteUnits;
    private final List<Fault> faults;
    private final ToldOnce problems;
    private final PossibleValues possible;

    ValueReader(LayerSpec spec, Map<String, Unit> siteUnits, List<Fault> faults, List<Fault> problems) {
        this.spec = spec;
        this.siteUnits = siteUnits;
        this.faults = faults;
        this.problems = new ToldOnce(problems);
        this.possible = new PossibleValues(spec.role(), this.problems);
    }

    /** The value, of the attribute's type; nothing when there is none. */
    Optional<Object> value(Attribute<?> attribute, ColumnFinder.Column column, Object raw, Place feature) {
        Place place = feature.field(column.name());
        String text = text(raw);
        String mapped = spec.values().getOrDefault(attribute, Map.of()).getOrDefault(text, text);
        if (mapped.isEmpty()) {
            return Optional.empty();
        }
        if (attribute.dimension().isPresent()) {
            return quantity(attribute, attribute.dimension().get(), column, mapped, place)
                    .filter(value -> possible.holds(attribute, value, mapped, place))
                    .map(Written::quantity);
        }
        if (attribute.type() == Boolean.class) {
            return flag(mapped, place).map(value -> value);
        }
        return word(attribute, mapped, place).map(value -> value);
    }

    /** A cell as text; a whole number has no point, however the file keeps it. */
    private static String text(Object raw) {
        return raw instanceof Double number && number == Math.rint(number) && Math.abs(number) < 1e15
                ? String.valueOf(number.longValue())
                : String.valueOf(raw).strip();
    }

    private Optional<Written> quantity(
            Attribute<?> attribute, Dimension dimension, ColumnFinder.Column column, String text, Place place) {
        Optional<Double> bare = bareNumber(text);
        if (bare.isEmpty()) {
            return withUnit(text, dimension, place);
        }
        Optional<Unit> unit = dimension == Dimension.RATIO ? Optional.of(Unit.ONE) : unit(attribute, column, place);
        if (unit.isEmpty()) {
            problems.tell(
                    attribute.name(),
                    place.feature(""),
                    "the numbers have no unit and are not used; say units: {" + attribute.name() + ": …} with "
                            + Unit.symbolsOf(dimension));
        }
        return unit.filter(known -> possible.isOfALot(attribute, bare.get() * known.toSi(), text, place))
                .map(known -> Written.of(bare.get(), known));
    }

    /** The unit of a column's bare numbers: the layer's own in site.yaml, else that in the column's name, else the site's. */
    private Optional<Unit> unit(Attribute<?> attribute, ColumnFinder.Column column, Place place) {
        Optional<Unit> stated = Optional.ofNullable(spec.units().get(attribute.name()));
        if (stated.isPresent() && column.unit().isPresent() && !stated.equals(column.unit())) {
            problems.tell(
                    attribute.name() + " unit",
                    place.feature(""),
                    "its name ends in " + column.unit().get().symbol() + ", but it is read in "
                            + stated.get().symbol() + " as site.yaml says; check which is right");
        }
        return stated.or(column::unit).or(() -> unitOf(attribute));
    }

    private static boolean isDepthOfEnd(Attribute<?> attribute) {
        return attribute == Attribute.DEPTH_UP || attribute == Attribute.DEPTH_DOWN;
    }

    private static Optional<Double> bareNumber(String text) {
        return Optional.of(text)
                .filter(written -> BARE_NUMBER.matcher(written).matches())
                .map(Double::valueOf)
                .filter(Double::isFinite);
    }

    private Optional<Written> withUnit(String text, Dimension dimension, Place place) {
        try {
            return Optional.of(Written.parse(text, dimension));
        } catch (UnreadableQuantity e) {
            faults.add(new Fault(place, e.says()));
            return Optional.empty();
        }
    }

    /** The unit that site.yaml states for an attribute's bare numbers: the layer's before the site's. */
    Optional<Unit> unitOf(Attribute<?> attribute) {
        return unitNamed(attribute.name())
                .or(() -> attribute.dimension().equals(Optional.of(Dimension.ELEVATION))
                        ? unitNamed(Attribute.ELEVATION.name())
                        : Optional.empty())
                .or(() -> attribute == Attribute.OUTSIDE_DIAMETER
                        ? unitNamed(Attribute.DIAMETER.name())
                        : Optional.empty())
                .or(() -> isDepthOfEnd(attribute) ? unitNamed(Attribute.DEPTH.name()) : Optional.empty());
    }

    private Optional<Unit> unitNamed(String name) {
        return Optional.ofNullable(spec.units().get(name)).or(() -> Optional.ofNullable(siteUnits.get(name)));
    }

    private Optional<Boolean> flag(String text, Place place) {
        switch (text.toLowerCase(Locale.ROOT)) {
            case "true", "yes", "y", "t", "1" -> {
                return Optional.of(true);
            }
            case "false", "no", "n", "f", "0" -> {
                return Optional.of(false);
            }
            default -> {
                faults.add(new Fault(place, "\"" + text + "\" is neither true nor false; give true or false"));
                return Optional.empty();
            }
        }
    }

    /** To say that something is unknown is to say nothing of it: it must not count as being of another kind. */
    private Optional<String> word(Attribute<?> attribute, String text, Place place) {
        List<String> known = Vocabulary.of(spec.role(), attribute);
        if (known.isEmpty()) {
            return Optional.of(text);
        }
        String word = text.toLowerCase(Locale.ROOT).replaceAll("[\\s-]+", "_");
        String canonical = attribute == Attribute.QUALITY ? word.toUpperCase(Locale.ROOT) : word;
        if (known.contains(canonical)) {
            return Optional.of(canonical).filter(found -> !found.equals("unknown"));
        }
        problems.tell(
                attribute.name() + text,
                place,
                "\"" + text + "\" is not a known " + attribute.spoken() + " and is not used"
                        + Nearest.hint(word, known) + " Say what it stands for: values: {" + attribute.name() + ": {\""
                        + text + "\": …}} with one of " + String.join(", ", known));
        return Optional.empty();
    }
}
