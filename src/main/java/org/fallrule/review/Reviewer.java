package org.fallrule.review;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Measured;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Weight;
import org.fallrule.rulebook.Rule;
import org.fallrule.rulebook.RuleBook;

/** Runs the rules of a book over a plan, in their order. A check that breaks down is a listed problem, never a pass. */
public final class Reviewer {
    private final SiteAnalysis analysis;
    private final Waivers waivers;
    private final List<Fault> problems = new ArrayList<>();

    private Reviewer(SiteAnalysis analysis, LocalDate today) {
        this.analysis = analysis;
        this.waivers = new Waivers(analysis.site().waivers(), today);
    }

    /**
     * Reviews a plan.
     *
     * @param today the day on which waivers are held against their end
     */
    public static Review review(SiteAnalysis analysis, RuleBook book, LocalDate today) {
        return review(analysis, book, today, any -> {});
    }

    /**
     * Reviews a plan.
     *
     * @param found is told each finding as soon as it is there, in their order
     */
    public static Review review(SiteAnalysis analysis, RuleBook book, LocalDate today, Consumer<Finding> found) {
        return new Reviewer(analysis, today).review(book, found);
    }

    private Review review(RuleBook book, Consumer<Finding> found) {
        problems.addAll(analysis.site().problems());
        problems.addAll(analysis.problems());
        problems.addAll(analysis.network().problems());
        problems.addAll(book.notices());
        List<Finding> findings = new ArrayList<>();
        for (Rule rule : book.rules()) {
            for (Observation seen : observe(rule)) {
                Finding finding = waivers.applied(finding(rule, inUnitsOfPlan(seen)));
                findings.add(finding);
                found.accept(finding);
            }
        }
        problems.addAll(waivers.problems(book));
        return new Review(findings, problems);
    }

    private List<Observation> observe(Rule rule) {
        try {
            Optional<Observation> unmet = Needs.unmet(rule.check().needs(rule.terms()), analysis);
            if (unmet.isPresent()) {
                return List.of(unmet.get());
            }
            List<Observation> seen = rule.check().observe(analysis, rule.terms());
            return seen.isEmpty()
                    ? List.of(Observation.notApplicable("there is nothing in the plan that the rule speaks of"))
                    : seen;
        } catch (RuntimeException e) {
            problems.add(new Fault(
                    rule.setBy(),
                    "the check " + rule.check().name() + " broke down on rule " + rule.id() + " (" + e
                            + "); this is a fault of the program, please report it"));
            return List.of(Observation.cannotTell(
                    new Missing("a result of the check " + rule.check().name(), "see the problems listed")));
        }
    }

    private Observation inUnitsOfPlan(Observation seen) {
        return analysis.site().metric() ? seen.inMetres() : seen;
    }

    private static Finding finding(Rule rule, Observation seen) {
        Place setBy = seen.measured().flatMap(Measured::limitSetBy).orElse(rule.setBy());
        Observation told = rule.weight() == Weight.NOTE ? seen.asNote() : seen;
        return new Finding(rule.id(), rule.title(), rule.check().name(), rule.weight(), rule.basis(), setBy, told);
    }
}
