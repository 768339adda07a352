package org.fallrule.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fallrule.measure.Angle;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.network.OutsideDiameter;
import org.fallrule.network.PipeProfile;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Coordinate;

/**
 * Where a utility crosses a pipe in plan, and what is known of it there.
 *
 * @param run the pipe
 * @param utility the utility
 * @param crossing where
 * @param angle between the two in plan
 * @param top the utility's outside top: given, or the ground there less its depth; empty when neither is known
 * @param isTopRelied whether what the plan says of its depth may be relied on: paint on the grass shows no depth
 * @param size its outside diameter, if the plan tells it
 * @param expected where its top may be expected, from its kind
 */
public record UtilityCrossing(
        PipeRun run,
        Feature utility,
        Crossing crossing,
        Angle angle,
        Optional<Elevation> top,
        boolean isTopRelied,
        Optional<Length> size,
        Optional<ExpectedLevel> expected) {

    /** The crossings of a pipe in the order of their stations. */
    public static List<UtilityCrossing> along(SiteAnalysis analysis, PipeRun run) {
        List<UtilityCrossing> crossings = new ArrayList<>();
        for (Feature utility : analysis.site().features(Role.UTILITY)) {
            crossings.addAll(of(analysis, run, utility));
        }
        crossings.sort(Comparator.comparingDouble(UtilityCrossing::station));
        return crossings;
    }

    /** The crossings of a pipe and one utility in the order of their stations. */
    public static List<UtilityCrossing> of(SiteAnalysis analysis, PipeRun run, Feature utility) {
        return Crossing.of(run, utility).stream()
                .map(crossing -> new UtilityCrossing(
                        run,
                        utility,
                        crossing,
                        CrossingAngle.at(crossing.place(), run.axis(), utility.geometry()),
                        topAt(analysis, utility, crossing.place()),
                        Accuracy.isDepthRelied(analysis, utility),
                        OutsideDiameter.of(utility).map(OutsideDiameter::value),
                        ExpectedLevel.at(analysis, utility, crossing.place())))
                .toList();
    }

    /** Metres from the pipe's upstream end. */
    public double station() {
        return crossing.station();
    }

    public Coordinate place() {
        return crossing.place();
    }

    /** Whether the height of both is known well enough to hold against a limit. */
    public boolean isHeightKnown() {
        return PipeProfile.of(run).isPresent() && top.isPresent() && isTopRelied;
    }

    /**
     * The clear height as the plan has it, relied on or not; nothing where the level of either is not given.
     *
     * @param sizeIfUnknown the utility's outside diameter where the plan gives none
     */
    public Optional<VerticalGap> gap(Length sizeIfUnknown) {
        return PipeProfile.of(run)
                .flatMap(pipe -> top.map(level -> VerticalGap.between(
                        pipe.topAt(station()), pipe.bottomAt(station()), level, size.orElse(sizeIfUnknown))));
    }

    /**
     * How a crossing of unknown depth may be expected to turn out.
     *
     * @param over least height asked of the pipe over the utility
     * @param under least height asked of the utility over the pipe
     */
    public Likelihood likelihood(Length sizeIfUnknown, Length over, Length under) {
        return PipeProfile.of(run)
                .flatMap(pipe -> expected.map(level -> level.against(
                        pipe.topAt(station()), pipe.bottomAt(station()), size.orElse(sizeIfUnknown), over, under)))
                .orElse(Likelihood.OPEN);
    }

    /** A utility's outside top at a place: given, or the ground as it is there less its depth; empty when neither is known. */
    public static Optional<Elevation> topAt(SiteAnalysis analysis, Feature utility, Coordinate place) {
        return utility.get(Attribute.TOP)
                .or(() -> utility.get(Attribute.DEPTH)
                        .flatMap(depth -> analysis.groundAsItIs()
                                .flatMap(ground -> ground.elevationAt(place))
                                .map(ground -> ground.minus(depth))));
    }
}
