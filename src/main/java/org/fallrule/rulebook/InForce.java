package org.fallrule.rulebook;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.document.Fault;
import org.fallrule.document.Keys;
import org.fallrule.document.Node;
import org.fallrule.document.Place;

/**
 * From when until when a book, or what it says of a rule, is in force.
 *
 * @param from the first day; empty when it always was
 * @param until the last day; empty when no end is set
 * @param statedAt where the book says so
 */
public record InForce(Optional<LocalDate> from, Optional<LocalDate> until, Place statedAt) {

    /** Whether it is in force on a day. */
    public boolean on(LocalDate day) {
        return from.map(first -> !day.isBefore(first)).orElse(true)
                && until.map(last -> !day.isAfter(last)).orElse(true);
    }

    /** {@code in force from 2026-07-01 to 2027-06-30}. */
    public String spoken() {
        return "in force" + from.map(first -> " from " + first).orElse("")
                + until.map(last -> " to " + last).orElse("");
    }

    /** The days on which something begins or has ended. */
    List<LocalDate> turns() {
        List<LocalDate> turns = new ArrayList<>();
        from.ifPresent(turns::add);
        until.ifPresent(last -> turns.add(last.plusDays(1)));
        return turns;
    }

    /** What stands under {@code effective}: a day, or {@code {from, until}}. Always in force without the key. */
    static InForce read(Keys keys, List<Fault> faults) {
        InForce always =
                new InForce(Optional.empty(), Optional.empty(), keys.mapping().place());
        Optional<Node> node = keys.node("effective");
        if (node.isEmpty()) {
            return always;
        }
        if (node.get() instanceof Node.Scalar day) {
            return new InForce(date(day, faults), Optional.empty(), day.place());
        }
        if (!(node.get() instanceof Node.Mapping span)) {
            faults.add(new Fault(
                    node.get().place(),
                    "effective: found " + node.get().kind() + ", wanted a day, or {from: day, until: day}"));
            return always;
        }
        Keys inner = new Keys(span, faults);
        Optional<LocalDate> from = inner.scalar("from").flatMap(day -> date(day, faults));
        Optional<LocalDate> until = inner.scalar("until").flatMap(day -> date(day, faults));
        inner.refuseOthers("effective");
        if (from.isPresent() && until.isPresent() && until.get().isBefore(from.get())) {
            faults.add(new Fault(
                    span.place(), "effective: ends on " + until.get() + ", before it begins on " + from.get()));
        }
        return new InForce(from, until, span.place());
    }

    private static Optional<LocalDate> date(Node.Scalar day, List<Fault> faults) {
        try {
            return Optional.of(LocalDate.parse(day.text()));
        } catch (DateTimeParseException e) {
            faults.add(new Fault(day.place(), day.kind() + " is not a date; write it like 2026-07-01"));
            return Optional.empty();
        }
    }
}
