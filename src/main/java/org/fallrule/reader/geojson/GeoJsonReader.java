package org.fallrule.reader.geojson;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.fallrule.document.JsonStream;
import org.fallrule.document.JsonStream.Token;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.layer.RawFeature;
import org.fallrule.reader.layer.RawLayer;

/**
 * Reads a GeoJSON file (RFC 7946): a FeatureCollection, a Feature, a geometry, or several of them one after the other, line by
 * line or as a text sequence (RFC 8142). The file is read as a stream; only the features stay in memory.
 *
 * <p>Properties become columns: text as {@code String}, numbers without a fraction as {@code Long} and others as
 * {@code Double}, booleans as {@code Boolean}, objects and arrays as their JSON text; null is left out. A feature's {@code id}
 * becomes the column {@code id} unless a property has that name.
 */
public final class GeoJsonReader {

    private GeoJsonReader() {}

    /**
     * Reads a file.
     *
     * @param file the file
     * @param shownAs its path as the user knows it, for places in faults
     * @return the layer; its {@code crs} is empty when the file has no {@code crs} member, which by RFC 7946, section 4,
     *     means longitude and latitude on WGS 84, but often is only an omission
     * @throws UnusableInput when the file is not GeoJSON, with line and column
     */
    public static RawLayer read(Path file, String shownAs) {
        List<RawFeature> features = new ArrayList<>();
        return stream(file, shownAs, features::add).with(features);
    }

    /**
     * Reads a file as {@link #read} does, and keeps none of its features.
     *
     * @param features is handed each feature in file order
     * @return the layer without its features
     */
    public static RawLayer stream(Path file, String shownAs, Consumer<RawFeature> features) {
        LayerNotes notes = new LayerNotes();
        try (JsonStream json = JsonStream.open(file, shownAs)) {
            TextReader texts = new TextReader(json, notes, features);
            if (json.next() == Token.END) {
                throw new UnusableInput(
                        Place.of(shownAs), "the file is empty; wanted GeoJSON: {\"type\": \"FeatureCollection\", ...}");
            }
            while (json.token() != Token.END) {
                texts.read();
                json.next();
            }
            return new RawLayer(shownAs, texts.crs(), List.of(), notes.faults(), texts.columns());
        }
    }
}
