package org.fallrule.reader.geojson;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.fallrule.document.JsonStream;
import org.fallrule.document.JsonStream.Token;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.layer.RawFeature;

/**
 * Reads one GeoJSON text after the other and hands on their features as they come. A text is a FeatureCollection, a Feature or a geometry,
 * which is only known once its {@code type} has come by; the members of all three are gathered until then.
 */
final class TextReader {
    private final JsonStream json;
    private final LayerNotes notes;
    private final GeometryReader geometryReader;
    private final FeatureReader featureReader;
    private final Consumer<RawFeature> features;
    private long count;
    private Optional<String> crs = Optional.empty();

    TextReader(JsonStream json, LayerNotes notes, Consumer<RawFeature> features) {
        this.json = json;
        this.notes = notes;
        this.features = features;
        this.geometryReader = new GeometryReader(json, notes);
        this.featureReader = new FeatureReader(json, notes, geometryReader);
    }

    /** The names of all properties. */
    Set<String> columns() {
        return featureReader.columns();
    }

    /** The code that the texts name; empty when none does. */
    Optional<String> crs() {
        return crs;
    }

    /** Reads the text whose first token the cursor is on. */
    void read() {
        if (json.token() != Token.OBJECT_START) {
            throw json.fault(
                    "found " + json.found() + "; wanted a GeoJSON object: {\"type\": \"FeatureCollection\", ...}");
        }
        Place start = json.here();
        GeometryMembers geometry = new GeometryMembers(start);
        FeatureMembers feature = new FeatureMembers(start);
        boolean collection = false;
        while (json.next() == Token.NAME) {
            String name = MemberName.once(json);
            json.next();
            switch (name) {
                case "features" -> {
                    readFeatures();
                    collection = true;
                }
                case "crs" -> readCrs();
                default -> takeOrSkip(name, geometry, feature);
            }
        }
        finish(start, collection, geometry, feature);
    }

    private void takeOrSkip(String name, GeometryMembers geometry, FeatureMembers feature) {
        if (!geometryReader.take(name, geometry) && !featureReader.take(name, feature)) {
            json.skip();
        }
    }

    private void finish(Place start, boolean collection, GeometryMembers geometry, FeatureMembers feature) {
        String type = geometry.typeName();
        if (type.equals("FeatureCollection")) {
            require(collection, start, "this FeatureCollection has no \"features\" member");
            require(!geometry.hasCoordinates(), start, "this FeatureCollection has coordinates of its own");
            return;
        }
        require(!collection, geometry.typeWhere(), "an object with \"features\" is a FeatureCollection, not a " + type);
        if (type.equals(FeatureReader.TYPE)) {
            require(!geometry.hasCoordinates(), start, "this Feature has coordinates outside its \"geometry\"");
            features.accept(feature.feature(nextLabel(), notes));
        } else {
            require(GeometryType.isGeometry(type), geometry.typeWhere(), notGeoJson(type));
            require(
                    !feature.any(),
                    start,
                    "this " + type + " has members of a feature; put it in a Feature's \"geometry\"");
            features.accept(new RawFeature(nextLabel(), Optional.of(geometry.geometry()), Map.of()));
        }
    }

    private void readFeatures() {
        if (json.token() != Token.ARRAY_START) {
            throw json.fault("\"features\" is " + json.found() + "; wanted an array of features");
        }
        while (json.next() != Token.ARRAY_END) {
            features.accept(featureReader.read(nextLabel()));
        }
    }

    private void readCrs() {
        Optional<String> named = CrsMember.read(json);
        if (crs.isPresent() && named.isPresent() && !crs.equals(named)) {
            throw json.fault("this part of the file is in " + named.get() + ", one before it in " + crs.get()
                    + "; wanted one coordinate reference system per layer");
        }
        crs = crs.or(() -> named);
    }

    private String nextLabel() {
        count++;
        return "feature " + count;
    }

    private static String notGeoJson(String type) {
        return "the type \"" + type + "\" is not GeoJSON; wanted FeatureCollection, Feature or a geometry type";
    }

    private static void require(boolean good, Place where, String says) {
        if (!good) {
            throw new UnusableInput(where, says);
        }
    }
}
