package org.fallrule.reader.layer;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fallrule.document.Fault;

/**
 * A layer as its file gives it.
 *
 * @param file the file's path as the user knows it
 * @param crs what the file says of its coordinate reference system: the text of its {@code .prj} (WKT), or a code such as
 *     {@code EPSG:2264} or {@code OGC:CRS84}; empty when it says nothing
 * @param features its features in file order, deleted ones left out
 * @param notes faults that do not stop the reading but that a person should know of
 * @param columns the names of its columns, those without any value too
 */
public record RawLayer(
        String file, Optional<String> crs, List<RawFeature> features, List<Fault> notes, Set<String> columns) {

    public RawLayer {
        features = List.copyOf(features);
        notes = List.copyOf(notes);
        Set<String> all = new LinkedHashSet<>(columns);
        features.forEach(feature -> all.addAll(feature.columns().keySet()));
        columns = Collections.unmodifiableSet(all);
    }

    /** The same layer with other features. */
    public RawLayer with(List<RawFeature> newFeatures) {
        return new RawLayer(file, crs, newFeatures, notes, columns);
    }

    /** A layer whose columns are those that its features have a value in. */
    public RawLayer(String file, Optional<String> crs, List<RawFeature> features, List<Fault> notes) {
        this(file, crs, features, notes, Set.of());
    }
}
