package org.fallrule.remedy;

import java.util.Optional;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.network.Junction;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Coordinate;

/**
 * Whether outfalls still open to the air. No rule asks for it, as it is what an outfall is: its invert lies no deeper below the
 * finished ground than it did in the submitted plan, or not below it at all.
 */
final class Daylight {
    private Daylight() {}

    /** The first outfall of a changed plan that lies in the ground, as far as the ground is known. */
    static Optional<Drawback> buried(SiteAnalysis submitted, SiteAnalysis changed) {
        return changed.site().features(Role.OUTFALL).stream()
                .flatMap(outfall -> below(changed, outfall)
                        .filter(depth -> depth > allowed(submitted, outfall.id()) + Dimension.LENGTH.tolerance())
                        .map(depth -> new Drawback.Buried(outfall.spoken(), new Length(depth)))
                        .stream())
                .<Drawback>map(buried -> buried)
                .findFirst();
    }

    private static double allowed(SiteAnalysis submitted, String id) {
        return submitted.site().features(Role.OUTFALL).stream()
                .filter(outfall -> outfall.id().equals(id))
                .findFirst()
                .flatMap(outfall -> below(submitted, outfall))
                .map(depth -> Math.max(0, depth))
                .orElse(0.0);
    }

    /** Metres from the finished ground down to the invert of an outfall; negative above it. */
    static Optional<Double> below(SiteAnalysis analysis, Feature outfall) {
        Optional<Junction> junction = analysis.network().junctionOf(outfall);
        Optional<Elevation> invert = junction.flatMap(at -> analysis.network().into(at).stream()
                .flatMap(run -> run.invertDown().stream())
                .reduce((one, other) -> one.metres() < other.metres() ? one : other));
        Optional<Elevation> ground = analysis.ground()
                .flatMap(surface -> surface.elevationAt(outfall.geometry().getCoordinate()));
        return invert.flatMap(low -> ground.map(level -> level.above(low).metres()));
    }

    /** The invert of an outfall moved to another place so that it stands to the ground there as it does here; empty without ground. */
    static Optional<Elevation> invertAt(SiteAnalysis analysis, PipeRun last, Coordinate to) {
        return analysis.ground()
                .flatMap(surface -> surface.elevationAt(last.down().place())
                        .flatMap(here -> surface.elevationAt(to)
                                .flatMap(there -> last.invertDown().map(invert -> invert.plus(there.above(here))))));
    }
}
