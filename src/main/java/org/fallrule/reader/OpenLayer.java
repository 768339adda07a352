package org.fallrule.reader;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/**
 * A layer that has been read, and the system its coordinates are in.
 *
 * @param spec what it is for
 * @param raw what its file gives
 * @param system the system
 * @param units the units of bare numbers of which the layer itself says nothing, by the name of an attribute
 */
record OpenLayer(LayerSpec spec, RawLayer raw, CoordinateSystem system, Map<String, Unit> units) {

    /** Every layer that can be read; what the files say of themselves becomes problems, once a file. */
    static List<OpenLayer> all(LayerFiles files, SiteFile site, List<Fault> faults, List<Fault> problems) {
        LayerSystem systems = new LayerSystem(site.crs());
        Map<String, RawLayer> noted = new LinkedHashMap<>();
        List<OpenLayer> open = new ArrayList<>();
        for (LayerSpec spec : site.layers()) {
            if (GroundRasters.isOne(spec)) {
                continue;
            }
            try {
                RawLayer raw = files.layer(spec);
                open.add(new OpenLayer(spec, raw, systems.of(spec, raw), site.units()));
                noted.putIfAbsent(spec.source(), raw);
            } catch (UnusableInput e) {
                e.faults().stream().filter(fault -> !faults.contains(fault)).forEach(faults::add);
            }
        }
        noted.values().forEach(raw -> problems.addAll(raw.notes()));
        return open;
    }

    boolean is(Role role) {
        return spec.role() == role;
    }

    /** A longitude and latitude in the layer's own coordinates, as a desktop GIS shows them. */
    String shown(Coordinate lonLat) {
        Coordinate own = system.fromLonLat(lonLat).orElse(lonLat);
        return String.format(Locale.ROOT, system.isGeographic() ? "x %.7f, y %.7f" : "x %.2f, y %.2f", own.x, own.y);
    }

    /** The box of longitude and latitude that the features which belong to the layer lie in. */
    Envelope extent(List<Fault> faults) {
        Envelope extent = new Envelope();
        OutsideSystem outside = new OutsideSystem();
        for (RawFeature feature : raw.features()) {
            if (spec.holds(feature) == Truth.FALSE) {
                continue;
            }
            Place place = Place.of(spec.source()).feature(feature.label());
            feature.geometry()
                    .filter(geometry -> !geometry.isEmpty())
                    .ifPresent(geometry -> expand(extent, geometry, place, outside));
        }
        outside.tell(faults);
        return extent;
    }

    private void expand(Envelope extent, Geometry geometry, Place place, OutsideSystem outside) {
        try {
            // every vertex: the corners of a box in one system are not those of a box in another
            for (Coordinate vertex : geometry.getCoordinates()) {
                extent.expandToInclude(system.toLonLat(vertex, place));
            }
        } catch (UnusableInput e) {
            outside.add(e);
        }
    }
}
