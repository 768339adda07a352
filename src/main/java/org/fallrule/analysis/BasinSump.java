package org.fallrule.analysis;

import java.util.Optional;
import org.fallrule.hydraulics.basin.HoseTest;
import org.fallrule.hydraulics.table.SourcedTable;
import org.fallrule.measure.Area;
import org.fallrule.measure.Intensity;
import org.fallrule.measure.Length;
import org.fallrule.method.Answer;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;

/** The sump of a basin as its plan gives it: its floor takes the water, through holes of sharp edges. */
public final class BasinSump {
    private static final SourcedTable INFILTRATION = SourcedTable.infiltration();
    /** Coefficient of discharge of a sharp-edged hole. */
    private static final double SHARP_EDGE = 0.6;

    private BasinSump() {}

    /**
     * The sump of a basin.
     *
     * @param rates the source of the rate at which soil of a texture takes water, where none is tested on the spot
     */
    public static Answer<HoseTest.Sump> of(SiteAnalysis analysis, Feature inlet, String rates) {
        Optional<Length> length = inlet.get(Attribute.BOX_LENGTH);
        Optional<Length> width = inlet.get(Attribute.BOX_WIDTH);
        Optional<Length> depth = inlet.get(Attribute.SUMP);
        Optional<Area> holes = inlet.get(Attribute.WEEP_HOLE_AREA);
        if (length.isEmpty() || width.isEmpty() || depth.isEmpty() || holes.isEmpty()) {
            return Answer.none("box_length, box_width, sump or weep_hole_area of " + inlet.spoken() + " is not given");
        }
        Area floor = new Area(length.get().metres() * width.get().metres());
        return rate(analysis, inlet, rates)
                .map(rate -> new HoseTest.Sump(floor, depth.get(), holes.get(), SHARP_EDGE, floor, rate));
    }

    private static Answer<Intensity> rate(SiteAnalysis analysis, Feature inlet, String rates) {
        Optional<Intensity> tested = analysis.water().soil(inlet).flatMap(soil -> soil.get(Attribute.INFILTRATION));
        return tested.map(Answer::of)
                .orElseGet(() -> analysis.water()
                        .soilAt(inlet)
                        .map(texture -> INFILTRATION
                                .find(texture, rates)
                                .map(entry -> new Intensity(entry.value().si())))
                        .orElseGet(() -> Answer.none("give a soil layer with infiltration or texture")));
    }
}
