package org.fallrule.analysis;

import java.util.List;
import java.util.Optional;
import org.fallrule.hydrology.CompositeRunoff;
import org.fallrule.measure.Area;
import org.fallrule.measure.Ratio;
import org.fallrule.measure.Time;
import org.fallrule.terrain.flow.ContributingArea;

/**
 * The rain that runs off to one inlet over its own ground and roof.
 *
 * @param parts its area by surface
 * @param runoff all parts together
 * @param farthest the longest way over the ground, where that set the time
 * @param overland how long the farthest water takes
 * @param timeBy what the time rests on: {@code given by drainage area DA-1}, {@code faa_time}
 * @param isCut whether more may drain here from beyond the known ground
 */
public record InletRunoff(
        List<Part> parts,
        CompositeRunoff runoff,
        Optional<ContributingArea.FlowWay> farthest,
        Time overland,
        String timeBy,
        boolean isCut) {

    public InletRunoff {
        parts = List.copyOf(parts);
    }

    /**
     * A part of the area.
     *
     * @param surface what lies on it
     * @param area its plan area
     * @param coefficient how much of the rain runs off
     * @param source who says so
     */
    public record Part(String surface, Area area, Ratio coefficient, String source) {}
}
