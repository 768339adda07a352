package org.fallrule.check.utility;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.analysis.Accuracy;
import org.fallrule.analysis.UtilityCrossing;
import org.fallrule.analysis.VerticalGap;
import org.fallrule.check.Limits;
import org.fallrule.check.Terms;
import org.fallrule.finding.Observation;
import org.fallrule.measure.Length;
import org.locationtech.jts.geom.GeometryFactory;

/** The height between a pipe and a utility where they cross. */
final class Across {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    private final PipeAndUtility pair;
    private final Terms terms;

    Across(PipeAndUtility pair, Terms terms) {
        this.pair = pair;
        this.terms = terms;
    }

    List<Observation> observe() {
        List<Observation> observations = new ArrayList<>();
        for (UtilityCrossing crossing : pair.crossings()) {
            Stream<Observation> seen = crossing.isHeightKnown()
                    ? known(crossing.gap(pair.sizeIfUnknown()).orElseThrow())
                    : new UnknownCrossing(pair, crossing, terms).observe().stream();
            seen.map(each -> placed(each, crossing)).forEach(observations::add);
        }
        return observations;
    }

    private Observation placed(Observation seen, UtilityCrossing crossing) {
        return seen.against(pair.utility())
                .at(GEOMETRY.createPoint(crossing.place()))
                .noting("crossing at station " + pair.analysis().station(crossing.station()));
    }

    private Stream<Observation> known(VerticalGap gap) {
        boolean over = gap.isDrainOver();
        Optional<Observation> either = limits(over).flatMap(limits -> held(limits, words(over), gap.clear()));
        Optional<Observation> utilityOver = terms.find(Separation.UTILITY_OVER)
                .flatMap(limits -> held(limits, "height of " + pair.utility().spoken() + " over it", gap.under()));
        return Stream.of(either, utilityOver).flatMap(Optional::stream);
    }

    /** The limit for a drain over the utility, or under it; where that has none of its own, the one for both. */
    private Optional<Limits> limits(boolean over) {
        return terms.find(over ? Separation.OVER : Separation.UNDER).or(() -> terms.find(Separation.ACROSS));
    }

    /** Where over and under are asked apart, which of the two it is. */
    private String words(boolean over) {
        boolean apart = terms.find(Separation.OVER).isPresent()
                || terms.find(Separation.UNDER).isPresent();
        if (!apart) {
            return "height between them";
        }
        return over
                ? "height over " + pair.utility().spoken()
                : "height under " + pair.utility().spoken();
    }

    private Optional<Observation> held(Limits limits, String words, Length height) {
        Accuracy accuracy = Accuracy.ofHeight(pair.analysis(), pair.run().pipe(), pair.utility());
        return pair.hold(limits, asked -> {
            Observation seen = Observation.measured(pair.run().pipe(), asked.against(words, height, accuracy.metres()));
            return PipeAndUtility.withAccuracy(pair.withSizes(seen), accuracy);
        });
    }
}
