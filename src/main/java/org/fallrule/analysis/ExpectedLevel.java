package org.fallrule.analysis;

import java.util.Optional;
import org.fallrule.document.Place;
import org.fallrule.locality.ExpectedCover;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.locationtech.jts.geom.Coordinate;

/**
 * Where the top of a utility may be expected at a place, from the cover that is usual for its kind. Expected, not known.
 *
 * @param cover the usual cover, ground to the top of the utility
 * @param highest the highest that its top is expected; empty where the ground is not known
 * @param lowest the lowest
 * @param basis what the cover rests on
 * @param statedAt the line of the rule book that says so
 */
public record ExpectedLevel(
        ExpectedCover.Band cover,
        Optional<Elevation> highest,
        Optional<Elevation> lowest,
        String basis,
        Place statedAt) {

    /** What to expect at a place; nothing where no book speaks of the kind. */
    static Optional<ExpectedLevel> at(SiteAnalysis analysis, Feature utility, Coordinate place) {
        return analysis.locality()
                .expectedCover()
                .of(utility.get(Attribute.KIND))
                .map(kind -> {
                    ExpectedCover.Band band = kind.under(analysis.surfaces().at(place));
                    Optional<Elevation> ground = analysis.groundAsItIs().flatMap(surface -> surface.elevationAt(place));
                    return new ExpectedLevel(
                            band,
                            ground.map(level -> level.minus(band.from())),
                            ground.map(level -> level.minus(band.to())),
                            kind.basis(),
                            kind.statedAt());
                });
    }

    /**
     * How likely a utility of this size that lies where it is expected keeps clear of a pipe.
     *
     * @param over least height asked of the pipe's bottom over the utility's top
     * @param under least height asked of the utility's bottom over the pipe's top
     */
    Likelihood against(Elevation pipeTop, Elevation pipeBottom, Length size, Length over, Length under) {
        if (highest.isEmpty() || lowest.isEmpty()) {
            return Likelihood.OPEN;
        }
        double tolerance = Dimension.LENGTH.tolerance();
        double from = pipeBottom.minus(over).metres() + tolerance;
        double to = pipeTop.plus(size).plus(under).metres() - tolerance;
        double low = lowest.get().metres();
        double high = highest.get().metres();
        if (high <= from || low >= to) {
            return Likelihood.CLEAR;
        }
        return low > from && high < to ? Likelihood.CONFLICT : Likelihood.OPEN;
    }
}
