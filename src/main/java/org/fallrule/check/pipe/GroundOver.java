package org.fallrule.check.pipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.fallrule.analysis.Accuracy;
import org.fallrule.analysis.LongSection;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.analysis.Stretch;
import org.fallrule.check.Limits;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.network.PipeProfile;
import org.fallrule.network.PipeRun;
import org.fallrule.network.Reach;
import org.fallrule.site.Attribute;
import org.fallrule.site.Attributes;
import org.fallrule.site.Feature;
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
    private final Optional<Feature> outfallOfUnknownKind;

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
        this.outfallOfUnknownKind = analysis.network()
                .outfallOf(run)
                .filter(outfall -> outfall.get(Attribute.KIND).isEmpty());
    }

    /**
     * What is asked of a place along the run.
     *
     * @param answer the limit
     * @param byOutfall whether the limit would be another one if the outfall, whose kind is not given, were no daylight outfall
     */
    private record Asked(Limits.Answer answer, boolean byOutfall) {}

    private Asked asked(Limits limits, Attributes attributes) {
        Limits.Answer answer = limits.of(attributes);
        boolean byOutfall =
                outfallOfUnknownKind.isPresent() && !answer.equals(limits.of(LongSection.withoutDaylight(attributes)));
        return new Asked(answer, byOutfall);
    }

    /** One observation for each stretch of which a limit is asked. */
    List<Observation> against(Limits limits) {
        List<Observation> observations = new ArrayList<>();
        List<Stretch> stretches =
                new LongSection(analysis, run, profile).stretches(attributes -> asked(limits, attributes), line);
        for (Stretch stretch : stretches) {
            Asked asked = asked(limits, stretch.attributes());
            if (asked.byOutfall()) {
                observations.add(Observation.cannotTell(
                        run.pipe(),
                        new Limits.Answer.Undecided(Attribute.KIND.name())
                                .missing(outfallOfUnknownKind.orElseThrow())));
            } else if (asked.answer() instanceof Limits.Answer.Asked limit) {
                observations.add(observed(stretch, limit));
            } else if (asked.answer() instanceof Limits.Answer.Undecided undecided) {
                observations.add(undecided(stretch, undecided));
            }
        }
        return observations;
    }

    /** What lies above is worked out from other layers; the pipe's own layer cannot give it. */
    private Observation undecided(Stretch stretch, Limits.Answer.Undecided undecided) {
        Observation seen = Observation.plain(Outcome.CANNOT_TELL, run.pipe());
        List<String> lacking = new ArrayList<>(List.of(undecided.lacking().split(", ", -1)));
        if (lacking.remove(Attribute.ABOVE.name())) {
            seen = seen.lacking(new Missing(
                    "what lies above " + run.pipe().spoken() + " " + from(stretch.reaches()),
                    analysis.surfaces().settledBy()));
        }
        return lacking.isEmpty()
                ? seen
                : seen.lacking(new Limits.Answer.Undecided(String.join(", ", lacking)).missing(run.pipe()));
    }

    private Observation observed(Stretch stretch, Limits.Answer.Asked asked) {
        Bound bound = asked.limit().bound();
        Geometry where = GEOMETRY.createPoint(profile.placeAt(stretch.station(bound)));
        Optional<Length> height = stretch.height(bound);
        if (height.isEmpty()) {
            return Observation.cannotTell(run.pipe(), groundMissing(analysis, run, stretch.reaches()))
                    .at(where);
        }
        String above = stretch.attributes().get(Attribute.ABOVE).orElse("unknown ground");
        double accuracy = Accuracy.ofHeightAtGround(analysis, run.pipe()).metres();
        return Observation.measured(run.pipe(), asked.against(what + " under " + above, height.get(), accuracy))
                .at(where)
                .noting("at station " + analysis.station(stretch.station(bound)));
    }

    /** {@code from station 0+00.0 to 0+20.0, 0+60.0 to 1+00.0}. */
    private String from(List<Reach> reaches) {
        return "from station " + analysis.stations(reaches);
    }

    static Missing groundMissing(SiteAnalysis analysis, PipeRun run, List<Reach> reaches) {
        return new Missing(
                "ground above " + run.pipe().spoken() + " from station " + analysis.stations(reaches),
                "take spot elevations on both sides of the pipe there");
    }
}
