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
        return of(finding, finding.observation().measured().map(Reading::of));
    }

    /** The same, where what was measured is in words already. */
    public static String of(Finding finding, Optional<Reading> measured) {
        Observation seen = finding.observation();
        StringBuilder text = new StringBuilder();
        if (seen.subject().isEmpty() && measured.isEmpty() && seen.missing().isEmpty()) {
            ofNothing(seen, text);
        } else {
            ofSomething(seen, measured, text);
        }
        return capital(text.append('.'));
    }

    /** {@code not applicable: the plan states that there is no septic.} */
    private static void ofNothing(Observation seen, StringBuilder text) {
        text.append(seen.outcome().spoken()).append(": ").append(String.join("; ", seen.notes()));
    }

    private static void ofSomething(Observation seen, Optional<Reading> measured, StringBuilder text) {
        seen.told().ifPresentOrElse(text::append, () -> aboutAndMeasured(seen, measured, text));
        knownOnlyTo(seen).ifPresent(accuracy -> text.append("; known only to ").append(accuracy));
        if (!seen.missing().isEmpty()) {
            boolean afterValue = measured.isPresent() || seen.told().isPresent();
            text.append(afterValue ? "; " : ": ")
                    .append(seen.outcome() == Outcome.FAILS ? "not shown: " : "not known: ")
                    .append(seen.missing().stream().map(Missing::what).collect(Collectors.joining("; ")));
        }
        seen.notes().forEach(note -> text.append("; ").append(note));
    }

    private static void aboutAndMeasured(Observation seen, Optional<Reading> measured, StringBuilder text) {
        text.append(about(seen));
        if (measured.isPresent()) {
            measure(measured.get(), text.append(": "));
        } else if (seen.missing().isEmpty()) {
            text.append(": ").append(seen.outcome().spoken());
        }
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

    private static void measure(Reading reading, StringBuilder text) {
        Measured measured = reading.measured();
        text.append(measured.of()).append(' ').append(reading.shown());
        asked(measured).ifPresent(asked -> text.append(", ").append(asked).append(" asked"));
        String side = measured.limit()
                .map(limit -> limit.bound() == org.fallrule.measure.Bound.AT_LEAST ? " short" : " over")
                .orElse("");
        reading.shortBy().ifPresent(gap -> text.append(", ").append(gap).append(side));
    }

    private static String capital(StringBuilder text) {
        String first = text.substring(0, 1).toUpperCase(java.util.Locale.ROOT);
        return text.replace(0, 1, first).toString();
    }
}
