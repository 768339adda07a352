package org.fallrule.report.water;

import java.util.Optional;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.locality.Stated;
import org.fallrule.measure.Printed;
import org.fallrule.measure.Unit;

/** The rain that was designed for, in a sentence. */
public final class StormWords {
    private StormWords() {}

    /** {@code Rain of 10 yr, no shorter than 5.0 min (rules/counties/larkmoor.yaml:9, ordinance: …).}; or what is missing. */
    public static String of(SiteAnalysis analysis) {
        return analysis.water()
                .storm()
                .map(storm -> "Rain of " + storm.returnPeriod()
                        + storm.shortestDuration()
                                .map(shortest -> ", no shorter than " + Printed.of(shortest.value(), Unit.MINUTE))
                                .orElse("")
                        + " (" + said(storm.rainfall()) + ").")
                .value()
                .orElseGet(() -> "No flows: " + analysis.water().storm().why() + ".");
    }

    private static String said(Stated<?> stated) {
        Optional<String> basis = stated.basis();
        return stated.setBy().fileAndLine() + basis.map(text -> ", " + text).orElse("");
    }
}
