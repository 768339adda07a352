package org.fallrule.review;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.fallrule.document.Fault;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.rulebook.Rule;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.site.Feature;
import org.fallrule.site.Waiver;

/** Lays a plan's waivers over its findings. */
final class Waivers {
    private final List<Waiver> waivers;
    private final LocalDate today;
    private final Set<Waiver> used = new HashSet<>();

    Waivers(List<Waiver> waivers, LocalDate today) {
        this.waivers = waivers;
        this.today = today;
    }

    /** The finding, waived if it fails or is borderline and a waiver in force speaks of it. */
    Finding applied(Finding finding) {
        List<Waiver> speaking =
                waivers.stream().filter(each -> speaksOf(each, finding)).toList();
        used.addAll(speaking);
        boolean open = finding.outcome() == Outcome.FAILS || finding.outcome() == Outcome.BORDERLINE;
        if (speaking.isEmpty() || !open) {
            return finding;
        }
        Optional<Waiver> inForce = speaking.stream().filter(this::inForce).findFirst();
        return finding.with(applied(finding.observation(), inForce.orElse(speaking.get(0))));
    }

    private boolean inForce(Waiver waiver) {
        return !waiver.expired(today) && !waiver.ahead(today);
    }

    private Observation applied(Observation seen, Waiver waiver) {
        String granted = "waiver by " + waiver.by() + " of " + waiver.date() + ": " + waiver.reason();
        if (waiver.expired(today)) {
            return seen.noting(granted + "; it expired on " + waiver.until().orElseThrow() + " and does not count");
        }
        if (waiver.ahead(today)) {
            return seen.noting(granted + "; that day is still to come and it does not count");
        }
        return seen.with(Outcome.WAIVED).noting(granted);
    }

    private static boolean speaksOf(Waiver waiver, Finding finding) {
        Optional<String> subject = finding.observation().subject().map(Feature::id);
        return waiver.rule().equals(finding.rule())
                && (waiver.feature().isEmpty() || waiver.feature().equals(subject));
    }

    /** Waivers that speak of no rule or of nothing that was found, and those of a day still to come. */
    List<Fault> problems(RuleBook book) {
        return Stream.concat(
                        waivers.stream()
                                .filter(waiver -> !used.contains(waiver))
                                .map(waiver -> new Fault(waiver.statedAt(), why(waiver, book))),
                        waivers.stream()
                                .filter(waiver -> waiver.ahead(today))
                                .map(waiver -> new Fault(waiver.statedAt(), whyAhead(waiver))))
                .toList();
    }

    private String whyAhead(Waiver waiver) {
        return "the waiver of " + waiver.rule() + " is dated " + waiver.date() + ", later than the day of this review, "
                + today + ", and does not count; check its date";
    }

    private static String why(Waiver waiver, RuleBook book) {
        boolean known = book.rules().stream().map(Rule::id).anyMatch(waiver.rule()::equals);
        return known
                ? "the waiver of " + waiver.rule() + " speaks of nothing that was found; check its feature"
                : "the waiver speaks of the rule " + waiver.rule() + ", which does not apply here; check its name";
    }
}
