package org.fallrule.locality;

import java.util.List;
import java.util.Optional;
import org.fallrule.document.Fault;
import org.fallrule.document.Keys;
import org.fallrule.document.Node;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Time;
import org.fallrule.measure.Unit;
import org.fallrule.measure.UnreadableQuantity;
import org.fallrule.measure.Written;

/** Reads a formula such as {@code {form: a/(t+b)^c, a: 51.4, b: 7.85, c: 0.75, unit: in/h, minutes: [5, 60]}}. */
final class IntensityCurveReader {
    private final List<Fault> faults;

    IntensityCurveReader(List<Fault> faults) {
        this.faults = faults;
    }

    Optional<IntensityCurve> read(Node node) {
        if (!(node instanceof Node.Mapping mapping)) {
            faults.add(new Fault(node.place(), "curve: found " + node.kind() + ", wanted its form, numbers and unit"));
            return Optional.empty();
        }
        int before = faults.size();
        Keys keys = new Keys(mapping, faults);
        Optional<IntensityCurve.Form> form =
                keys.required("form", IntensityCurve.Form.known()).flatMap(this::form);
        Optional<Unit> unit = keys.required("unit", "the unit that the formula gives, in/h or mm/h")
                .flatMap(this::unit);
        List<Node.Scalar> range = keys.scalars("minutes");
        if (form.isEmpty()) {
            return Optional.empty();
        }
        Optional<Double> scale = number(keys, form.get().scale(), true);
        Optional<Double> shift = number(keys, form.get().shift(), false);
        Optional<Double> power = number(keys, form.get().power(), true);
        Optional<List<Time>> fitted = range(mapping, range);
        keys.refuseOthers("curve " + form.get().written());
        return faults.size() > before
                ? Optional.empty()
                : Optional.of(new IntensityCurve(
                        form.get(),
                        scale.orElseThrow(),
                        shift.orElseThrow(),
                        power.orElseThrow(),
                        unit.orElseThrow(),
                        fitted.orElseThrow().get(0),
                        fitted.orElseThrow().get(1)));
    }

    private Optional<IntensityCurve.Form> form(Node.Scalar text) {
        Optional<IntensityCurve.Form> form = IntensityCurve.Form.of(text.text());
        if (form.isEmpty()) {
            faults.add(new Fault(
                    text.place(), text.kind() + " is not a form that is known; write " + IntensityCurve.Form.known()));
        }
        return form;
    }

    private Optional<Unit> unit(Node.Scalar text) {
        Optional<Unit> unit = Unit.named(text.text(), Dimension.INTENSITY);
        if (unit.isEmpty()) {
            faults.add(new Fault(
                    text.place(),
                    text.kind() + " is not a unit of intensity; use " + Unit.symbolsOf(Dimension.INTENSITY)));
        }
        return unit;
    }

    private Optional<List<Time>> range(Node.Mapping mapping, List<Node.Scalar> range) {
        List<Double> minutes =
                range.stream().flatMap(text -> number(text, true).stream()).toList();
        if (minutes.size() == range.size() && (minutes.size() != 2 || minutes.get(0) >= minutes.get(1))) {
            faults.add(new Fault(
                    range.isEmpty() ? mapping.place() : range.get(0).place(),
                    "minutes: give the shortest and the longest duration that the formula was fitted to, such as"
                            + " [5, 60]"));
        }
        return minutes.size() == 2
                ? Optional.of(minutes.stream()
                        .map(each -> new Time(each * Unit.MINUTE.toSi()))
                        .toList())
                : Optional.empty();
    }

    private Optional<Double> number(Keys keys, String letter, boolean aboveZero) {
        return keys.required(letter, "its number, t in minutes").flatMap(text -> number(text, aboveZero));
    }

    private Optional<Double> number(Node.Scalar text, boolean aboveZero) {
        try {
            double number =
                    Written.parse(text.text(), Dimension.RATIO).quantity().si();
            if (number > 0 || (number == 0 && !aboveZero)) {
                return Optional.of(number);
            }
            faults.add(new Fault(
                    text.place(),
                    text.kind() + (aboveZero ? " is not above zero" : " is negative")
                            + "; give the number that the formula is printed with"));
        } catch (UnreadableQuantity e) {
            faults.add(new Fault(text.place(), e.says()));
        }
        return Optional.empty();
    }
}
