package org.fallrule.reader;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.filter.Truth;
import org.fallrule.measure.Unit;
import org.fallrule.reader.frame.CoordinateSystem;
import org.fallrule.reader.layer.RawFeature;
import org.fallrule.reader.layer.RawLayer;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.Puntal;
import org.locationtech.jts.geom.util.GeometryTransformer;
import org.locationtech.jts.index.hprtree.HPRtree;
import org.locationtech.jts.operation.predicate.RectangleIntersects;

/**
 * One layer that sites share: its features packed, in a tree over their boxes in longitude and latitude (a Hilbert-packed R-tree).
 * Built once; then any thread may ask.
 */
final class SharedLayer {
    /**
     * What the box of a long feature may be off by, its corners alone having been placed; as a part of its greater side. A straight
     * line of a grid bows across, so that a long one has a box too narrow.
     */
    private static final double BEND = 0.001;

    private final LayerSpec spec;
    private final Map<String, Unit> units;
    private final RawLayer layer;
    private final CoordinateSystem system;
    private final PackedFeatures packed;
    private final HPRtree tree = new HPRtree();
    private final Envelope extent = new Envelope();
    private final List<Fault> notes = new ArrayList<>();

    private SharedLayer(SharedFile file, LayerSpec spec, Gathered all, RawLayer layer) {
        this.spec = spec;
        this.units = file.says().units();
        this.layer = layer;
        this.packed = all.packed;
        this.system = new LayerSystem(file.says().crs()).of(spec, layer.crs(), () -> all.extent);
        notes.addAll(layer.notes());
        place(all.features);
        if (all.withoutGeometry > 0) {
            notes.add(new Fault(
                    Place.of(spec.source()), all.withoutGeometry + " features have no geometry and are left out"));
        }
    }

    /**
     * Reads and indexes a layer.
     *
     * @throws UnusableInput when it cannot be used
     */
    static SharedLayer of(SharedFile file, LayerSpec spec) {
        Gathered all = new Gathered(spec);
        RawLayer layer = new LayerFiles(file.folder()).stream(spec, all::take);
        return new SharedLayer(file, spec.shownUp(), all, layer);
    }

    /** The features of a file as they come. */
    private static final class Gathered {
        private final LayerSpec spec;
        private final PackedFeatures packed = new PackedFeatures();
        private final List<byte[]> features = new ArrayList<>();
        private final Envelope extent = new Envelope();
        private int withoutGeometry;

        Gathered(LayerSpec spec) {
            this.spec = spec;
        }

        void take(RawFeature feature) {
            if (spec.holds(feature) == Truth.FALSE) {
                return;
            }
            Optional<Geometry> geometry = feature.geometry().filter(each -> !each.isEmpty());
            if (geometry.isEmpty()) {
                withoutGeometry++;
                return;
            }
            if (spec.role() == Role.UTILITY && geometry.get() instanceof Puntal) {
                throw new UnusableInput(
                        Place.of(spec.shownUp().source()).feature(feature.label()),
                        "is a point; a shared layer of utilities holds lines, since marks beyond a site's"
                                + " neighbourhood would be missing from theirs; join the marks, or leave points out with where:");
            }
            extent.expandToInclude(geometry.get().getEnvelopeInternal());
            features.add(packed.pack(feature, geometry.get()));
            if (packed.hasTooManyColumns()) {
                throw new UnusableInput(
                        Place.of(spec.shownUp().source()).feature(feature.label()),
                        "brings the layer to more than " + PackedFeatures.MOST_COLUMNS
                                + " different columns, which no layer needs; export it with the same columns throughout");
            }
        }
    }

    private void place(List<byte[]> features) {
        int unplaced = 0;
        Optional<Fault> first = Optional.empty();
        for (byte[] bytes : features) {
            RawFeature feature = packed.unpack(bytes);
            try {
                Envelope box = box(feature.geometry().orElseThrow());
                extent.expandToInclude(box);
                tree.insert(box, bytes);
            } catch (UnusableInput e) {
                unplaced++;
                first = first.or(() -> e.faults().stream().findFirst());
            }
        }
        tree.build();
        int left = unplaced;
        first.ifPresent(fault -> notes.add(new Fault(
                fault.where(), fault.says() + (left > 1 ? " (so are " + (left - 1) + " more)" : "") + "; left out")));
    }

    private Envelope box(Geometry geometry) {
        Place place = Place.of(spec.source());
        Envelope box = new Envelope();
        for (Coordinate corner : geometry.getEnvelope().getCoordinates()) {
            box.expandToInclude(system.toLonLat(corner, place));
        }
        box.expandBy(BEND * Math.max(box.getWidth(), box.getHeight()));
        return box;
    }

    Role role() {
        return spec.role();
    }

    String source() {
        return spec.source();
    }

    /** Whether the layer's features lie around a place, so that it speaks of it; else it may end before. */
    boolean reaches(Envelope lonLat) {
        return extent.intersects(lonLat);
    }

    /** The layer with those of its features alone that come into a box of longitude and latitude, in the order of the file. */
    OpenLayer within(Envelope lonLat) {
        List<byte[]> found = new ArrayList<>();
        tree.query(lonLat, item -> found.add((byte[]) item));
        Polygon box = (Polygon) new GeometryFactory().toGeometry(lonLat);
        List<RawFeature> features = found.stream()
                .sorted(Comparator.comparingInt(PackedFeatures::order))
                .map(packed::unpack)
                .filter(feature -> RectangleIntersects.intersects(box, inDegrees(feature)))
                .toList();
        RawLayer near = new RawLayer(spec.source(), layer.crs(), features, notes, layer.columns());
        return new OpenLayer(spec, near, system, units);
    }

    private Geometry inDegrees(RawFeature feature) {
        Place place = Place.of(spec.source()).feature(feature.label());
        return new GeometryTransformer() {
            @Override
            protected CoordinateSequence transformCoordinates(CoordinateSequence places, Geometry parent) {
                return createCoordinateSequence(Arrays.stream(places.toCoordinateArray())
                        .map(each -> system.toLonLat(each, place))
                        .toArray(Coordinate[]::new));
            }
        }.transform(feature.geometry().orElseThrow());
    }
}
