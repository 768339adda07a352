package org.fallrule.reader.frame;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.fallrule.document.Place;

/**
 * The definitions that nearly all plans come with, read without the library, which takes longer to make itself ready than a
 * whole plan takes to be checked: degrees, transverse Mercator and Lambert conformal conic on NAD83 and WGS 84, in the words that
 * programs commonly use. Whatever else stands in a definition leaves it to the library, and with it every fault.
 */
final class PlainDefinition {
    private final WktElement projected;
    private final PlainGeographic base;
    private final Map<String, Double> parameters = new HashMap<>();

    private PlainDefinition(WktElement projected, PlainGeographic base) {
        this.projected = projected;
        this.base = base;
    }

    /**
     * The system that a text defines; nothing where the library must read it.
     *
     * @param area the area it is meant for; when empty it is guessed from the projection's origin
     */
    static Optional<CoordinateSystem> read(
            String wkt, OptionalDouble heightUnit, Optional<AreaOfUse> area, Place where) {
        return WktElement.read(wkt, where).flatMap(root -> {
            if (root.keyword().equals("GEOGCS")) {
                return PlainGeographic.of(root)
                        .map(base -> new CoordinateSystem(
                                root.name(), OptionalDouble.empty(), heightUnit, AreaOfUse.WORLD, Unprojection.NONE));
            }
            return root.keyword().equals("PROJCS") ? projected(root, heightUnit, area) : Optional.empty();
        });
    }

    private static Optional<CoordinateSystem> projected(
            WktElement root, OptionalDouble heightUnit, Optional<AreaOfUse> area) {
        Optional<PlainGeographic> base = root.one("GEOGCS").flatMap(PlainGeographic::of);
        OptionalDouble unit = root.one("UNIT").map(each -> each.number(1)).orElse(OptionalDouble.empty());
        boolean plain = root.values().size() == 1
                && root.holdsOnly(List.of("GEOGCS", "PROJECTION", "PARAMETER", "UNIT", "AXIS"))
                && PlainGeographic.runEastAndNorth(root);
        if (!plain || base.isEmpty() || unit.isEmpty() || !(unit.getAsDouble() > 0)) {
            return Optional.empty();
        }
        PlainDefinition definition = new PlainDefinition(root, base.get());
        return definition
                .grid(unit.getAsDouble())
                .map(grid ->
                        new CoordinateSystem(root.name(), unit, heightUnit, area.orElseGet(definition::around), grid));
    }

    private Optional<Unprojection> grid(double unit) {
        for (WktElement parameter : projected.elements()) {
            if (parameter.keyword().equals("PARAMETER")) {
                OptionalDouble value = parameter.number(1);
                boolean once = value.isPresent() && parameters.put(parameter.plainName(), value.getAsDouble()) == null;
                if (!once) {
                    return Optional.empty();
                }
            }
        }
        String method = projected.one("PROJECTION").map(WktElement::plainName).orElse("");
        return switch (method) {
            case "transverse_mercator" -> transverse(unit);
            case "lambert_conformal_conic", "lambert_conformal_conic_2sp" -> lambert(unit);
            case "lambert_conformal_conic_1sp" -> lambertOfScale(unit);
            default -> Optional.empty();
        };
    }

    private boolean has(String... more) {
        Set<String> wanted =
                new HashSet<>(Set.of("false_easting", "false_northing", "central_meridian", "latitude_of_origin"));
        wanted.addAll(List.of(more));
        return parameters.keySet().equals(wanted)
                && Math.abs(value("latitude_of_origin")) < 89
                && Math.abs(value("central_meridian")) <= 180;
    }

    private double value(String name) {
        return parameters.getOrDefault(name, Double.NaN);
    }

    private double radians(String name) {
        return Math.toRadians(value(name));
    }

    private Optional<Unprojection> transverse(double unit) {
        double scale = value("scale_factor");
        if (!has("scale_factor") || !(scale > 0)) {
            return Optional.empty();
        }
        TransverseMercator projection = new TransverseMercator(base.spheroid());
        double origin = projection.forward(0, radians("latitude_of_origin"))[1] * scale / unit;
        return Optional.of(grid(projection, scale, unit, value("false_northing") - origin));
    }

    private Optional<Unprojection> lambert(double unit) {
        boolean scaled = parameters.getOrDefault("scale_factor", 1.0) != 1.0;
        parameters.remove("scale_factor");
        double one = value("standard_parallel_1");
        double other = value("standard_parallel_2");
        boolean conic = one * other > 0 && Math.max(Math.abs(one), Math.abs(other)) < 89;
        return has("standard_parallel_1", "standard_parallel_2") && conic && !scaled
                ? Optional.of(grid(
                        LambertConformalConic.ofParallels(
                                base.spheroid(),
                                Math.toRadians(one),
                                Math.toRadians(other),
                                radians("latitude_of_origin")),
                        1,
                        unit,
                        value("false_northing")))
                : Optional.empty();
    }

    private Optional<Unprojection> lambertOfScale(double unit) {
        double scale = value("scale_factor");
        return has("scale_factor") && scale > 0 && Math.abs(value("latitude_of_origin")) > 1
                ? Optional.of(grid(
                        LambertConformalConic.ofScale(base.spheroid(), radians("latitude_of_origin"), scale),
                        1,
                        unit,
                        value("false_northing")))
                : Optional.empty();
    }

    private Unprojection grid(Projection projection, double scale, double unit, double north) {
        return new PlaneGrid(projection, value("central_meridian"), scale, unit, value("false_easting"), north);
    }

    private AreaOfUse around() {
        boolean transverse = projected
                .one("PROJECTION")
                .map(WktElement::plainName)
                .orElse("")
                .startsWith("transverse");
        return ProjectionOrigin.around(transverse, value("central_meridian"), value("latitude_of_origin"));
    }
}
