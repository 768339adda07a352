package org.fallrule.remedy;

import java.util.stream.DoubleStream;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.network.PipeProfile;
import org.fallrule.network.PipeRun;

/**
 * About how much earth a drain's trench takes, to tell the smaller of two changes from the larger: each pipe's length by the
 * width of pipe and working room by the depth at its ends and middle. Where the ground is not known it counts as not deep.
 */
final class TrenchVolume {
    /** Working room on both sides together, metres; common practice. */
    private static final double ROOM = 0.3;

    private TrenchVolume() {}

    /** Cubic metres. */
    static double of(SiteAnalysis analysis) {
        return analysis.network().runs().stream()
                .mapToDouble(run -> PipeProfile.of(run)
                        .map(profile -> of(analysis, run, profile))
                        .orElse(0.0))
                .sum();
    }

    private static double of(SiteAnalysis analysis, PipeRun run, PipeProfile profile) {
        double length = run.length().metres();
        double width = run.size().map(size -> size.value().metres()).orElse(0.0) + ROOM;
        double depth = DoubleStream.of(0, length / 2, length)
                .map(station -> analysis.ground()
                        .flatMap(ground -> ground.elevationAt(profile.placeAt(station)))
                        .map(level -> Math.max(
                                0, level.above(profile.bottomAt(station)).metres()))
                        .orElse(0.0))
                .average()
                .orElse(0);
        return length * width * depth;
    }

    /** Metres of pipe. */
    static double length(SiteAnalysis analysis) {
        return analysis.network().runs().stream()
                .mapToDouble(run -> run.length().metres())
                .sum();
    }
}
