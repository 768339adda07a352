package org.fallrule.locality;

import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import org.fallrule.document.Fault;
import org.fallrule.document.Keys;
import org.fallrule.document.Node;
import org.fallrule.document.Place;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Time;
import org.fallrule.measure.UnreadableQuantity;
import org.fallrule.measure.Written;

/** Reads the rain to design for, from a rule book or a site.yaml; gathers every fault with its place. */
public final class StormReader {
    private final List<Fault> faults;
    private final Function<Node, Optional<String>> basisOf;

    /** @param basisOf makes one line of what stands under the key basis, and gathers its faults */
    public StormReader(List<Fault> faults, Function<Node, Optional<String>> basisOf) {
        this.faults = faults;
        this.basisOf = basisOf;
    }

    /** What the key {@code storm} holds. */
    public Storm read(Node.Mapping mapping) {
        Keys keys = new Keys(mapping, faults);
        Optional<String> basis = keys.node("basis").flatMap(basisOf);
        Optional<Stated<ReturnPeriod>> period = keys.scalar("return_period")
                .flatMap(text -> period(text.text(), text.place()).map(value -> stated(value, text, basis)));
        Optional<Stated<Time>> shortest = keys.scalar("shortest_duration")
                .flatMap(text -> duration(text).map(value -> stated(value, text, basis)));
        Optional<Node> table = keys.node("intensity");
        Optional<Node> curve = keys.node("curve");
        Optional<OverlandTime> overland =
                keys.mapping("overland").flatMap(node -> new OverlandTimeReader(faults).read(node));
        keys.refuseOthers("storm");
        Rains rains = new Rains(period.map(Stated::value), basis);
        IntensityTableReader tables = new IntensityTableReader(faults);
        IntensityCurveReader curves = new IntensityCurveReader(faults);
        table.ifPresent(node -> rains.add(node, "intensity", node instanceof Node.Sequence, tables::read));
        curve.ifPresent(node -> rains.add(node, "curve", isOneCurve(node), curves::read));
        new RarerRainsHarder(faults).check(rains.found);
        return new Storm(period, shortest, rains.found, overland);
    }

    private static boolean isOneCurve(Node node) {
        return node instanceof Node.Mapping mapping && mapping.get("form").isPresent();
    }

    private static <T> Stated<T> stated(T value, Node node, Optional<String> basis) {
        return new Stated<>(value, node.place(), basis);
    }

    private Optional<ReturnPeriod> period(String text, Place where) {
        Optional<ReturnPeriod> period = ReturnPeriod.parse(text);
        if (period.isEmpty()) {
            faults.add(new Fault(
                    where, "\"" + text + "\" is not a return period; give whole years with the unit, such as 10 yr"));
        }
        return period;
    }

    private Optional<Time> duration(Node.Scalar text) {
        try {
            Written written = Written.parse(text.text(), Dimension.TIME);
            if (written.quantity().si() > 0) {
                return Optional.of((Time) written.quantity());
            }
            faults.add(new Fault(text.place(), text.kind() + " is no duration; give one above zero"));
        } catch (UnreadableQuantity e) {
            faults.add(new Fault(text.place(), e.says()));
        }
        return Optional.empty();
    }

    /** The rainfall of one mapping, of the return period stated beside it or of several. */
    private final class Rains {
        private final Optional<ReturnPeriod> usual;
        private final Optional<String> basis;
        private final SortedMap<ReturnPeriod, Stated<Rainfall>> found = new TreeMap<>();

        Rains(Optional<ReturnPeriod> usual, Optional<String> basis) {
            this.usual = usual;
            this.basis = basis;
        }

        void add(Node node, String key, boolean isOne, Function<Node, Optional<? extends Rainfall>> reader) {
            if (isOne && usual.isEmpty()) {
                faults.add(new Fault(
                        node.place(),
                        key + ": for which return period? Give return_period beside it, or write it under a key such"
                                + " as 10 yr"));
            } else if (isOne) {
                put(usual.get(), node, reader);
            } else if (node instanceof Node.Mapping several) {
                several.entries()
                        .forEach((name, each) ->
                                period(name, several.placeOf(name)).ifPresent(period -> put(period, each, reader)));
            } else {
                faults.add(new Fault(node.place(), key + ": found " + node.kind() + ", wanted rows or formulas"));
            }
        }

        private void put(ReturnPeriod period, Node node, Function<Node, Optional<? extends Rainfall>> reader) {
            reader.apply(node).ifPresent(rainfall -> {
                Stated<Rainfall> before = found.put(period, new Stated<>(rainfall, node.place(), basis));
                if (before != null) {
                    faults.add(new Fault(
                            node.place(),
                            "the rain of " + period + " stands already in line "
                                    + before.setBy().line() + "; give one of the two"));
                }
            });
        }
    }
}
