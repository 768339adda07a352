package org.fallrule.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.analysis.InletCatchments;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.measure.Area;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.measure.Unit;
import org.fallrule.network.Drop;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;

/**
 * What is known of an inlet, an outfall or a cleanout besides its findings.
 *
 * @param plan the plan that it stands in
 * @param feature the structure
 * @param rim its rim
 * @param invert its invert
 * @param catchment what drains to it; empty for what is no inlet, or of no known kind
 * @param drops the steps from each pipe that comes in to the one that carries on
 */
public record StructureFacts(
        Site plan,
        Feature feature,
        Optional<Elevation> rim,
        Optional<Elevation> invert,
        Optional<InletCatchments.Catchment> catchment,
        List<Drop> drops) {
    private static final List<Role> ROLES = List.of(Role.INLET, Role.CLEANOUT, Role.OUTFALL);

    public StructureFacts {
        drops = List.copyOf(drops);
    }

    /** The structures of a plan: inlets, cleanouts, outfalls. */
    public static List<StructureFacts> all(SiteAnalysis analysis) {
        Map<Feature, InletCatchments.Catchment> catchments = InletCatchments.of(analysis);
        List<Drop> drops = analysis.network().drops();
        List<StructureFacts> facts = new ArrayList<>();
        for (Role role : ROLES) {
            for (Feature feature : analysis.site().features(role)) {
                facts.add(new StructureFacts(
                        analysis.site(),
                        feature,
                        feature.get(Attribute.RIM),
                        feature.get(Attribute.INVERT),
                        Optional.ofNullable(catchments.get(feature)),
                        drops.stream()
                                .filter(drop -> drop.at().structures().contains(feature))
                                .toList()));
            }
        }
        return facts;
    }

    /** {@code inlet}; {@code downspout} where the plan gives the kind. */
    public String what() {
        return feature.get(Attribute.KIND)
                .map(kind -> kind.replace('_', ' '))
                .orElse(feature.role().spoken());
    }

    /** {@code 850 sq ft, and more from beyond the ground given}; empty where nothing is known of it. */
    public Optional<String> drainsGround() {
        return catchment.flatMap(known -> known.overGround()
                .map(area -> shown(area) + (known.isCut() ? " and more from beyond the ground given" : "")));
    }

    public Optional<String> drainsRoof() {
        return catchment.flatMap(InletCatchments.Catchment::ofRoof).map(this::shown);
    }

    private String shown(Area area) {
        return plan.printed(area, Unit.SQUARE_FOOT);
    }

    /** {@code 0.10 ft from P-1 to P-2}; a step up, which holds water, is called one. */
    public String spoken(Drop drop) {
        Length height = drop.height();
        String step = height.metres() < 0
                ? plan.printed(height.times(-1), Unit.FOOT) + " up"
                : plan.printed(height, Unit.FOOT);
        return step + " from " + drop.in().id() + " to " + drop.out().id();
    }
}
