package org.fallrule.report.pdf;

import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;
import org.fallrule.report.Report;
import org.fallrule.report.checklist.Checklist;
import org.fallrule.report.checklist.ChecklistEntry;

/** What a submittal is looked over for, and what of it the plan shows. */
final class ChecklistPart {
    private final Galley galley;
    private final Report report;

    ChecklistPart(Galley galley, Report report) {
        this.galley = galley;
        this.report = report;
    }

    void write() throws IOException {
        List<ChecklistEntry> entries = Checklist.of(report);
        if (entries.isEmpty()) {
            return;
        }
        galley.heading(2, "Submittal checklist", 120);
        galley.paragraph(Checklist.summary(entries)
                + ". Shown means that the files have it, not that it is right. Items come from the rule books.");
        List<List<String>> rows = IntStream.range(0, entries.size())
                .mapToObj(i -> row(i + 1, entries.get(i)))
                .toList();
        new DataTable(galley, List.of("no.", "item", "asked", "stands", "found", "to show it", "set by"), rows).draw();
    }

    private static List<String> row(int number, ChecklistEntry entry) {
        return List.of(
                String.valueOf(number),
                entry.item().asks(),
                entry.item().asked().spoken(),
                entry.standing().spoken(),
                entry.says(),
                entry.settledBy(),
                entry.item().setBy().fileAndLine());
    }
}
