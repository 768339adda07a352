package org.fallrule.report.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.fallrule.network.FlowLine;
import org.fallrule.report.Report;
import org.fallrule.report.SheetUnits;
import org.fallrule.report.map.PlainText;
import org.fallrule.site.Layer;
import org.fallrule.site.Role;

/** What is said of a long section beside the drawing. */
final class SectionWords {
    private final Report report;
    private final FlowLine line;
    private final SectionGround ground;
    private final SectionCrossings crossings;
    private final List<Stand> stands;
    private final SheetUnits units;

    SectionWords(Report report, FlowLine line, SectionGround ground, SectionCrossings crossings, List<Stand> stands) {
        this.report = report;
        this.line = line;
        this.ground = ground;
        this.crossings = crossings;
        this.stands = stands;
        this.units = SheetUnits.of(report.site());
    }

    /** What the drawing takes for granted, and what is not drawn and why, each a sentence. */
    List<String> notes() {
        List<String> notes = new ArrayList<>();
        notes.add("Heights and stations in " + units.word() + "; heights "
                + report.site()
                        .datum()
                        .map(datum -> "in " + PlainText.of(datum))
                        .orElse("in a datum that the plan does not name")
                + ".");
        if (report.site().layer(Role.UTILITY) instanceof Layer.NotSupplied) {
            notes.add("The plan says nothing of utilities, so no crossing is drawn.");
        }
        List<SectionGround.Gap> gaps = ground.gaps();
        if (!gaps.isEmpty()) {
            notes.add("The ground is not known from "
                    + gaps.stream().map(this::stations).collect(Collectors.joining(", ")) + ".");
        }
        notes.addAll(SectionPipes.lacking(line));
        crossings.all().stream()
                .filter(placed -> placed.crossing().top().isEmpty())
                .map(placed -> "The depth of " + SectionCrossings.name(placed.crossing()) + " is not known.")
                .distinct()
                .forEach(notes::add);
        crossings.all().stream()
                .map(SectionCrossings.Placed::crossing)
                .filter(SectionCrossings::isExpected)
                .map(crossing -> "An upright with two bars: " + crossings.expected(crossing) + ".")
                .distinct()
                .forEach(notes::add);
        return notes;
    }

    private String stations(SectionGround.Gap gap) {
        return units.station(gap.from()) + " to " + units.station(gap.to());
    }

    /** What a reader who cannot see the drawing must know. */
    String description(SectionScale scale) {
        String stood = stands.stream()
                .map(stand -> stand.name() + " " + String.join(", ", stand.lines()))
                .collect(Collectors.joining("; "));
        String pipes = line.legs().stream()
                .map(leg -> PipeFacts.of(leg, units).sentence())
                .collect(Collectors.joining(" "));
        String crossed = crossings.all().stream()
                .map(placed -> SectionCrossings.name(placed.crossing()) + " at " + units.station(placed.station()))
                .collect(Collectors.joining("; "));
        return "The drain and the ground along the flow, in " + units.word() + ". "
                + scale.words() + " Structures: " + stood + ". Pipes: " + pipes
                + (crossed.isEmpty() ? "" : " Crossings: " + crossed + ".");
    }
}
