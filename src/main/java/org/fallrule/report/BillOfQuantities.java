package org.fallrule.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.fallrule.measure.Length;
import org.fallrule.measure.Printed;
import org.fallrule.measure.Unit;
import org.fallrule.measure.Volume;
import org.fallrule.proposal.Proposal;
import org.fallrule.proposal.Quantities;

/** What a proposed line takes to build, a fact for each thing, as it stands in the report of the proposal. */
public final class BillOfQuantities {
    /** What has to be said with it. */
    public static final String LEAD =
            "Reckoned from the plan. Volumes are of ground in place, before it bulks, trench walls"
                    + " upright. The weights that the cost is reckoned with are those of the rule book: they compare lines and are no prices.";

    private BillOfQuantities() {}

    public static List<Fact> of(Proposal proposal) {
        Quantities take = proposal.quantities();
        List<Fact> facts = new ArrayList<>();
        if (proposal.course() != Proposal.Course.FOUND) {
            facts.add(new Fact("course", proposal.course().spoken()));
        }
        take.pipe().forEach((size, length) -> facts.add(new Fact(size(size) + " pipe", Printed.of(length, Unit.FOOT))));
        take.fittings().forEach((kind, count) -> facts.add(new Fact(kind, String.valueOf(count))));
        if (proposal.apron().metres() > 0) {
            facts.add(new Fact("stone apron at the outfall", Printed.of(proposal.apron(), Unit.FOOT) + " long"));
        }
        facts.add(new Fact("trench dug", volume(take.trench())));
        facts.add(new Fact("stone around the pipe", volume(take.stone())));
        facts.add(new Fact("spoil to haul off", volume(take.spoil())));
        facts.add(new Fact("utilities crossed", String.valueOf(take.crossings())));
        facts.add(new Fact("dug by hand", Printed.of(take.handDig(), Unit.FOOT)));
        facts.add(new Fact("among roots", Printed.of(take.roots(), Unit.FOOT)));
        facts.add(new Fact("under paving", Printed.of(take.paving(), Unit.FOOT)));
        facts.add(new Fact("cost by weight", String.format(Locale.ROOT, "%.1f", proposal.cost())));
        return facts;
    }

    private static String size(Length size) {
        return Math.round(size.in(Unit.INCH)) + " in";
    }

    private static String volume(Volume volume) {
        return Printed.of(volume, Unit.CUBIC_YARD);
    }
}
