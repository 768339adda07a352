package org.fallrule.check.utility;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fallrule.analysis.RunParts;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.Check;
import org.fallrule.check.CheckPage;
import org.fallrule.check.Need;
import org.fallrule.check.Parameter;
import org.fallrule.check.Selection;
import org.fallrule.check.Terms;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.Range;
import org.fallrule.network.PipeRun;
import org.fallrule.network.Reach;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Geometry;

/** Whether the drain's joints are watertight near a line that its water must not get into. */
@AutoService(Check.class)
public final class TightJoints implements Check {
    static final Parameter<Selection> FROM =
            Parameter.features("from", "the utilities near which joints must be watertight", Role.UTILITY);
    static final Parameter<Quantity> WITHIN = Parameter.quantity(
                    "within", Dimension.LENGTH, "plan distance, outside to outside, that counts as near")
            .always();
    static final Parameter<Quantity> SIZE = Parameter.quantity(
                    "size_if_unknown",
                    Dimension.LENGTH,
                    "outside diameter to take for a utility whose size the plan does not give")
            .within(Range.ABOVE_ZERO)
            .always();

    private static final String WATERTIGHT = "watertight";

    @Override
    public String name() {
        return "tight_joints";
    }

    @Override
    public CheckPage page() {
        return new CheckPage(
                "Whether each pipe of which some part lies near a utility has watertight joints, with the stations of"
                        + " that part.",
                "near = distance of centrelines - both half outside diameters <= within; watertight is what the plan"
                        + " says of joint",
                "Ordinances that let a drain lie near a water line ask tight joints there, such as those of Tolono"
                        + " (Illinois) and Rossford (Ohio). Watertight is as tested after ASTM D3212.",
                List.of("how the joints were made in the end", "utilities that are not on the plan"));
    }

    @Override
    public List<Parameter<?>> parameters() {
        return List.of(FROM, WITHIN, SIZE);
    }

    @Override
    public Set<Attribute<?>> looksAtDetails() {
        return Set.of(Attribute.JOINT_TIGHTNESS);
    }

    @Override
    public List<Need> needs(Terms terms) {
        return List.of(new Need.OfLayer(Role.PIPE), new Need.OfLayer(Role.UTILITY));
    }

    @Override
    public List<Observation> observe(SiteAnalysis analysis, Terms terms) {
        List<Observation> observations = new ArrayList<>();
        Selection from = terms.get(FROM);
        for (PipeRun run : analysis.runsAsked()) {
            for (Feature utility : from.candidates(analysis.site())) {
                PipeAndUtility pair = PipeAndUtility.of(analysis, run, utility, terms.get(SIZE));
                observe(pair, terms.get(WITHIN).si())
                        .map(seen -> from.settled(seen, utility))
                        .ifPresent(observations::add);
            }
        }
        return observations;
    }

    private static Optional<Observation> observe(PipeAndUtility pair, double within) {
        Geometry near = pair.runWithin(within + pair.touching());
        List<Reach> reaches = RunParts.of(pair.run(), near);
        return reaches.isEmpty()
                ? Optional.empty()
                : Optional.of(standing(pair.run().pipe())
                        .against(pair.utility())
                        .at(near)
                        .noting("near it from station " + pair.analysis().stations(reaches)));
    }

    private static Observation standing(Feature pipe) {
        Optional<String> joint = pipe.get(Attribute.JOINT_TIGHTNESS);
        if (joint.isEmpty()) {
            return Observation.cannotTell(
                    pipe,
                    new Missing(
                            "joint tightness of " + pipe.spoken(),
                            "give joint_tightness: watertight, silt_tight, soil_tight or open"));
        }
        boolean tight = joint.get().equals(WATERTIGHT);
        return Observation.plain(tight ? Outcome.MEETS : Outcome.FAILS, pipe)
                .noting("its joints are " + joint.get().replace('_', '-'));
    }
}
