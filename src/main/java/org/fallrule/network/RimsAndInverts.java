package org.fallrule.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.fallrule.document.Fault;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Limit;
import org.fallrule.measure.Printed;
import org.fallrule.measure.Standing;
import org.fallrule.measure.Unit;
import org.fallrule.measure.Written;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;

/** Finds inverts that stand above the rim of their structure: no water can come in there, so a unit or a column is mixed up. */
final class RimsAndInverts {
    /** Metres; deeper than that below the rim, nothing has to be written out to be compared. */
    private static final double SURELY_BELOW = 0.1;

    private final List<Fault> problems = new ArrayList<>();

    private RimsAndInverts() {}

    static List<Fault> problems(PipeNetwork network) {
        RimsAndInverts found = new RimsAndInverts();
        network.junctions()
                .forEach(junction -> junction.structures()
                        .forEach(structure -> structure
                                .get(Attribute.RIM)
                                .ifPresent(rim -> found.look(network, junction, structure, rim))));
        return found.problems;
    }

    private void look(PipeNetwork network, Junction junction, Feature structure, Elevation rim) {
        Optional<Elevation> own = structure.get(Attribute.INVERT);
        own.ifPresent(invert -> hold(structure, "its invert", invert, rim, () -> "its rim"));
        Supplier<String> theRim = () -> "the rim of " + structure.spoken() + ",";
        for (PipeRun run : network.touching(junction)) {
            Feature pipe = run.pipe();
            if (run.up().number() == junction.number() && !run.invertUp().equals(own)) {
                run.invertUp().ifPresent(up -> hold(pipe, "its upper invert", up, rim, theRim));
            }
            if (run.down().number() == junction.number()) {
                run.invertDown().ifPresent(down -> hold(pipe, "its lower invert", down, rim, theRim));
            }
        }
    }

    private void hold(Feature at, String what, Elevation invert, Elevation rim, Supplier<String> theRim) {
        if (invert.metres() < rim.metres() - SURELY_BELOW) {
            return;
        }
        Written top = Written.of(rim.in(Unit.ELEVATION_FOOT), Unit.ELEVATION_FOOT);
        Limit limit = new Limit(Bound.AT_MOST, top);
        if (limit.standing(invert, 0) == Standing.FAILS) {
            String shownRim = Printed.of(rim, Unit.ELEVATION_FOOT);
            problems.add(new Fault(
                    at.origin(),
                    at.spoken() + ": " + what + ", " + Printed.beside(invert, limit) + ", lies above " + theRim.get()
                            + " " + shownRim + ": are units or columns mixed up?"));
        }
    }
}
