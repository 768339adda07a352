package org.fallrule.report.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.network.FlowLine;
import org.fallrule.report.Report;
import org.fallrule.report.map.PlainText;
import org.fallrule.report.profile.Section;
import org.fallrule.report.profile.SectionDrawing;
import org.fallrule.report.profile.SectionForm;
import org.fallrule.report.profile.SectionSvg;

/**
 * A long section as the page shows it.
 *
 * @param number its number on the page, from 1
 * @param name the line that it follows
 * @param drawings the section as SVG for two widths of screen; empty when no height is known along the line
 */
public record SectionView(int number, String name, Optional<Drawings> drawings) {

    /** A section as SVG, for two widths of screen; the wide one is for paper too. */
    public record Drawings(String wide, String narrow) {}

    static List<SectionView> all(Report report) {
        List<SectionView> views = new ArrayList<>();
        for (FlowLine line : SectionDrawing.lines(report)) {
            String prefix = "section-" + (views.size() + 1);
            Optional<Section> wide = SectionDrawing.of(report, line, SectionForm.WIDE);
            Optional<Section> narrow = SectionDrawing.of(report, line, SectionForm.NARROW);
            views.add(new SectionView(
                    views.size() + 1,
                    PlainText.clipped(line.name(), 80),
                    wide.flatMap(large -> narrow.map(small -> new Drawings(
                            SectionSvg.inline(large, prefix), SectionSvg.inline(small, prefix + "-narrow"))))));
        }
        return views;
    }
}
