package org.fallrule.reader;

import java.util.List;
import java.util.Optional;
import org.fallrule.measure.Dimension;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.GeometryEditor;

/** Features without their elevations, in attributes and Z; depths stay. */
final class WithoutHeights {
    private WithoutHeights() {}

    static boolean isNeededFor(List<Feature> features) {
        return features.stream()
                .anyMatch(feature -> feature.attributes().asMap().keySet().stream()
                                .anyMatch(WithoutHeights::isElevation)
                        || Double.isFinite(feature.geometry().getCoordinate().getZ()));
    }

    static Feature of(Feature feature) {
        return new Feature(
                feature.role(),
                feature.id(),
                flat(feature.geometry()),
                feature.attributes().without(WithoutHeights::isElevation),
                feature.origin());
    }

    static boolean isElevation(Attribute<?> attribute) {
        return attribute.dimension().equals(Optional.of(Dimension.ELEVATION));
    }

    /** A copy without Z. */
    static Geometry flat(Geometry geometry) {
        return new GeometryEditor(geometry.getFactory()).edit(geometry, new GeometryEditor.CoordinateOperation() {
            @Override
            public Coordinate[] edit(Coordinate[] places, Geometry part) {
                Coordinate[] flat = new Coordinate[places.length];
                for (int i = 0; i < places.length; i++) {
                    flat[i] = new Coordinate(places[i].x, places[i].y);
                }
                return flat;
            }
        });
    }
}
