package org.fallrule.report.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.report.CrossedUtility;
import org.fallrule.report.CrossingWords;
import org.fallrule.report.Report;
import org.fallrule.report.StructureFacts;

/** The tables of the drain, its structures, its water and what it crosses. */
final class ConstructionText {
    private final Report report;
    private final TextPage page;

    private ConstructionText(Report report, TextPage page) {
        this.report = report;
        this.page = page;
    }

    static void write(Report report, TextPage page) {
        ConstructionText text = new ConstructionText(report, page);
        text.drain();
        text.crossings();
    }

    private void drain() {
        List<String> pipes = DrainText.lines(report.analysis());
        if (!pipes.isEmpty()) {
            page.heading("the drain along the flow");
            pipes.forEach(page::line);
        }
        List<String> structures = StructureFacts.all(report.analysis()).stream()
                .flatMap(facts -> structure(facts).stream())
                .toList();
        if (!structures.isEmpty()) {
            page.heading("what drains where, and drops from pipe to pipe");
            structures.forEach(each -> page.paragraph("  ", each));
        }
        if (!pipes.isEmpty()) {
            page.heading("the water");
            WaterText.lines(report.analysis()).forEach(page::line);
        }
    }

    private static Optional<String> structure(StructureFacts facts) {
        List<String> told = new ArrayList<>();
        facts.drainsGround().ifPresent(area -> told.add("drains ground of " + area));
        facts.drainsRoof().ifPresent(area -> told.add("drains roof of " + area));
        facts.drops().forEach(drop -> told.add("drop " + facts.spoken(drop)));
        return told.isEmpty()
                ? Optional.empty()
                : Optional.of(facts.what() + " " + facts.feature().id() + ": " + String.join("; ", told));
    }

    /** Where utilities cross the drain, for whoever digs. */
    private void crossings() {
        List<CrossingWords> rows =
                CrossedUtility.of(report).stream().map(CrossingWords::of).toList();
        if (!rows.isEmpty()) {
            page.heading("crossings");
        }
        for (CrossingWords row : rows) {
            page.paragraph(
                    "  ",
                    row.pipe() + " at " + row.station() + ": " + row.utility() + ", size " + row.size() + ", quality "
                            + row.quality());
            page.paragraph(
                    "    ",
                    "depth " + row.depth() + "; gap " + row.gap() + "; " + row.angle() + "; " + row.stands() + "; call "
                            + row.call());
        }
    }
}
