package org.fallrule.report.checklist;

import org.fallrule.rulebook.ChecklistItem;

/**
 * An item of the checklist held against a plan.
 *
 * @param item the item
 * @param standing how it stands
 * @param says what was found
 * @param settledBy what would show it; empty when nothing is wanted
 */
public record ChecklistEntry(ChecklistItem item, Standing standing, String says, String settledBy) {}
