package org.fallrule.locality;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.fallrule.document.Fault;
import org.fallrule.document.Keys;
import org.fallrule.document.Nearest;
import org.fallrule.document.Node;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Length;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.Range;
import org.fallrule.measure.Ratio;
import org.fallrule.measure.UnreadableQuantity;
import org.fallrule.measure.Written;

/** Reads how the time over the ground is reckoned; gathers every fault with its place. */
final class OverlandTimeReader {
    private final List<Fault> faults;

    OverlandTimeReader(List<Fault> faults) {
        this.faults = faults;
    }

    Optional<OverlandTime> read(Node.Mapping mapping) {
        Keys keys = new Keys(mapping, faults);
        Optional<OverlandTime.By> by = keys.required("by", "the method: " + String.join(", ", OverlandTime.By.words()))
                .flatMap(this::by);
        Optional<Quantity> roughness =
                keys.scalar("roughness").flatMap(text -> written(text, Dimension.RATIO, Range.SHARE_ABOVE_ZERO));
        Optional<Quantity> rain =
                keys.scalar("two_year_rain").flatMap(text -> written(text, Dimension.LENGTH, Range.ABOVE_ZERO));
        keys.refuseOthers("overland");
        by.filter(OverlandTime.By::needsRoughness)
                .filter(any -> keys.node("roughness").isEmpty())
                .ifPresent(any -> lacking(mapping, any, "roughness, n for sheet flow such as 0.24 for dense grass"));
        by.filter(OverlandTime.By::needsRain)
                .filter(any -> keys.node("two_year_rain").isEmpty())
                .ifPresent(any -> lacking(mapping, any, "two_year_rain, its depth in 24 hours such as 3.1 in"));
        return by.map(
                method -> new OverlandTime(method, roughness.map(Ratio.class::cast), rain.map(Length.class::cast)));
    }

    private void lacking(Node.Mapping mapping, OverlandTime.By by, String what) {
        faults.add(new Fault(mapping.place(), "overland: " + by.word() + " needs " + what));
    }

    private Optional<OverlandTime.By> by(Node.Scalar word) {
        Optional<OverlandTime.By> by = Arrays.stream(OverlandTime.By.values())
                .filter(each -> each.word().equals(word.text()))
                .findFirst();
        if (by.isEmpty()) {
            List<String> known = OverlandTime.By.words();
            faults.add(new Fault(
                    word.place(),
                    "found " + word.kind() + ", wanted a method" + Nearest.hint(word.text(), known) + " Known: "
                            + String.join(", ", known)));
        }
        return by;
    }

    private Optional<Quantity> written(Node.Scalar text, Dimension dimension, Range range) {
        try {
            Quantity quantity = Written.parse(text.text(), dimension).quantity();
            if (range.holds(quantity)) {
                return Optional.of(quantity);
            }
            faults.add(new Fault(text.place(), text.kind() + " does not make sense here; give " + range.spoken()));
        } catch (UnreadableQuantity e) {
            faults.add(new Fault(text.place(), e.says()));
        }
        return Optional.empty();
    }
}
