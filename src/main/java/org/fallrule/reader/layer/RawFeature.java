package org.fallrule.reader.layer;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;

/**
 * One feature of a layer as the file gives it.
 *
 * @param label how to point at it in the file: {@code feature 14}, counted from 1
 * @param geometry its geometry in the layer's own coordinates, with Z where the file has it; empty for a null geometry
 * @param columns attribute values by column name in file order: {@link String}, {@link Double}, {@link Long},
 *     {@link Boolean} or {@link java.time.LocalDate}; a column without a value is left out
 */
public record RawFeature(String label, Optional<Geometry> geometry, Map<String, Object> columns) {

    public RawFeature {
        columns = Collections.unmodifiableMap(new LinkedHashMap<>(columns));
    }
}
