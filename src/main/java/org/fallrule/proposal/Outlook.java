package org.fallrule.proposal;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.site.Site;

/**
 * What a report shows beside the plan itself.
 *
 * @param standing where an outfall may stand, and a basin
 * @param submitted the plan that was handed in, where the report is of a proposal for it
 * @param proposed that proposal
 */
public record Outlook(List<StandingGround> standing, Optional<Site> submitted, Optional<Proposal> proposed) {

    public static final Outlook NONE = new Outlook(List.of(), Optional.empty(), Optional.empty());

    public Outlook {
        standing = List.copyOf(standing);
    }

    public static Outlook of(SiteAnalysis analysis, RuleBook book) {
        return new Outlook(
                Stream.of(StandingGround.ofOutfall(analysis, book), StandingGround.ofBasin(analysis, book))
                        .flatMap(Optional::stream)
                        .toList(),
                Optional.empty(),
                Optional.empty());
    }

    /** The same, of a proposal for a plan that was handed in. */
    public Outlook of(Proposal proposal, Site plan) {
        return new Outlook(standing, Optional.of(plan), Optional.of(proposal));
    }
}
