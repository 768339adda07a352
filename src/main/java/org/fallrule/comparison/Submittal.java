package org.fallrule.comparison;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.review.Review;
import org.fallrule.review.Reviewer;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;

/**
 * One state of a site, and what the rules make of it.
 *
 * @param analysis the plan and what follows from it
 * @param book the rules that were applied
 * @param review what they make of the plan
 */
public record Submittal(SiteAnalysis analysis, RuleBook book, Review review) {

    /** A plan reviewed on a day. */
    public static Submittal of(Site site, RuleBook book, LocalDate day) {
        SiteAnalysis analysis = SiteAnalysis.of(site, book.locality());
        Review review =
                isPointsAlone(site) ? new Review(List.of(), site.problems()) : Reviewer.review(analysis, book, day);
        return new Submittal(analysis, book, review);
    }

    /** Whether a site is nothing but points measured after construction: no plan that rules could be run on. */
    static boolean isPointsAlone(Site site) {
        return !site.features(Role.AS_BUILT).isEmpty() && drain(site).findAny().isEmpty();
    }

    private static Stream<Feature> drain(Site site) {
        return Stream.of(Role.values()).filter(Role::isOfDrain).flatMap(role -> site.features(role).stream());
    }

    public Site site() {
        return analysis.site();
    }

    /** Whether it is a plan, which rules were run on; else it is points measured after construction. */
    public boolean isPlan() {
        return !isPointsAlone(site());
    }

    /** Whether it shows work as built. */
    public boolean isAsBuilt() {
        return !site().features(Role.AS_BUILT).isEmpty() || drain(site()).anyMatch(BuiltWork::isBuilt);
    }
}
