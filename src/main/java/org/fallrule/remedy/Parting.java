package org.fallrule.remedy;

import java.util.function.UnaryOperator;
import org.fallrule.document.Place;
import org.fallrule.measure.Elevation;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Attribute;
import org.fallrule.site.Attributes;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.linearref.LengthIndexedLine;

/**
 * Parts a pipe, both of whose inverts are known, in two at a station. The upper part keeps the pipe's id, the lower one bears it
 * with a number, so that both count as the pipe.
 *
 * @param at the plan and the finding
 * @param run the pipe
 * @param station metres from its upper end; more than none and less than its length
 */
record Parting(Situation at, PipeRun run, double station) {

    /** The invert at the station as the pipe lies. */
    Elevation invert() {
        double up = run.invertUp().orElseThrow().metres();
        double down = run.invertDown().orElseThrow().metres();
        return new Elevation(up + (down - up) * station / run.length().metres());
    }

    /**
     * The plan with both parts.
     *
     * @param there the invert at the station
     * @param lower what the lower part says beside its inverts
     */
    Edits made(Elevation there, UnaryOperator<Attributes> lower) {
        Elevation up = run.invertUp().orElseThrow();
        Elevation down = run.invertDown().orElseThrow();
        Edits edits = at.edits();
        edits.level(run, up, there);
        edits.axis(run, part(0, station, up, there));
        edits.add(lower(part(station, run.length().metres(), there, down), lower, there, down));
        return edits;
    }

    private LineString part(double from, double to, Elevation up, Elevation down) {
        LineString part = (LineString) new LengthIndexedLine(run.axis()).extractLine(from, to);
        return Straight.asDrawn(run, part, up, down);
    }

    private Feature lower(LineString line, UnaryOperator<Attributes> lower, Elevation up, Elevation down) {
        Feature pipe = run.pipe();
        long parts = at.analysis().site().features(Role.PIPE).stream()
                .filter(each -> each.id().startsWith(pipe.id() + Subject.PART))
                .count();
        String id = pipe.id() + Subject.PART + (parts + 2);
        Attributes kept = pipe.attributes()
                .without(attribute -> attribute == Attribute.DEPTH_UP || attribute == Attribute.DEPTH_DOWN);
        return new Feature(
                pipe.role(),
                id,
                line,
                lower.apply(kept)
                        .with(Attribute.ID, id)
                        .with(Attribute.INVERT_UP, up)
                        .with(Attribute.INVERT_DOWN, down),
                Place.of(pipe.origin().file()).feature(id));
    }
}
