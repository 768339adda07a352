package org.fallrule.network;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.fallrule.terrain.GroundSurface;
import org.locationtech.jts.geom.LineString;

/** A drain in which everything lies in plan as it did, at other heights or made another way: how it hangs together is known. */
@SuppressWarnings("ReferenceEquality") // geometries that compare equal may differ in height
final class LaidAnew {
    private final EndInverts inverts;
    private final IdentityHashMap<Feature, Feature> now = new IdentityHashMap<>();

    private LaidAnew(Optional<GroundSurface> ground) {
        this.inverts = new EndInverts(ground);
    }

    /** The drain of a changed plan; nothing where something of it lies elsewhere, is gone, or is new. */
    static Optional<PipeNetwork> of(PipeNetwork drain, Site before, Site after, Optional<GroundSurface> ground) {
        LaidAnew laid = new LaidAnew(ground);
        for (Role role : Role.ofDrain()) {
            if (!laid.liesAlike(before.features(role), after.features(role))) {
                return Optional.empty();
            }
        }
        List<Junction> junctions =
                drain.junctions().stream().map(laid::junction).toList();
        return Optional.of(drain.relaid(
                drain.runs().stream().map(run -> laid.run(run, junctions)).toList(), junctions));
    }

    private boolean liesAlike(List<Feature> before, List<Feature> after) {
        if (before.size() != after.size()) {
            return false;
        }
        for (int i = 0; i < before.size(); i++) {
            Feature was = before.get(i);
            Feature is = after.get(i);
            if (was != is) {
                if (!was.id().equals(is.id()) || !was.geometry().equalsExact(is.geometry())) {
                    return false;
                }
                now.put(was, is);
            }
        }
        return true;
    }

    private Feature now(Feature feature) {
        return now.getOrDefault(feature, feature);
    }

    private Junction junction(Junction was) {
        if (was.structures().stream().noneMatch(now::containsKey)) {
            return was;
        }
        return new Junction(
                was.number(),
                was.place(),
                was.structures().stream().map(this::now).toList());
    }

    private PipeRun run(PipeRun was, List<Junction> junctions) {
        Feature pipe = now(was.pipe());
        Junction up = junctions.get(was.up().number());
        Junction down = junctions.get(was.down().number());
        if (pipe == was.pipe() && up == was.up() && down == was.down()) {
            return was;
        }
        LineString axis = axis(was, pipe);
        return inverts.run(pipe, axis, up, down);
    }

    /** The pipe's line turned as it was. */
    private static LineString axis(PipeRun was, Feature pipe) {
        if (pipe.geometry() == was.pipe().geometry()) {
            return was.axis();
        }
        LineString line = (LineString) pipe.geometry();
        return was.axis() == was.pipe().geometry() ? line : line.reverse();
    }
}
