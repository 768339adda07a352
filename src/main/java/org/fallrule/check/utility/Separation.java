package org.fallrule.check.utility;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.Check;
import org.fallrule.check.CheckPage;
import org.fallrule.check.Limits;
import org.fallrule.check.Need;
import org.fallrule.check.Parameter;
import org.fallrule.check.Selection;
import org.fallrule.check.Terms;
import org.fallrule.check.WorthTelling;
import org.fallrule.finding.Observation;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.Range;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;

/** How far the drain keeps from other people's pipes and wires, beside them and where it crosses them. */
@AutoService(Check.class)
public final class Separation implements Check {
    static final Parameter<Selection> FROM =
            Parameter.features("from", "the utilities to keep away from", Role.UTILITY);
    static final Parameter<Limits> BESIDE = Parameter.limit(
            "beside_at_least", Bound.AT_LEAST, Dimension.LENGTH, "least plan distance where they do not cross");
    static final Parameter<Limits> ACROSS = Parameter.limit(
            "across_at_least", Bound.AT_LEAST, Dimension.LENGTH, "least height between them where they cross");
    static final Parameter<Limits> OVER = Parameter.limit(
            "over_at_least",
            Bound.AT_LEAST,
            Dimension.LENGTH,
            "least height of the drain over the utility where they cross; else across_at_least counts");
    static final Parameter<Limits> UNDER = Parameter.limit(
            "under_at_least",
            Bound.AT_LEAST,
            Dimension.LENGTH,
            "least height of the drain under the utility where they cross; else across_at_least counts");
    static final Parameter<Limits> UTILITY_OVER = Parameter.limit(
            "utility_over_at_least",
            Bound.AT_LEAST,
            Dimension.LENGTH,
            "least height of the utility over the drain where they cross, which a drain over it never has");
    static final Parameter<Quantity> EXCUSED = Parameter.quantity(
                    "near_crossing",
                    Dimension.LENGTH,
                    "plan distance around a crossing within which the distance beside is not asked of the crossing pipe and"
                            + " the pipes that join it")
            .always();
    static final Parameter<Quantity> SIZE = Parameter.quantity(
                    "size_if_unknown",
                    Dimension.LENGTH,
                    "outside diameter to take for a utility whose size the plan does not give")
            .within(Range.ABOVE_ZERO)
            .always();

    @Override
    public String name() {
        return "separation";
    }

    @Override
    public CheckPage page() {
        return new CheckPage(
                "Between each pipe of the drain and each utility: the plan distance beside it, outside to outside, and at"
                        + " every crossing the height between the upper one's bottom and the lower one's top. A utility"
                        + " is known no better than its quality level allows; where its depth cannot be relied on the"
                        + " crossing is not told, and the depth that is usual for its kind says what to expect.",
                "beside = distance of centrelines - both half outside diameters, over the run apart from its crossings;"
                        + " across = bottom of the upper - top of the lower; a utility's top is given, or is the ground"
                        + " less its depth. A limit may depend on encased, of either of the two",
                "Outside-to-outside measure and separate rules beside and across as in Recommended Standards for Water"
                        + " Works (2018) 8.8.2 and 8.8.3, over and under as in F.A.C. 62-555.314(2); quality levels of"
                        + " ASCE 38-22, their figures from the rule book.",
                List.of(
                        "utilities that are not on the plan",
                        "how deep a mark is: paint on the grass shows no depth",
                        "where along a line the quality level was reached: A holds at its test hole alone",
                        "the soil between the two"));
    }

    @Override
    public List<Parameter<?>> parameters() {
        return List.of(FROM, BESIDE, ACROSS, OVER, UNDER, UTILITY_OVER, EXCUSED, SIZE);
    }

    @Override
    public List<Need> needs(Terms terms) {
        return List.of(new Need.OfLayer(Role.PIPE), new Need.OfLayer(Role.UTILITY));
    }

    @Override
    public List<Observation> observe(SiteAnalysis analysis, Terms terms) {
        Selection from = terms.get(FROM);
        List<Observation> observations = new ArrayList<>();
        for (Feature utility : from.candidates(analysis)) {
            observe(analysis, terms, utility).stream()
                    .map(seen -> from.settledByDistance(seen, utility))
                    .forEach(observations::add);
        }
        return observations;
    }

    private static List<Observation> observe(SiteAnalysis analysis, Terms terms, Feature utility) {
        List<Observation> beside = new ArrayList<>();
        List<Observation> across = new ArrayList<>();
        for (PipeRun run : analysis.runsAsked()) {
            PipeAndUtility pair = PipeAndUtility.of(analysis, run, utility, terms.get(SIZE));
            terms.find(BESIDE)
                    .flatMap(limits -> new Beside(pair, terms.get(EXCUSED).si()).observe(limits))
                    .ifPresent(beside::add);
            across.addAll(new Across(pair, terms).observe());
        }
        List<Observation> observations =
                new ArrayList<>(WorthTelling.of(beside, Comparator.comparingLong(Separation::nearness)));
        observations.addAll(across);
        return observations;
    }

    /** Distances that differ by less than a micrometre are the same, and the first counts: rounding must not choose. */
    private static long nearness(Observation seen) {
        return seen.measured()
                .map(measured -> Math.round(measured.value().si() * 1e6))
                .orElse(Long.MAX_VALUE);
    }
}
