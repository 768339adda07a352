package org.fallrule.reader.trap;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.measure.Printed;
import org.fallrule.reader.trap.PlanAsRead.LayerAsRead;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;

/**
 * Rims that all lie by the same height above or below the ground around them: the two surveys are on different datums. NAVD 88 lies
 * from about 1.3 ft below to 5 ft above NGVD 29 in the conterminous United States (from memory, after the National Geodetic Survey's
 * map of the difference). Where the ground is to be changed, rims stand at its new height, and nothing is told.
 */
final class RimsApart implements Trap {
    /** Fewer rims may be by chance where they are. */
    private static final int FEWEST = 3;

    /** In metres: what grates stand above or below spots beside them is less; more than 2 m is no difference of datums. */
    private static final double LEAST = 0.25;

    private static final double MOST = 2;

    /** A datum puts all rims off alike, in metres; what was regraded differs from place to place. */
    private static final double ALIKE = 0.12;

    @Override
    public List<Fault> problems(PlanAsRead plan) {
        if (!plan.of(Role.PROPOSED_GROUND).isEmpty()
                || plan.raster(Role.PROPOSED_GROUND).isPresent()) {
            return List.of();
        }
        HeightsAround ground = HeightsAround.of(plan);
        return Stream.of(Role.INLET, Role.CLEANOUT)
                .flatMap(role -> plan.of(role).stream())
                .flatMap(layer -> problem(layer, ground).stream())
                .toList();
    }

    private static List<Fault> problem(LayerAsRead layer, HeightsAround ground) {
        List<Double> apart = new ArrayList<>();
        for (Feature structure : layer.features()) {
            structure
                    .get(Attribute.RIM)
                    .ifPresent(rim -> ground.at(structure.geometry().getCoordinate())
                            .ifPresent(level -> apart.add(rim.metres() - level)));
        }
        if (apart.size() < FEWEST) {
            return List.of();
        }
        double middle = HeightsAround.middle(apart);
        boolean alike = apart.stream().allMatch(one -> Math.abs(one - middle) < ALIKE);
        if (!alike || Math.abs(middle) < LEAST || Math.abs(middle) > MOST) {
            return List.of();
        }
        return List.of(new Fault(
                Place.of(layer.source()),
                "its rims all lie about " + Printed.feet(Math.abs(middle)) + (middle < 0 ? " below" : " above")
                        + " the ground around them: is one of the two surveys on NGVD 29, the other on NAVD 88? Say datum: …"
                        + " for each layer"));
    }
}
