package org.fallrule.reader.trap;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Printed;
import org.fallrule.measure.Unit;
import org.fallrule.reader.trap.PlanAsRead.LayerAsRead;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Coordinate;

/**
 * A drain that lies nowhere near the ground: its heights are in another unit or on another datum. Ellipsoid heights, as GNSS
 * receivers give them, lie some 25 to 175 ft below those of NAVD 88 in the conterminous United States (from memory: geoid heights of
 * about -8 to -53 m).
 */
final class HeightsApart implements Trap {
    /** No drain of a lot lies so deep, in metres, nor so high above ground. */
    private static final double DEEPEST = 7;

    private static final double HIGHEST = 1.5;

    private static final double GEOID_LEAST = 7;
    private static final double GEOID_MOST = 55;

    @Override
    public List<Fault> problems(PlanAsRead plan) {
        HeightsAround ground = HeightsAround.of(plan);
        return Stream.of(Role.PIPE, Role.INLET, Role.OUTFALL)
                .flatMap(role -> plan.of(role).stream())
                .flatMap(layer -> problem(layer, ground).stream())
                .toList();
    }

    private static List<Fault> problem(LayerAsRead layer, HeightsAround ground) {
        List<Double> drain = new ArrayList<>();
        List<Double> around = new ArrayList<>();
        for (Feature feature : layer.features()) {
            Coordinate[] places = feature.geometry().getCoordinates();
            add(feature, Attribute.INVERT_UP, places[0], drain, around, ground);
            add(feature, Attribute.INVERT_DOWN, places[places.length - 1], drain, around, ground);
            add(feature, Attribute.INVERT, places[0], drain, around, ground);
            add(feature, Attribute.RIM, places[0], drain, around, ground);
        }
        if (drain.isEmpty()) {
            return List.of();
        }
        List<Double> apart = new ArrayList<>();
        for (int i = 0; i < drain.size(); i++) {
            apart.add(drain.get(i) - around.get(i));
        }
        double middle = HeightsAround.middle(apart);
        if (middle > -DEEPEST && middle < HIGHEST) {
            return List.of();
        }
        double ratio = HeightsAround.middle(drain) / HeightsAround.middle(around);
        return List.of(new Fault(
                Place.of(layer.source()),
                "its inverts and rims lie about "
                        + Printed.feet(Math.rint(Math.abs(middle) / Unit.FOOT.toSi()) * Unit.FOOT.toSi())
                        + (middle < 0 ? " below" : " above")
                        + " the ground of the plan: " + cause(middle, ratio)));
    }

    private static void add(
            Feature feature,
            Attribute<Elevation> attribute,
            Coordinate place,
            List<Double> drain,
            List<Double> around,
            HeightsAround ground) {
        feature.get(attribute)
                .ifPresent(height -> ground.at(place).ifPresent(level -> {
                    drain.add(height.metres());
                    around.add(level);
                }));
    }

    private static String cause(double apart, double ratio) {
        if (Math.abs(ratio * Unit.FOOT.toSi() - 1) < 0.03 || Math.abs(ratio / Unit.FOOT.toSi() - 1) < 0.03) {
            return "is one of the two in metres and read in feet? Say units: {elevation: …} for the layer";
        }
        if (Math.abs(apart) > GEOID_LEAST && Math.abs(apart) < GEOID_MOST) {
            return "is one of the two in ellipsoid heights, as a GNSS receiver gives them, or do depths stand where"
                    + " elevations should? Bring both to one datum, and say datum: … where they are not";
        }
        return "are they on one datum, and in one unit? Do depths stand where elevations should? Say datum: … and units:"
                + " {elevation: …} for the layer that is otherwise";
    }
}
