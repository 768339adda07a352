package org.fallrule.reader;

import java.util.Optional;
import java.util.function.Supplier;
import org.fallrule.document.Node;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.frame.CoordinateSystem;
import org.fallrule.reader.layer.RawFeature;
import org.fallrule.reader.layer.RawLayer;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/**
 * Which coordinate reference system a layer is in: what its file says; else what site.yaml says of the layer; else, for GeoJSON
 * whose coordinates can be degrees, longitude and latitude (RFC 7946, section 4); else what site.yaml says of the whole plan.
 */
final class LayerSystem {
    private static final Envelope DEGREES = new Envelope(-180, 180, -90, 90);

    private final Optional<Node.Scalar> siteCrs;

    LayerSystem(Optional<Node.Scalar> siteCrs) {
        this.siteCrs = siteCrs;
    }

    CoordinateSystem of(LayerSpec spec, RawLayer layer) {
        return of(spec, layer.crs(), () -> extent(layer));
    }

    /**
     * The system of a layer.
     *
     * @param said what its file says
     * @param extent the box that its coordinates lie in
     */
    CoordinateSystem of(LayerSpec spec, Optional<String> said, Supplier<Envelope> extent) {
        if (said.isPresent()) {
            return CoordinateSystem.of(said.get(), Place.of(spec.source()));
        }
        if (spec.crs().isPresent()) {
            return of(spec.crs().get());
        }
        Optional<LayerFormat> format = LayerFormat.of(spec.file());
        boolean isGeoJson = format.equals(Optional.of(LayerFormat.GEOJSON));
        if (isGeoJson && (siteCrs.isEmpty() || DEGREES.contains(extent.get()))) {
            return CoordinateSystem.of("OGC:CRS84", spec.place());
        }
        return of(
                siteCrs.orElseThrow(
                        () -> new UnusableInput(
                                Place.of(spec.source()),
                                format.equals(Optional.of(LayerFormat.SHAPEFILE))
                                                || format.equals(Optional.of(LayerFormat.ZIPPED_SHAPEFILE))
                                        ? "says nothing of its coordinate reference system (no .prj beside it); supply the .prj, or name"
                                                + " it in site.yaml, such as crs: EPSG:2264"
                                        : "says nothing of its coordinate reference system; name it in site.yaml, such as crs: EPSG:2264")));
    }

    /** Whether a layer's file tells its system, by its own words or as degrees in GeoJSON. */
    static boolean isTold(String file, Optional<String> said, Envelope extent) {
        boolean isGeoJson = LayerFormat.of(file).equals(Optional.of(LayerFormat.GEOJSON));
        return said.isPresent() || (isGeoJson && DEGREES.contains(extent));
    }

    /** The system that site.yaml names. */
    static CoordinateSystem of(Node.Scalar named) {
        return CoordinateSystem.of(named.text(), named.place().field("crs"));
    }

    private static Envelope extent(RawLayer layer) {
        Envelope extent = new Envelope();
        for (RawFeature feature : layer.features()) {
            feature.geometry().ifPresent(geometry -> {
                for (Coordinate place : geometry.getCoordinates()) {
                    extent.expandToInclude(place);
                }
            });
        }
        return extent;
    }
}
