package org.fallrule.remedy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.Unit;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryCollection;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/**
 * The features of a layer as GeoJSON (RFC 7946): longitude and latitude to a ten-thousandth of a millimetre, heights in the
 * plan's unit, every quantity a text with its unit.
 */
final class LayerTree {
    private static final int DECIMALS_OF_DEGREES = 12;
    private static final int DECIMALS = 9;

    /** What the trade gives in inches. */
    private static final Set<Attribute<?>> SMALL = Set.of(
            Attribute.DIAMETER,
            Attribute.OUTSIDE_DIAMETER,
            Attribute.SUMP,
            Attribute.GRATE_OPENING,
            Attribute.GRATE_LENGTH,
            Attribute.GRATE_WIDTH,
            Attribute.BOX_LENGTH,
            Attribute.BOX_WIDTH,
            Attribute.STONE_SIZE,
            Attribute.DEPTH,
            Attribute.TRUNK_DIAMETER);

    private final Site site;

    LayerTree(Site site) {
        this.site = site;
    }

    Map<String, Object> of(Role role) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("type", "FeatureCollection");
        tree.put("features", site.drawn(role).stream().map(this::feature).toList());
        return tree;
    }

    private Map<String, Object> feature(Feature feature) {
        Map<String, Object> properties = new LinkedHashMap<>();
        properties.put(Attribute.ID.name(), feature.id());
        Attribute.of(feature.role()).stream()
                .filter(attribute -> attribute != Attribute.ID)
                .forEach(attribute -> feature.get(attribute)
                        .ifPresent(value -> properties.put(attribute.name(), written(attribute, value))));
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("type", "Feature");
        tree.put("properties", properties);
        tree.put("geometry", geometry(feature.geometry()));
        return tree;
    }

    private Object written(Attribute<?> attribute, Object value) {
        if (value instanceof Quantity quantity) {
            Unit unit = unit(attribute, quantity.dimension());
            return (number(quantity.in(unit), DECIMALS).toPlainString() + " " + unit.symbol()).strip();
        }
        return value;
    }

    private Unit unit(Attribute<?> attribute, Dimension dimension) {
        return switch (dimension) {
            case LENGTH ->
                site.metric()
                        ? SMALL.contains(attribute) ? Unit.MILLIMETRE : Unit.METRE
                        : SMALL.contains(attribute) ? Unit.INCH : Unit.FOOT;
            case ELEVATION -> heights();
            case AREA -> Unit.SQUARE_INCH;
            default -> Unit.usual(dimension);
        };
    }

    private Unit heights() {
        return site.metric() ? Unit.ELEVATION_METRE : Unit.ELEVATION_FOOT;
    }

    private Map<String, Object> geometry(Geometry geometry) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("type", geometry.getGeometryType());
        if (geometry instanceof GeometryCollection all && !isMulti(geometry)) {
            tree.put("geometries", parts(all).stream().map(this::geometry).toList());
        } else {
            tree.put("coordinates", coordinates(geometry));
        }
        return tree;
    }

    private static boolean isMulti(Geometry geometry) {
        return geometry.getGeometryType().startsWith("Multi");
    }

    private static List<Geometry> parts(GeometryCollection all) {
        List<Geometry> parts = new ArrayList<>();
        for (int i = 0; i < all.getNumGeometries(); i++) {
            parts.add(all.getGeometryN(i));
        }
        return parts;
    }

    private Object coordinates(Geometry geometry) {
        if (geometry instanceof Point point) {
            return position(point.getCoordinate());
        }
        if (geometry instanceof LineString line) {
            return line(line);
        }
        if (geometry instanceof Polygon polygon) {
            List<Object> rings = new ArrayList<>(List.of(line(polygon.getExteriorRing())));
            for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
                rings.add(line(polygon.getInteriorRingN(i)));
            }
            return rings;
        }
        return parts((GeometryCollection) geometry).stream()
                .map(this::coordinates)
                .toList();
    }

    private List<Object> line(LineString line) {
        List<Object> positions = new ArrayList<>();
        for (Coordinate vertex : line.getCoordinates()) {
            positions.add(position(vertex));
        }
        return positions;
    }

    private List<Object> position(Coordinate local) {
        Coordinate place = site.frame().toLonLat(local);
        List<Object> position =
                new ArrayList<>(List.of(number(place.x, DECIMALS_OF_DEGREES), number(place.y, DECIMALS_OF_DEGREES)));
        if (Double.isFinite(local.getZ())) {
            position.add(number(local.getZ() / heights().toSi(), DECIMALS));
        }
        return position;
    }

    private static BigDecimal number(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        BigDecimal trimmed = rounded.stripTrailingZeros();
        return trimmed.scale() < 0 ? trimmed.setScale(0) : trimmed;
    }
}
