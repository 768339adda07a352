package org.fallrule.report.map;

import java.util.Optional;
import java.util.Set;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Measured;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Limit;
import org.fallrule.network.OutsideDiameter;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/**
 * A finding about a distance in plan: the line from edge to edge that was measured, and the ground that is nearer to the other
 * feature than the limit allows.
 *
 * @param from the end at the subject's edge
 * @param to the end at the other feature's edge
 * @param limit the limit in metres
 * @param other the feature that the distance is kept from
 * @param otherRadius half the outside diameter in metres that was counted for the other feature
 */
record PlanLimit(Coordinate from, Coordinate to, double limit, Feature other, double otherRadius) {
    private static final Set<String> OF_PLAN_DISTANCE = Set.of("clearance", "separation", "footing_plane");

    /** The plan distance of a finding; nothing when it is about something else. */
    static Optional<PlanLimit> of(Finding finding) {
        Optional<Measured> measured = finding.observation().measured();
        Optional<Limit> limit = measured.flatMap(Measured::limit).filter(each -> each.bound() == Bound.AT_LEAST);
        Optional<Feature> other = finding.observation().other();
        boolean inPlan = OF_PLAN_DISTANCE.contains(finding.check())
                && measured.filter(m -> m.value().dimension() == Dimension.LENGTH)
                        .isPresent();
        return finding.observation()
                .where()
                .filter(where -> inPlan && where instanceof LineString line && line.getNumPoints() == 2)
                .flatMap(where -> limit.flatMap(asked -> other.map(feature -> between(
                        finding.observation().subject(),
                        feature,
                        where.getCoordinates(),
                        measured.orElseThrow().value().si(),
                        asked.value().quantity().si()))));
    }

    private static PlanLimit between(
            Optional<Feature> subject, Feature other, Coordinate[] axes, double gap, double limit) {
        double centres = axes[0].distance(axes[1]);
        // The rest of the way between the axes was counted to the other, also where a rule book took its size for it,
        // or to the subject, where its trench was measured.
        double ofSubject = isLine(other) ? subject.map(PlanLimit::radius).orElse(0.0) : Math.max(0, centres - gap);
        double ofOther = isLine(other) ? Math.max(0, centres - gap - ofSubject) : 0;
        if (ofSubject + ofOther >= centres) {
            return new PlanLimit(axes[0], axes[1], limit, other, ofOther);
        }
        return new PlanLimit(
                toward(axes[0], axes[1], ofSubject / centres),
                toward(axes[1], axes[0], ofOther / centres),
                limit,
                other,
                ofOther);
    }

    private static Coordinate toward(Coordinate start, Coordinate end, double share) {
        return new Coordinate(start.x + share * (end.x - start.x), start.y + share * (end.y - start.y));
    }

    private static boolean isLine(Feature feature) {
        return feature.role() == Role.PIPE || feature.role() == Role.UTILITY;
    }

    private static double radius(Feature feature) {
        return isLine(feature)
                ? OutsideDiameter.of(feature).map(OutsideDiameter::radius).orElse(0.0)
                : 0;
    }

    /** The distance between the two ends in metres. */
    double length() {
        return from.distance(to);
    }

    /** The ground nearer to the other feature's edge than the limit; a lot is measured to its line. */
    Geometry band() {
        BufferParameters round = new BufferParameters(16);
        if (other.role() == Role.LOT) {
            return BufferOp.bufferOp(other.geometry().getBoundary(), limit, round);
        }
        Geometry inside = BufferOp.bufferOp(other.geometry(), otherRadius, round);
        return BufferOp.bufferOp(other.geometry(), otherRadius + limit, round).difference(inside);
    }
}
