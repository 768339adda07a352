package org.fallrule.check.pipe;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.Check;
import org.fallrule.check.CheckPage;
import org.fallrule.check.Limits;
import org.fallrule.check.Need;
import org.fallrule.check.Parameter;
import org.fallrule.check.Terms;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Length;
import org.fallrule.network.PipeProfile;
import org.fallrule.network.PipeRun;
import org.fallrule.network.Station;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** The ground over each pipe, along its whole run, by what lies above it. */
@AutoService(Check.class)
public final class Cover implements Check {
    static final Parameter<Limits> AT_LEAST = Parameter.limit(
            "at_least",
            Bound.AT_LEAST,
            Dimension.LENGTH,
            "least cover; may depend on above (lawn, walk, drive, street, building) and on to_outfall_ft, the length"
                    + " of pipe still to run to a daylight outfall");
    static final Parameter<Limits> AT_MOST =
            Parameter.limit("at_most", Bound.AT_MOST, Dimension.LENGTH, "greatest cover");

    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    @Override
    public String name() {
        return "cover";
    }

    @Override
    public CheckPage page() {
        return new CheckPage(
                "The least and greatest cover of each pipe, separately for each stretch that has a limit of its own.",
                "cover = finished ground - outside top of pipe; outside top = invert - wall + outside diameter; wall ="
                        + " half of outside less nominal diameter; the pipe is straight between its inverts, the"
                        + " ground between the breaks of its surface",
                "Cover to the outside top of pipe, as in NEC 300.5 table note and county storm standards.",
                List.of(
                        "ground between spot elevations",
                        "the thickness of a slab or pavement, unless the spots are taken on it",
                        "grading after the survey"));
    }

    @Override
    public List<Parameter<?>> parameters() {
        return List.of(AT_LEAST, AT_MOST);
    }

    @Override
    public List<Need> needs(Terms terms) {
        return List.of(new Need.OfLayer(Role.PIPE), new Need.OfGround());
    }

    @Override
    public List<Observation> observe(SiteAnalysis analysis, Terms terms) {
        List<Observation> observations = new ArrayList<>();
        for (PipeRun run : analysis.network().runs()) {
            Optional<PipeProfile> profile = PipeProfile.of(run);
            if (profile.isEmpty() || run.slope().isEmpty()) {
                observations.add(profileMissing(run));
                continue;
            }
            terms.find(AT_LEAST).ifPresent(limits -> observe(analysis, run, profile.get(), limits, observations));
            terms.find(AT_MOST).ifPresent(limits -> observe(analysis, run, profile.get(), limits, observations));
        }
        return observations;
    }

    private static Observation profileMissing(PipeRun run) {
        Observation seen = run.slope().isEmpty()
                ? InvertsMissing.of(run)
                : Observation.plain(Outcome.CANNOT_TELL, run.pipe()).at(run.axis());
        return run.size().isPresent()
                ? seen
                : seen.lacking(new Missing("diameter of " + run.pipe().spoken(), "give diameter with its unit"));
    }

    private static void observe(
            SiteAnalysis analysis, PipeRun run, PipeProfile profile, Limits limits, List<Observation> observations) {
        for (CoverStretch stretch : new CoverSurvey(analysis, run, profile, limits).stretches()) {
            Limits.Answer answer = stretch.asked().answer();
            if (stretch.asked().byOutfall()) {
                observations.add(outfallUnknown(analysis, run));
            } else if (answer instanceof Limits.Answer.Asked asked) {
                observations.add(observed(analysis, run, profile, stretch, asked));
            } else if (answer instanceof Limits.Answer.Undecided undecided) {
                observations.add(undecided(run, stretch, undecided));
            }
        }
    }

    private static Observation outfallUnknown(SiteAnalysis analysis, PipeRun run) {
        Feature outfall = analysis.network().outfallOf(run).orElseThrow();
        return Observation.cannotTell(run.pipe(), new Limits.Answer.Undecided(Attribute.KIND.name()).missing(outfall));
    }

    /** What lies above is worked out from other layers; the pipe's own layer cannot give it. */
    private static Observation undecided(PipeRun run, CoverStretch stretch, Limits.Answer.Undecided undecided) {
        Observation seen = Observation.plain(Outcome.CANNOT_TELL, run.pipe());
        List<String> lacking = new ArrayList<>(List.of(undecided.lacking().split(", ")));
        if (lacking.remove(Attribute.ABOVE.name())) {
            seen = seen.lacking(new Missing(
                    "what lies above " + run.pipe().spoken() + " " + stretch.spokenReaches(),
                    "supply the walk and drive layers, or list them under absent in site.yaml if there are none"));
        }
        return lacking.isEmpty()
                ? seen
                : seen.lacking(new Limits.Answer.Undecided(String.join(", ", lacking)).missing(run.pipe()));
    }

    private static Observation observed(
            SiteAnalysis analysis, PipeRun run, PipeProfile profile, CoverStretch stretch, Limits.Answer.Asked asked) {
        String above = stretch.asked().above().orElse("unknown ground");
        double station = stretch.station(asked.limit().bound());
        Geometry where = GEOMETRY.createPoint(profile.placeAt(station));
        Optional<Length> cover = stretch.cover(asked.limit().bound());
        if (cover.isEmpty()) {
            Missing ground = new Missing(
                    "ground above " + run.pipe().spoken() + " " + stretch.spokenReaches(),
                    "take spot elevations on both sides of the pipe there");
            return Observation.cannotTell(run.pipe(), ground).at(where);
        }
        double accuracy = analysis.site().survey().ofHeightAtGround(run.pipe());
        return Observation.measured(run.pipe(), asked.against("cover under " + above, cover.get(), accuracy))
                .at(where)
                .noting("at station " + new Station(station));
    }
}
