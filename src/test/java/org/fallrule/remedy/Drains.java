package org.fallrule.remedy;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.PlanInFeet;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Outcome;
import org.fallrule.reader.SiteReader;
import org.fallrule.review.Review;
import org.fallrule.review.Reviewer;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.rulebook.RuleLibrary;
import org.fallrule.site.Role;
import org.fallrule.site.Site;

/** A plain drain to change, and what is offered for it under some rules of a county that is invented. */
final class Drains {
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 1);
    private static final RuleBook BOOK =
            new RuleLibrary(Path.of("rules"), "rules").load("saltmeadow", Optional.empty());

    private Drains() {}

    /** Two pipes of 1 % each, from a basin over a cleanout down to an outfall; level ground where the invert comes out. */
    static PlanInFeet plain() {
        return PlanInFeet.plan()
                .with(Role.LOT, "L-1", "POLYGON ((-50 -50, 150 -50, 150 50, -50 50, -50 -50))", "own = true")
                .with(
                        Role.PIPE,
                        "P-1",
                        "LINESTRING (0 0, 50 0)",
                        "diameter = 4 in",
                        "material = pvc_sch40",
                        "invert_up = 98 ft",
                        "invert_down = 97.5 ft")
                .with(
                        Role.PIPE,
                        "P-2",
                        "LINESTRING (50 0, 100 0)",
                        "diameter = 4 in",
                        "material = pvc_sch40",
                        "invert_up = 97.5 ft",
                        "invert_down = 97 ft")
                .with(
                        Role.INLET,
                        "CB-1",
                        "POINT (0 0)",
                        "kind = basin",
                        "rim = 100 ft",
                        "invert = 98 ft",
                        "sump = 6 in",
                        "weep_hole_area = 0 sq in",
                        "weight = 40 lb",
                        "box_length = 12 in",
                        "box_width = 12 in")
                .with(Role.CLEANOUT, "CO-1", "POINT (50 0)")
                .with(Role.OUTFALL, "OF-1", "POINT (100 0)", "kind = daylight");
    }

    /** What is offered for every finding of a rule, all other rules of the book dropped. */
    static List<Remedied> remedies(PlanInFeet plan, String rule) {
        RuleBook book = BOOK.only(each -> each.id().equals(rule));
        SiteAnalysis analysis = SiteAnalysis.of(plan.site(), book.locality());
        return Remedies.each(analysis, book, Reviewer.review(analysis, book, TODAY), TODAY)
                .each();
    }

    /** What is offered for the first finding of a rule that fails or is borderline, all other rules of the book dropped but those named. */
    static Remedied remedy(PlanInFeet plan, String rule, String... others) {
        List<String> kept = new ArrayList<>(List.of(others));
        kept.add(rule);
        RuleBook book = BOOK.only(each -> kept.contains(each.id()));
        SiteAnalysis analysis = SiteAnalysis.of(plan.site(), book.locality());
        Review review = Reviewer.review(analysis, book, TODAY);
        return Remedies.each(analysis, book, review, TODAY).each().stream()
                .filter(remedied -> remedied.finding().rule().equals(rule))
                .findFirst()
                .orElseThrow(() -> new AssertionError("nothing of " + rule + " fails: "
                        + review.findings().stream()
                                .map(finding -> PlanInFeet.line(finding.observation()))
                                .toList()));
    }

    /** The changes of one kind that pass a rule's first failing finding, the least first. */
    static List<LeastChange.Candidate> candidates(PlanInFeet plan, Remedy kind, String rule) {
        SiteAnalysis analysis = SiteAnalysis.of(plan.site(), BOOK.locality());
        Review review = Reviewer.review(analysis, BOOK, TODAY);
        Finding failing = failing(review, rule);
        Trial trial = new Trial(analysis, BOOK, TODAY, review);
        return new LeastChange(trial).candidates(kind, failing, Integer.MAX_VALUE);
    }

    /** Whether a change passes the finding's own rule. */
    static boolean turns(PlanInFeet plan, String rule, Change change) {
        SiteAnalysis analysis = SiteAnalysis.of(plan.site(), BOOK.locality());
        Review review = Reviewer.review(analysis, BOOK, TODAY);
        return new Trial(analysis, BOOK, TODAY, review).turns(failing(review, rule), change);
    }

    /** What a change makes worse under one rule. */
    static Optional<String> drawback(PlanInFeet plan, Change change, String rule) {
        RuleBook book = BOOK.only(each -> each.id().equals(rule));
        SiteAnalysis analysis = SiteAnalysis.of(plan.site(), book.locality());
        Review review = Reviewer.review(analysis, book, TODAY);
        return new Trial(analysis, book, TODAY, review)
                .drawback(analysis.with(change.site()))
                .map(drawback -> Shown.clause(((Drawback.Worse) drawback).finding()));
    }

    /** Whether a rule is met all over a changed plan that is reviewed whole, for the thing that failed it first. */
    static boolean meets(PlanInFeet plan, String rule, Change change) {
        Review before = Reviewer.review(SiteAnalysis.of(plan.site(), BOOK.locality()), BOOK, TODAY);
        Review after = Reviewer.review(SiteAnalysis.of(change.site(), BOOK.locality()), BOOK, TODAY);
        Subject subject = Subject.of(failing(before, rule));
        return after.findings().stream()
                .filter(finding -> subject.isAnsweredBy(Subject.of(finding)))
                .noneMatch(Findings::isOpen);
    }

    /** What a rule finds, whatever it is. */
    static List<Outcome> findings(PlanInFeet plan, String rule) {
        return Reviewer.review(SiteAnalysis.of(plan.site(), BOOK.locality()), BOOK, TODAY).findings().stream()
                .filter(finding -> finding.rule().equals(rule))
                .map(Finding::outcome)
                .toList();
    }

    /** What is offered for the first finding of a rule in a sample, under all rules of its county. */
    static Remedied ofSample(String sample, String rule) {
        Site site = SiteReader.read(Path.of("sample-sites", sample));
        RuleBook book =
                new RuleLibrary(Path.of("rules"), "rules").load(site.county().orElseThrow(), site.house());
        SiteAnalysis analysis = SiteAnalysis.of(site, book.locality());
        Review review = Reviewer.review(analysis, book, TODAY);
        LeastChange least = new LeastChange(new Trial(analysis, book, TODAY, review));
        return least.proved(least.begun(failing(review, rule)));
    }

    private static Finding failing(Review review, String rule) {
        return review.findings().stream()
                .filter(finding -> finding.rule().equals(rule) && Findings.badness(finding.outcome()) > 0)
                .findFirst()
                .orElseThrow(() -> new AssertionError(rule + " is met"));
    }

    /** What changes together are offered under the rules named. */
    static Optional<JointChange> joint(PlanInFeet plan, String... rules) {
        RuleBook book = BOOK.only(each -> List.of(rules).contains(each.id()));
        SiteAnalysis analysis = SiteAnalysis.of(plan.site(), book.locality());
        Review review = Reviewer.review(analysis, book, TODAY);
        return Remedies.NONE.joined(analysis, book, review, TODAY).joint();
    }
}
