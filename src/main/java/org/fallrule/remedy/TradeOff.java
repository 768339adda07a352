package org.fallrule.remedy;

import java.util.Optional;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.finding.Finding;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Printed;
import org.fallrule.measure.Quantity;
import org.fallrule.network.PipeRun;

/**
 * A change that passes its own rule and makes something else worse.
 *
 * @param change the change
 * @param drawback what it makes worse
 */
record TradeOff(Change change, Drawback drawback) {

    /** {@code "end the pipe 7.50 ft earlier" would pass it, but not the rest: no fall left: …}. */
    String says(SiteAnalysis submitted) {
        return "nothing that was tried passes without harm elsewhere; " + change.says() + " would pass this, but then "
                + harm(new Shown(submitted.site().metric()));
    }

    private String harm(Shown shown) {
        if (drawback instanceof Drawback.Worse worse) {
            return fall(worse, shown).orElseGet(() -> Shown.clause(worse.finding()));
        }
        if (drawback instanceof Drawback.Buried buried) {
            return buried.outfall() + " lies " + shown.height(buried.below().metres()) + " below the ground";
        }
        return ((Drawback.Problem) drawback).says();
    }

    /** {@code no fall is left: 0.32 ft over 60.00 ft of pipe P-7 is 0.53 %, at least 1/8 in/ft (1.042 %) asked}. */
    private static Optional<String> fall(Drawback.Worse worse, Shown shown) {
        Finding finding = worse.finding();
        return finding.observation()
                .measured()
                .filter(measured -> measured.value().dimension() == Dimension.SLOPE)
                .flatMap(measured -> measured.limit()
                        .flatMap(limit -> Subject.feature(finding)
                                .flatMap(worse.changed().network()::runOf)
                                .map(run -> told(run, shown) + Printed.beside((Quantity) measured.value(), limit) + ", "
                                        + limit.bound().words() + " " + Printed.limit(limit.value()) + " asked")));
    }

    private static String told(PipeRun run, Shown shown) {
        return shown.height(run.fall().map(fall -> fall.metres()).orElse(0.0)) + " over "
                + shown.plan(run.length().metres()) + " of " + run.pipe().spoken() + " is ";
    }
}
