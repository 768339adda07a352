package org.fallrule.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.StringJoiner;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Coordinate;

/** The kinds of file that made-up plans come in. */
enum MadeFormat {
    /** Longitude and latitude. */
    GEOJSON {
        @Override
        String layer(Path folder, MadePlace place, String name, List<MadeFeature> features) throws IOException {
            return geoJson(folder, place, name, features, false);
        }
    },
    /** Feet on the state's grid, as the {@code crs} member says. */
    GEOJSON_ON_GRID {
        @Override
        String layer(Path folder, MadePlace place, String name, List<MadeFeature> features) throws IOException {
            return geoJson(folder, place, name, features, true);
        }
    },
    /** Feet on the state's grid, with {@code .prj}, {@code .dbf}, {@code .shx} and {@code .cpg}. */
    SHAPEFILE {
        @Override
        String layer(Path folder, MadePlace place, String name, List<MadeFeature> features) throws IOException {
            MadeShapefile.write(folder, place, name, features);
            return name + ".shp";
        }
    },
    /** Feet on the state's grid, all layers in one file. */
    GEOPACKAGE {
        @Override
        String layer(Path folder, MadePlace place, String name, List<MadeFeature> features) throws IOException {
            MadeGeoPackage.add(folder.resolve("plan.gpkg"), place, name, features);
            return "{file: plan.gpkg, table: " + name + "}";
        }
    };

    /** Writes one layer and gives what {@code site.yaml} says of it. */
    abstract String layer(Path folder, MadePlace place, String name, List<MadeFeature> features) throws IOException;

    /** Writes a site whole into a new folder. */
    void site(Path folder, String title, MadePlace place, List<MadeFeature> features) throws IOException {
        Files.createDirectories(folder);
        StringBuilder yaml = new StringBuilder("""
                site: %s (invented)
                county: %s
                datum: NAVD88
                units: {elevation: ft, diameter: in, depth: in}
                survey: {date: 2026-05-04, source: total_station, horizontal_accuracy: 0.1 ft, vertical_accuracy: 0.05 ft}
                absent: [septic, well, easement, tree, water_body, flood_zone]
                layers:
                """.formatted(title, place.county()));
        Map<String, List<MadeFeature>> layers =
                features.stream().collect(Collectors.groupingBy(MadeFeature::layer, TreeMap::new, Collectors.toList()));
        for (Map.Entry<String, List<MadeFeature>> layer : layers.entrySet()) {
            String name = layer.getKey();
            String source = layer(folder, place, name, layer.getValue());
            yaml.append("  ").append(name).append(": ");
            yaml.append(
                    name.equals("spot") && !source.startsWith("{")
                            ? "{file: " + source + ", units: {elevation: ft}}"
                            : source);
            yaml.append('\n');
        }
        Files.writeString(folder.resolve("site.yaml"), yaml);
    }

    private static String geoJson(Path folder, MadePlace place, String name, List<MadeFeature> features, boolean onGrid)
            throws IOException {
        StringBuilder text = new StringBuilder("{\"type\": \"FeatureCollection\", ");
        if (onGrid) {
            text.append("\"crs\": {\"type\": \"name\", \"properties\": {\"name\": \"" + place.grid() + "\"}}, ");
        }
        text.append("\"features\": [\n");
        StringJoiner all = new StringJoiner(",\n");
        for (MadeFeature feature : features) {
            all.add(geoJson(feature, place, onGrid));
        }
        Files.writeString(folder.resolve(name + ".geojson"), text.append(all).append("\n]}\n"));
        return name + ".geojson";
    }

    private static String geoJson(MadeFeature feature, MadePlace place, boolean onGrid) {
        StringJoiner properties = new StringJoiner(", ");
        feature.properties()
                .forEach((key, value) ->
                        properties.add("\"" + key + "\": " + (value instanceof String ? "\"" + value + "\"" : value)));
        StringJoiner places = new StringJoiner(", ");
        for (int i = 0; i < feature.vertices(); i++) {
            Coordinate at = onGrid ? place.onGrid(feature, i) : place.lonLat(feature, i);
            String height = feature.z(i) == 0 ? "" : ", " + feature.z(i);
            places.add(String.format(Locale.ROOT, onGrid ? "[%.4f, %.4f%s]" : "[%.10f, %.10f%s]", at.x, at.y, height));
        }
        String geometry = switch (feature.kind()) {
            case POINT -> "\"Point\", \"coordinates\": " + places;
            case LINE -> "\"LineString\", \"coordinates\": [" + places + "]";
            case AREA -> "\"Polygon\", \"coordinates\": [[" + places + "]]";
        };
        return "{\"type\": \"Feature\", \"properties\": {" + properties + "}, \"geometry\": {\"type\": " + geometry
                + "}}";
    }
}
