package org.fallrule.reader.trap;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.measure.Printed;
import org.fallrule.reader.trap.PlanAsRead.LayerAsRead;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

/** Lot lines through a house, or no house on any lot: layers that are shifted against each other, as a wrong foot or datum does it. */
final class BuildingsOffLots implements Trap {
    /** Less than half a foot is how well lots and footprints of county data are known. */
    private static final double LEAST = 0.15;

    /** A house that reaches farther across is one of a row, drawn over several lots; a shift of layers is some feet. */
    private static final double MOST = 6;

    @Override
    public List<Fault> problems(PlanAsRead plan) {
        List<Feature> lots = plan.features(Role.LOT).toList();
        List<Fault> problems = new ArrayList<>();
        if (lots.isEmpty()) {
            return problems;
        }
        List<PreparedGeometry> prepared = lots.stream()
                .map(lot -> PreparedGeometryFactory.prepare(lot.geometry()))
                .toList();
        for (LayerAsRead layer : plan.of(Role.BUILDING)) {
            boolean none = true;
            for (Feature building : layer.features()) {
                List<Feature> under = Stream.iterate(0, i -> i < lots.size(), i -> i + 1)
                        .filter(i -> prepared.get(i).intersects(building.geometry()))
                        .map(lots::get)
                        .toList();
                none &= under.isEmpty();
                if (prepared.stream().noneMatch(lot -> lot.covers(building.geometry()))) {
                    across(building, under, cause(plan, layer)).ifPresent(problems::add);
                }
            }
            if (none) {
                problems.add(new Fault(
                        Place.of(layer.source()),
                        "none of its buildings stands on a lot: " + cause(plan, layer)
                                + ", or is the building of this lot missing?"));
            }
        }
        return problems;
    }

    private static Optional<Fault> across(Feature building, List<Feature> under, String cause) {
        return under.stream()
                .max(Comparator.comparingDouble(lot -> shared(building, lot)))
                .filter(lot -> shared(building, lot) > building.geometry().getArea() / 2)
                .map(lot -> new Across(lot, reach(building.geometry(), lot.geometry())))
                .filter(found -> found.metres() > LEAST && found.metres() < MOST)
                .map(found -> new Fault(
                        building.origin(),
                        "reaches " + Printed.feet(found.metres()) + " across the line of lot "
                                + found.lot().id() + ": " + cause + "?"));
    }

    private record Across(Feature lot, double metres) {}

    private static double shared(Feature building, Feature lot) {
        return building.geometry().intersection(lot.geometry()).getArea();
    }

    /** How far a building's corners lie outside of a lot, in metres. */
    private static double reach(Geometry building, Geometry lot) {
        return Stream.of(building.getCoordinates())
                .mapToDouble(corner -> building.getFactory().createPoint(corner).distance(lot))
                .max()
                .orElse(0);
    }

    private static String cause(PlanAsRead plan, LayerAsRead buildings) {
        boolean feet = plan.of(Role.LOT).stream()
                .anyMatch(lots -> !lots.system()
                                .linearUnitToMetre()
                                .equals(buildings.system().linearUnitToMetre())
                        && TwoKindsOfFeet.apart(plan.frame(), lots.system(), buildings.system())
                                .isPresent());
        return feet
                ? "is one of the two layers in the wrong foot, US survey or international"
                : "are the two layers shifted against each other (another foot, NAD 83 taken for WGS 84, lines traced from"
                        + " a photograph)";
    }
}
