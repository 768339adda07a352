package org.fallrule.reader.trap;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.measure.Unit;
import org.fallrule.reader.frame.CoordinateSystem;
import org.fallrule.reader.frame.LocalFrame;
import org.fallrule.reader.trap.PlanAsRead.LayerAsRead;
import org.locationtech.jts.geom.Coordinate;

/**
 * Layers of one zone, one in US survey feet, the other in international feet. The two differ by two parts in a million (a survey
 * foot is 1200/3937 m, an international foot 0.3048 m; NIST, Federal Register 85 FR 62698), which puts the same
 * state-plane coordinates some feet apart: usually one of the two layers was given the wrong foot.
 */
final class TwoKindsOfFeet implements Trap {

    /** Two zones lie miles apart for the same numbers; two feet of one zone never more than this, in metres. */
    private static final double ONE_ZONE = 30;

    @Override
    public List<Fault> problems(PlanAsRead plan) {
        List<Fault> problems = new ArrayList<>();
        Set<String> told = new HashSet<>();
        for (LayerAsRead survey : plan.layers()) {
            for (LayerAsRead international : plan.layers()) {
                if (isIn(survey.system(), Unit.SURVEY_FOOT.toSi())
                        && isIn(international.system(), Unit.FOOT.toSi())
                        && told.add(
                                survey.system().name() + international.system().name())) {
                    apart(plan.frame(), survey.system(), international.system())
                            .ifPresent(metres -> problems.add(problem(survey, international, metres)));
                }
            }
        }
        return problems;
    }

    private static boolean isIn(CoordinateSystem system, double foot) {
        return system.linearUnitToMetre().isPresent()
                && Math.abs(system.linearUnitToMetre().getAsDouble() / foot - 1) < 1e-7;
    }

    /** How far apart the same numbers lie in the two systems, in metres; nothing when these are different zones. */
    static Optional<Double> apart(LocalFrame frame, CoordinateSystem one, CoordinateSystem other) {
        Coordinate lonLat = frame.toLonLat(new Coordinate(0, 0));
        try {
            return one.fromLonLat(lonLat)
                    .map(numbers -> frame.toLocal(other.toLonLat(numbers, Place.of("plan"))))
                    .map(local -> Math.hypot(local.x, local.y))
                    .filter(metres -> metres < ONE_ZONE);
        } catch (UnusableInput elsewhere) {
            return Optional.empty();
        }
    }

    private static Fault problem(LayerAsRead survey, LayerAsRead international, double metres) {
        return new Fault(
                Place.of(international.source()),
                String.format(
                        Locale.ROOT,
                        "is in international feet, %s in US survey feet of the same zone; the same numbers lie %.1f ft apart"
                                + " in the two: ask each office which foot it works in, and mend the .prj that is wrong",
                        survey.source(),
                        metres / Unit.FOOT.toSi()));
    }
}
