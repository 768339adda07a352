package org.fallrule.report.html;

import java.util.Optional;
import org.fallrule.report.CrossedUtility;
import org.fallrule.report.CrossingWords;
import org.fallrule.report.map.PlainText;

/**
 * A row of the table of crossings as the page shows it.
 *
 * @param words the row, free of what would disturb a page
 * @param sign how the rules stand to it; empty where no rule speaks of it
 */
public record CrossingView(CrossingWords words, Optional<OutcomeSign> sign) {

    static CrossingView of(CrossedUtility crossed) {
        CrossingWords said = CrossingWords.of(crossed);
        CrossingWords plain = new CrossingWords(
                PlainText.of(said.pipe()),
                said.station(),
                PlainText.of(said.utility()),
                said.size(),
                PlainText.of(said.quality()),
                said.depth(),
                said.gap(),
                said.angle(),
                said.outcome(),
                said.call());
        return new CrossingView(plain, said.outcome().map(OutcomeSign::of));
    }
}
