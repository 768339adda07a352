package org.fallrule.analysis;

import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.fallrule.terrain.GroundSurface;
import org.fallrule.terrain.flow.FilledGround;
import org.fallrule.terrain.flow.GroundGrid;
import org.locationtech.jts.geom.Envelope;

/**
 * The finished ground around the plan as a grid that water is traced over: sampled, and filled, when first asked for,
 * once for everything that asks. Nodes stand 0.25 m apart, or further where the plan is so large that there would be more than a
 * million of them. It reaches 30 m beyond the site's own lot and its drain, rounded up so that a drain that is changed a little
 * leaves it as it is, or to where the ground ends before that.
 */
public final class FlowSurface {
    private static final double SPACING = 0.25;
    private static final double MOST_NODES = 1e6;
    private static final double AROUND = 30;
    private static final double ROUNDED_TO = 5;

    private final Site site;
    private final Optional<GroundSurface> ground;
    private final Supplier<Optional<GroundGrid>> sampling;
    private Optional<GroundGrid> grid = Optional.empty();
    private boolean isSampled;
    private Optional<FilledGround> filled = Optional.empty();
    private boolean isFilled;

    FlowSurface(Site site, Optional<GroundSurface> ground) {
        this(site, ground, () -> ground.flatMap(surface -> sampled(site, surface)));
    }

    private FlowSurface(Site site, Optional<GroundSurface> ground, Supplier<Optional<GroundGrid>> sampling) {
        this.site = site;
        this.ground = ground;
        this.sampling = sampling;
    }

    /** This surface, or another one where a changed plan reaches farther or less far. */
    FlowSurface around(Site changed) {
        return reach(changed).equals(reach(site)) ? this : new FlowSurface(changed, ground);
    }

    /**
     * The surface of the same plan with other ground.
     *
     * @param where the other ground may differ; elsewhere it is the same
     */
    FlowSurface regraded(Site changed, Optional<GroundSurface> other, Envelope where) {
        boolean sameBox = reach(changed).equals(reach(site))
                && other.map(GroundSurface::extent).equals(ground.map(GroundSurface::extent));
        return sameBox
                ? new FlowSurface(
                        changed, other, () -> other.flatMap(over -> grid().map(nodes -> nodes.with(over, where))))
                : new FlowSurface(changed, other);
    }

    /** The heights; empty where there is no ground around the plan. */
    public synchronized Optional<GroundGrid> grid() {
        if (!isSampled) {
            grid = sampling.get();
            isSampled = true;
        }
        return grid;
    }

    /** The same with its hollows filled. */
    public synchronized Optional<FilledGround> filled() {
        if (!isFilled) {
            filled = grid().map(FilledGround::of);
            isFilled = true;
        }
        return filled;
    }

    private static Optional<GroundGrid> sampled(Site site, GroundSurface surface) {
        Envelope plan = reach(site);
        Envelope box = plan.isNull() ? surface.extent() : plan.intersection(surface.extent());
        return box.isNull()
                ? Optional.empty()
                : Optional.of(GroundGrid.of(surface, box, Math.max(SPACING, coarsest(box))));
    }

    private static Envelope reach(Site site) {
        Envelope plan = new Envelope();
        Stream.concat(
                        site.ownLot().stream(),
                        Stream.of(Role.PIPE, Role.INLET, Role.OUTFALL).flatMap(role -> site.features(role).stream()))
                .map(Feature::geometry)
                .forEach(geometry -> plan.expandToInclude(geometry.getEnvelopeInternal()));
        if (!plan.isNull()) {
            plan.expandBy(AROUND);
            return new Envelope(
                    down(plan.getMinX()), -down(-plan.getMaxX()), down(plan.getMinY()), -down(-plan.getMaxY()));
        }
        return plan;
    }

    private static double down(double metres) {
        return Math.floor(metres / ROUNDED_TO) * ROUNDED_TO;
    }

    /** The spacing at which there are as many nodes as there may be. */
    private static double coarsest(Envelope box) {
        return Math.max(Math.sqrt(box.getArea() / MOST_NODES), Math.max(box.getWidth(), box.getHeight()) / MOST_NODES);
    }
}
