package org.fallrule.report.profile;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.fallrule.measure.Elevation;
import org.fallrule.network.FlowLine;
import org.fallrule.network.Reach;
import org.fallrule.report.map.Shape;

/**
 * A height that a finding is about, in long section.
 *
 * @param line the pipes that it was measured at; empty where it is about the ground alone
 * @param reach what is shown of them
 * @param from one end of what was measured
 * @param to the other end
 * @param isTrue whether heights are drawn as large as lengths, so that a distance around something is round
 * @param limit draws what the rule asks at a scale
 */
record HeightMeasured(
        Optional<FlowLine> line,
        Reach reach,
        Mark from,
        Mark to,
        boolean isTrue,
        Function<SectionScale, List<Shape>> limit) {

    /** A level at a station in metres. */
    record Mark(double station, Elevation level) {}
}
