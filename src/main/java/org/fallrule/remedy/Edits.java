package org.fallrule.remedy;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.network.Junction;
import org.fallrule.network.PipeNetwork;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Layer;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;

/** Changes to a plan's drain, gathered and then made in one; the plan itself stays as it is. */
public final class Edits {
    static final GeometryFactory GEOMETRY = new GeometryFactory();

    private final Site site;
    private final PipeNetwork network;
    private final IdentityHashMap<Feature, Feature> changed = new IdentityHashMap<>();
    private final List<Feature> added = new ArrayList<>();

    /** @param network the drain of that plan */
    public Edits(Site site, PipeNetwork network) {
        this.site = site;
        this.network = network;
    }

    private Feature now(Feature feature) {
        return changed.getOrDefault(feature, feature);
    }

    private void put(Feature feature, Feature as) {
        changed.put(feature, as);
    }

    public <T> Edits set(Feature feature, Attribute<T> attribute, T value) {
        Feature now = now(feature);
        put(feature, now.with(now.attributes().with(attribute, value)));
        return this;
    }

    /** Takes back what the plan says of an attribute. */
    public Edits clear(Feature feature, Attribute<?> attribute) {
        Feature now = now(feature);
        put(feature, now.with(now.attributes().without(each -> each.equals(attribute))));
        return this;
    }

    public Edits add(Feature feature) {
        added.add(feature);
        return this;
    }

    /** Gives a pipe's ends these inverts; what stands there and takes its invert from the pipe goes with it. */
    public Edits level(PipeRun run, Elevation up, Elevation down) {
        Elevation wasUp = run.invertUp().orElse(up);
        Elevation wasDown = run.invertDown().orElse(down);
        set(run.pipe(), Attribute.INVERT_UP, up);
        set(run.pipe(), Attribute.INVERT_DOWN, down);
        clear(run.pipe(), Attribute.DEPTH_UP);
        clear(run.pipe(), Attribute.DEPTH_DOWN);
        axis(
                run,
                new Raised(
                                axis(run),
                                up.above(wasUp).metres(),
                                down.above(wasDown).metres())
                        .line());
        if (network.isTaken(run)) {
            follow(run.up(), Role.INLET, up);
        }
        follow(run.down(), Role.OUTFALL, down);
        return this;
    }

    private void follow(Junction junction, Role role, Elevation invert) {
        junction.structure(role)
                .filter(structure -> structure.get(Attribute.INVERT).isPresent())
                .ifPresent(structure -> set(structure, Attribute.INVERT, invert));
    }

    /** Raises a pipe's ends by so much, or lowers them where that is negative; nothing where an invert is not known. */
    public Edits raise(PipeRun run, Length up, Length down) {
        Optional<Elevation> from = run.invertUp().map(invert -> invert.plus(up));
        Optional<Elevation> to = run.invertDown().map(invert -> invert.plus(down));
        from.ifPresent(high -> to.ifPresent(low -> level(run, high, low)));
        return this;
    }

    /** A pipe's line as it is by now, in the direction of flow. */
    private LineString axis(PipeRun run) {
        LineString line = (LineString) now(run.pipe()).geometry();
        return isReversed(run) ? line.reverse() : line;
    }

    private static boolean isReversed(PipeRun run) {
        return !run.pipe().geometry().getCoordinate().equals2D(run.axis().getCoordinateN(0));
    }

    /** Moves a junction: the structures on it and the ends of its pipes. */
    public Edits move(Junction junction, double east, double north) {
        junction.structures().forEach(structure -> {
            Coordinate place = now(structure).geometry().getCoordinate();
            move(structure, new Coordinate(place.x + east, place.y + north));
        });
        network.runs().forEach(run -> {
            boolean up = run.up().number() == junction.number();
            boolean down = run.down().number() == junction.number();
            if (up || down) {
                Coordinate[] places = axis(run).copy().getCoordinates();
                int end = up ? 0 : places.length - 1;
                places[end] = new Coordinate(places[end].x + east, places[end].y + north, places[end].getZ());
                axis(run, GEOMETRY.createLineString(places));
            }
        });
        return this;
    }

    /** Draws a pipe along another line, given in the direction of flow. */
    public Edits axis(PipeRun run, LineString axis) {
        boolean reversed = isReversed(run);
        Feature now = now(run.pipe());
        put(
                run.pipe(),
                new Feature(now.role(), now.id(), reversed ? axis.reverse() : axis, now.attributes(), now.origin()));
        return this;
    }

    /** Puts a structure somewhere else. */
    public Edits move(Feature structure, Coordinate to) {
        Feature now = now(structure);
        Coordinate was = now.geometry().getCoordinate();
        put(
                structure,
                new Feature(
                        now.role(),
                        now.id(),
                        GEOMETRY.createPoint(new Coordinate(to.x, to.y, was.getZ())),
                        now.attributes(),
                        now.origin()));
        return this;
    }

    /** The plan with all of it. */
    public Site site() {
        Map<Role, Layer> layers = new EnumMap<>(Role.class);
        layers.putAll(site.layers());
        for (Role role : Role.ofDrain()) {
            List<Feature> features =
                    new ArrayList<>(site.features(role).stream().map(this::now).toList());
            added.stream().filter(feature -> feature.role() == role).forEach(features::add);
            if (site.layer(role) instanceof Layer.Supplied supplied) {
                layers.put(role, new Layer.Supplied(features, supplied.abandoned(), supplied.files()));
            } else if (!features.isEmpty()) {
                layers.put(role, new Layer.Supplied(features, List.of()));
            }
        }
        return site.with(layers);
    }
}
