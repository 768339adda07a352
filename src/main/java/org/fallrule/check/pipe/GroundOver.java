package org.fallrule.check.pipe;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.fallrule.analysis.LongSection;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.analysis.Stretch;
import org.fallrule.check.Limits;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.network.PipeProfile;
import org.fallrule.network.PipeRun;
import org.fallrule.network.Reach;
import org.fallrule.network.Station;
import org.fallrule.site.Attribute;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** Holds the height of the ground over some line of a pipe against limits, for each stretch that has a limit of its own. */
final class GroundOver {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    private final SiteAnalysis analysis;
    private final PipeRun run;
    private final PipeProfile profile;
    private final String what;
    private final DoubleFunction<Elevation> line;

    /**
     * @param what what the height is called: {@code cover}
     * @param line the level of the line of the pipe at a station in metres
     */
    GroundOver(SiteAnalysis analysis, PipeRun run, PipeProfile profile, String what, DoubleFunction<Elevation> line) {
        this.analysis = analysis;
        this.run = run;
        this.profile = profile;
        this.what = what;
        this.line = line;
    }

    /** One observation for each stretch of which a limit is asked. */
    List<Observation> against(Limits limits) {
        return new LongSection(analysis, run, profile)
                .stretches(limits::of, line).stream()
                        .flatMap(stretch ->
                                limits
                                        .hold(run.pipe(), stretch.attributes(), asked -> observed(stretch, asked))
                                        .stream())
                        .toList();
    }

    private Observation observed(Stretch stretch, Limits.Answer.Asked asked) {
        Bound bound = asked.limit().bound();
        Geometry where = GEOMETRY.createPoint(profile.placeAt(stretch.station(bound)));
        Optional<Length> height = stretch.height(bound);
        if (height.isEmpty()) {
            return Observation.cannotTell(run.pipe(), groundMissing(run, new Reach(stretch.from(), stretch.to())))
                    .at(where);
        }
        String above = stretch.attributes().get(Attribute.ABOVE).orElse("unknown ground");
        double accuracy = analysis.site().survey().ofHeightAtGround(run.pipe());
        return Observation.measured(run.pipe(), asked.against(what + " under " + above, height.get(), accuracy))
                .at(where)
                .noting("at station " + new Station(stretch.station(bound)));
    }

    static Missing groundMissing(PipeRun run, Reach reach) {
        return new Missing(
                "ground above " + run.pipe().spoken() + " from station " + reach,
                "take spot elevations on both sides of the pipe there");
    }
}
