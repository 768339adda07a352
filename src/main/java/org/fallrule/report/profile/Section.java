package org.fallrule.report.profile;

import java.util.List;
import org.fallrule.network.Reach;
import org.fallrule.report.SheetUnits;
import org.fallrule.report.map.Drawing;

/**
 * A long section before it is printed.
 *
 * @param reach the stations that the axis below has, in metres
 * @param units the units of the axes
 * @param drawing the shapes: x is the station in metres, y the elevation in metres times the exaggeration
 * @param scale the scales
 * @param form the form it is made for
 * @param stands where pipes meet or end
 * @param facts the pipes' figures, one for each pipe of the line
 * @param notes what is not drawn, and why, each a sentence
 */
public record Section(
        Reach reach,
        SheetUnits units,
        Drawing drawing,
        SectionScale scale,
        SectionForm form,
        List<Stand> stands,
        List<PipeFacts> facts,
        List<String> notes) {
    public Section {
        stands = List.copyOf(stands);
        facts = List.copyOf(facts);
        notes = List.copyOf(notes);
    }
}
