package org.fallrule.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.fallrule.measure.Unit;
import org.fallrule.proposal.Proposal;
import org.fallrule.proposal.Quantities;
import org.fallrule.site.Site;

/** What a proposed line takes to build, a fact for each thing, as it stands in the report of the proposal. */
public final class BillOfQuantities {
    /** What has to be said with it. */
    public static final String LEAD =
            "Reckoned from the plan. Volumes are of ground in place, before it bulks, trench walls"
                    + " upright. The weights that the cost is reckoned with are those of the rule book: they compare lines and are no prices.";

    private BillOfQuantities() {}

    public static List<Fact> of(Proposal proposal) {
        Quantities take = proposal.quantities();
        Site plan = proposal.analysis().site();
        List<Fact> facts = new ArrayList<>();
        if (proposal.course() != Proposal.Course.FOUND) {
            facts.add(new Fact("course", proposal.course().spoken()));
        }
        take.pipe()
                .forEach((size, length) ->
                        facts.add(new Fact(plan.nominal(size) + " pipe", plan.printed(length, Unit.FOOT))));
        take.fittings().forEach((kind, count) -> facts.add(new Fact(kind, String.valueOf(count))));
        if (proposal.apron().metres() > 0) {
            facts.add(new Fact("stone apron at the outfall", plan.printed(proposal.apron(), Unit.FOOT) + " long"));
        }
        facts.add(new Fact("trench dug", plan.printed(take.trench(), Unit.CUBIC_YARD)));
        facts.add(new Fact("stone around the pipe", plan.printed(take.stone(), Unit.CUBIC_YARD)));
        facts.add(new Fact("spoil to haul off", plan.printed(take.spoil(), Unit.CUBIC_YARD)));
        facts.add(new Fact("utilities crossed", String.valueOf(take.crossings())));
        facts.add(new Fact("dug by hand", plan.printed(take.handDig(), Unit.FOOT)));
        facts.add(new Fact("among roots", plan.printed(take.roots(), Unit.FOOT)));
        facts.add(new Fact("under paving", plan.printed(take.paving(), Unit.FOOT)));
        facts.add(new Fact("cost by weight", String.format(Locale.ROOT, "%.1f", proposal.cost())));
        return facts;
    }
}
