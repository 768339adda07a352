package org.fallrule.report;

import java.util.Optional;
import java.util.stream.Collectors;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Measured;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Printed;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.Unit;
import org.fallrule.site.Feature;

/** Puts a finding's facts into words. */
public final class Sentence {
    private Sentence() {}

    /** The whole finding in one sentence. */
    public static String of(Finding finding) {
        Observation seen = finding.observation();
        boolean ofNothing = seen.subject().isEmpty()
                && seen.measured().isEmpty()
                && seen.missing().isEmpty();
        return capital(ofNothing ? ofNothing(seen) : ofSomething(seen));
    }

    /** {@code not applicable: the plan states that there is no septic.} */
    private static String ofNothing(Observation seen) {
        return seen.outcome().spoken() + ": " + String.join("; ", seen.notes()) + ".";
    }

    private static String ofSomething(Observation seen) {
        StringBuilder text = new StringBuilder(seen.told().orElseGet(() -> aboutAndMeasured(seen)));
        knownOnlyTo(seen).ifPresent(accuracy -> text.append("; known only to ").append(accuracy));
        if (!seen.missing().isEmpty()) {
            boolean afterValue = seen.measured().isPresent() || seen.told().isPresent();
            text.append(afterValue ? "; " : ": ")
                    .append(seen.outcome() == Outcome.FAILS ? "not shown: " : "not known: ")
                    .append(seen.missing().stream().map(Missing::what).collect(Collectors.joining("; ")));
        }
        seen.notes().forEach(note -> text.append("; ").append(note));
        return text.append('.').toString();
    }

    private static String aboutAndMeasured(Observation seen) {
        if (seen.measured().isPresent()) {
            return about(seen) + ": " + measure(seen.measured().get());
        }
        return seen.missing().isEmpty() ? about(seen) + ": " + seen.outcome().spoken() : about(seen);
    }

    private static Optional<String> knownOnlyTo(Observation seen) {
        return seen.measured()
                .filter(measured -> seen.outcome() == Outcome.BORDERLINE)
                .flatMap(Sentence::accuracy);
    }

    /** What it is about: {@code outfall OF-1 to walk W-1}. */
    public static String about(Observation seen) {
        String subject = seen.subject().map(Feature::spoken).orElse("the plan");
        return seen.other().map(other -> subject + " and " + other.spoken()).orElse(subject);
    }

    /** The measured value as printed: {@code 3.50 ft}. */
    public static String shown(Measured measured) {
        return measured.limit()
                .map(limit -> Printed.beside(measured.value(), limit, measured.metric()))
                .orElseGet(() -> Printed.of(measured.value(), measured.usualUnit()));
    }

    /** The limit as printed: {@code at least 5 ft}. */
    public static Optional<String> asked(Measured measured) {
        return measured.limit()
                .map(limit -> limit.bound().words() + " " + Printed.limit(limit.value(), measured.metric()));
    }

    /** How far the value misses its limit, as printed; nothing when it meets it. */
    public static Optional<String> shortBy(Measured measured) {
        return measured.limit()
                .filter(limit -> limit.shortfall(measured.value())
                        > measured.value().dimension().tolerance())
                .map(limit -> Printed.shortfall(measured.value(), limit, measured.metric()));
    }

    /** The accuracy as printed, in the unit of the limit. */
    public static Optional<String> accuracy(Measured measured) {
        if (measured.accuracy() <= 0) {
            return Optional.empty();
        }
        Quantity accuracy = measured.value().dimension().of(measured.accuracy());
        Unit unit = measured.limit()
                .map(limit -> limit.value().unit())
                .filter(limit -> limit.dimension() != Dimension.SLOPE)
                .map(limit -> measured.metric() ? limit.metric() : limit)
                .orElse(measured.usualUnit());
        return Optional.of("±" + Printed.of(accuracy, unit));
    }

    private static String measure(Measured measured) {
        StringBuilder text = new StringBuilder(measured.of()).append(' ').append(shown(measured));
        asked(measured).ifPresent(asked -> text.append(", ").append(asked).append(" asked"));
        String side = measured.limit()
                .map(limit -> limit.bound() == org.fallrule.measure.Bound.AT_LEAST ? " short" : " over")
                .orElse("");
        shortBy(measured).ifPresent(gap -> text.append(", ").append(gap).append(side));
        return text.toString();
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + text.substring(1);
    }
}
