package org.fallrule.report.html;

import org.fallrule.report.checklist.ChecklistEntry;
import org.fallrule.report.map.PlainText;

/**
 * An item of the checklist as the page shows it.
 *
 * @param asks what is asked for
 * @param asked how usual it is
 * @param standing how it stands
 * @param says what was found
 * @param settledBy what would show it; empty when nothing is wanted
 */
public record ChecklistRow(String asks, String asked, String standing, String says, String settledBy) {
    static ChecklistRow of(ChecklistEntry entry) {
        return new ChecklistRow(
                PlainText.of(entry.item().asks()),
                entry.item().asked().spoken(),
                entry.standing().spoken(),
                PlainText.of(entry.says()),
                PlainText.of(entry.settledBy()));
    }
}
