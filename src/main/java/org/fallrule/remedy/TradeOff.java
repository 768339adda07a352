package org.fallrule.remedy;

import java.util.Optional;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Weight;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Length;
import org.fallrule.measure.Printed;
import org.fallrule.network.PipeRun;

/**
 * A change that passes its own rule and makes something else worse.
 *
 * @param change the change
 * @param drawback what it makes worse
 */
record TradeOff(Change change, Drawback drawback) {

    /**
     * How much speaks against it, to name the trade that may be worth it. A step at a junction comes of moving one pipe's end
     * alone and tells little.
     */
    int badness() {
        if (drawback instanceof Drawback.Worse worse) {
            boolean step = worse.finding().check().equals("continuous_fall");
            return (worse.finding().weight() == Weight.SHOULD ? 0 : 1) + (step ? 2 : 0);
        }
        return drawback instanceof Drawback.NoOutlet ? 5 : 4;
    }

    /** {@code end the pipe 7.50 ft earlier; that passes this rule, but then 0.32 ft over 60.00 ft of pipe P-7 is 0.53 %, …}. */
    String says(SiteAnalysis submitted) {
        return change.says() + "; that passes this rule, but then "
                + harm(new Shown(submitted.site().metric()));
    }

    private String harm(Shown shown) {
        if (drawback instanceof Drawback.Worse worse) {
            return fall(worse, shown).orElseGet(() -> Shown.clause(worse.finding()));
        }
        if (drawback instanceof Drawback.Buried buried) {
            return buried.structure() + " lies " + shown.height(buried.below().metres()) + " below the ground";
        }
        if (drawback instanceof Drawback.NoOutlet end) {
            return end.pipe()
                    + " comes out nowhere: the drain has to end elsewhere, in the open, and no place near by that was"
                    + " tried passes; the propose command looks over the whole lot";
        }
        return ((Drawback.Problem) drawback).says();
    }

    /** {@code 0.32 ft over 60.00 ft of pipe P-7 is 0.53 %, at least 1/8 in/ft (1.042 %) asked}. */
    private static Optional<String> fall(Drawback.Worse worse, Shown shown) {
        Finding finding = worse.finding();
        return finding.observation()
                .measured()
                .filter(measured -> measured.value().dimension() == Dimension.SLOPE)
                .flatMap(measured -> measured.limit()
                        .flatMap(limit -> Subject.feature(finding)
                                .flatMap(worse.changed().network()::runOf)
                                .map(run -> told(run, shown) + Printed.beside(measured.value(), limit) + ", "
                                        + limit.bound().words() + " " + Printed.limit(limit.value()) + " asked")));
    }

    private static String told(PipeRun run, Shown shown) {
        double fall = run.fall().map(Length::metres).orElse(0.0);
        String pipe = run.pipe().spoken();
        String length = shown.plan(run.length().metres());
        if (fall > Dimension.LENGTH.tolerance()) {
            return shown.height(fall) + " over " + length + " of " + pipe + " is ";
        }
        return fall < -Dimension.LENGTH.tolerance()
                ? pipe + " has no fall left: it rises " + shown.height(-fall) + " over " + length + ", a slope of "
                : pipe + " has no fall left: it lies level over " + length + ", a slope of ";
    }
}
