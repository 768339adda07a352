package org.fallrule.comparison;

import java.util.List;
import java.util.Optional;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Measured;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Length;
import org.fallrule.measure.Printed;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.Unit;

/** How one finding has changed. To leave out what was known never makes it better. */
final class Course {
    /** What an open finding may be, the worst first; {@code cannot_tell} is apart. */
    private static final List<Outcome> FROM_THE_WORST = List.of(Outcome.FAILS, Outcome.BORDERLINE);

    private Course() {}

    static FindingChange of(Finding before, Finding after) {
        Outcome was = before.outcome();
        Outcome is = after.outcome();
        if (was == is) {
            return was.isOpen() ? bothOpen(before, after) : both(Change.UNCHANGED, before, after, "settled in both");
        }
        String turn = was.spoken() + ", now " + is.spoken();
        if (!is.isOpen()) {
            return both(was.isOpen() ? Change.GONE : Change.UNCHANGED, before, after, turn);
        }
        return both(was.isOpen() && isBetter(was, is) ? Change.BETTER : Change.WORSE, before, after, turn);
    }

    /** @param untold whether its rule could not be told of the whole plan before */
    static FindingChange appeared(Finding after, boolean untold) {
        Change change = after.outcome().isOpen() ? Change.NEW : Change.UNCHANGED;
        if (untold && change == Change.NEW && after.outcome() != Outcome.FAILS) {
            change = Change.BETTER;
        }
        String why = untold ? "could not be told before" : "was not there before";
        return new FindingChange(change, Optional.empty(), Optional.of(after), why);
    }

    static FindingChange vanished(Finding before, String why) {
        Change change = before.outcome().isOpen() ? Change.GONE : Change.UNCHANGED;
        return new FindingChange(change, Optional.of(before), Optional.empty(), why);
    }

    private static boolean isBetter(Outcome was, Outcome is) {
        if (is == Outcome.CANNOT_TELL) {
            return false;
        }
        return was == Outcome.CANNOT_TELL
                ? is == Outcome.BORDERLINE
                : FROM_THE_WORST.indexOf(is) > FROM_THE_WORST.indexOf(was);
    }

    private static FindingChange bothOpen(Finding before, Finding after) {
        if (keepsItsLimit(before) && keepsItsLimit(after)) {
            return byMissing(before, after);
        }
        Optional<Double> was = shortfall(before);
        Optional<Double> is = shortfall(after);
        if (was.isPresent() && is.isPresent() && sameDimension(before, after)) {
            return byShortfall(before, after, is.get() - was.get());
        }
        return byMissing(before, after);
    }

    /** What is known of something that cannot be told may keep its limit; its margin is none of the whole. */
    private static boolean keepsItsLimit(Finding finding) {
        return finding.outcome() == Outcome.CANNOT_TELL
                && shortfall(finding).filter(by -> by <= 0).isPresent();
    }

    private static FindingChange byMissing(Finding before, Finding after) {
        int more = after.observation().missing().size()
                - before.observation().missing().size();
        if (more == 0) {
            return both(Change.UNCHANGED, before, after, "as it was");
        }
        return more < 0
                ? both(Change.BETTER, before, after, "less is missing")
                : both(Change.WORSE, before, after, "more is missing");
    }

    /** Differences of no more than the one tolerance count as none. */
    private static FindingChange byShortfall(Finding before, Finding after, double more) {
        Measured measured = after.observation().measured().orElseThrow();
        Dimension dimension = measured.value().dimension();
        if (Math.abs(more) <= dimension.tolerance()) {
            return both(Change.UNCHANGED, before, after, "as it was");
        }
        String by = shown(dimension.of(Math.abs(more)), measured);
        return more < 0
                ? both(Change.BETTER, before, after, by + " nearer to what is asked")
                : both(Change.WORSE, before, after, by + " farther from what is asked");
    }

    private static String shown(Quantity difference, Measured beside) {
        Unit unit = beside.limit()
                .map(limit -> limit.value().unit())
                .filter(asked -> asked.dimension() != Dimension.SLOPE)
                .map(asked -> beside.metric() ? asked.metric() : asked)
                .orElseGet(beside::usualUnit);
        return difference instanceof Length length && unit == Unit.FOOT
                ? Printed.feet(length.metres())
                : Printed.of(difference, unit);
    }

    private static Optional<Double> shortfall(Finding finding) {
        return finding.observation()
                .measured()
                .flatMap(measured -> measured.limit().map(limit -> limit.shortfall(measured.value())));
    }

    private static boolean sameDimension(Finding before, Finding after) {
        return before.observation()
                .measured()
                .map(each -> each.value().dimension())
                .equals(after.observation().measured().map(each -> each.value().dimension()));
    }

    private static FindingChange both(Change change, Finding before, Finding after, String why) {
        return new FindingChange(change, Optional.of(before), Optional.of(after), why);
    }
}
