package org.fallrule.proposal;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.analysis.PipeWater;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.hydraulics.pipe.RoundPipe;
import org.fallrule.measure.Flow;
import org.fallrule.measure.Length;
import org.fallrule.measure.Slope;
import org.fallrule.network.PipeRun;

/** Gives each reach the smallest size that carries its design flow and is no narrower than those that flow into it. */
final class Sizing {
    private final SiteAnalysis analysis;
    private final LineRules rules;
    private final Stock stock;
    private final Grading grading;

    Sizing(SiteAnalysis analysis, LineRules rules, Stock stock, Grading grading) {
        this.analysis = analysis;
        this.rules = rules;
        this.stock = stock;
        this.grading = grading;
    }

    /**
     * Grades and sizes that agree; nothing where the drain does not fall as it must in the sizes that it needs.
     *
     * @param floor by how many sizes every pipe is wider than the flow needs
     */
    Optional<Grades> of(Drain drain, int floor) {
        Map<Drain.Reach, Length> sizes = new HashMap<>();
        drain.reaches().forEach(reach -> sizes.put(reach, stock.smallest()));
        Optional<Grades> grades = grading.of(drain, sizes);
        for (int round = 0; round <= stock.sizes().size() && grades.isPresent(); round++) {
            Map<Drain.Reach, Length> needed = needed(grades.get(), floor);
            if (needed.equals(grades.get().sizes())) {
                return grades;
            }
            grades = grading.of(drain, needed);
        }
        return grades;
    }

    private Map<Drain.Reach, Length> needed(Grades grades, int floor) {
        ProposedSite proposed = new ProposedSite(analysis, stock, grades);
        SiteAnalysis drained = analysis.with(proposed.with(List.of(), Optional.empty()));
        Map<String, PipeRun> runs = new HashMap<>();
        drained.network().runs().forEach(run -> runs.put(run.id(), run));
        Map<Drain.Reach, Length> needed = new HashMap<>();
        Map<Integer, Length> above = new HashMap<>();
        for (Drain.Reach reach : grades.inOrder()) {
            int least = stock.sizes().indexOf(above.getOrDefault(reach.up(), stock.smallest()));
            int byFlow = Optional.ofNullable(runs.get(proposed.id(reach)))
                    .map(run -> index(drained.water().in(run)))
                    .orElse(0);
            Length size = stock.sizes().get(Math.min(stock.sizes().size() - 1, Math.max(least, byFlow + floor)));
            Length was = grades.sizes().getOrDefault(reach, size);
            Length wider = was.compareTo(size) > 0 ? was : size;
            needed.put(reach, wider);
            above.merge(reach.down(), wider, (one, other) -> one.compareTo(other) > 0 ? one : other);
        }
        return needed;
    }

    /** The least size by its number; the least of all where the flow is not known, which the review then tells. */
    private int index(PipeWater water) {
        Optional<Flow> flow = water.flow().value().map(gathered -> gathered.flow());
        Optional<Slope> slope = water.slope().value();
        Optional<RoundPipe> pipe = water.pipe().value();
        if (flow.isEmpty() || slope.isEmpty() || pipe.isEmpty()) {
            return 0;
        }
        double most = Math.min(1, rules.least("capacity", "at_most", water.run().pipe()));
        for (int i = 0; i < stock.sizes().size(); i++) {
            RoundPipe round = new RoundPipe(stock.sizes().get(i), pipe.get().roughness());
            double carries = round.capacity(slope.get())
                    .value()
                    .map(Flow::cubicMetresPerSecond)
                    .orElse(0.0);
            if (flow.get().cubicMetresPerSecond() <= carries * most) {
                return i;
            }
        }
        return stock.sizes().size() - 1;
    }
}
