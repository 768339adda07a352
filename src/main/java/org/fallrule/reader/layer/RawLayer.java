package org.fallrule.reader.layer;

import java.util.List;
import java.util.Optional;
import org.fallrule.document.Fault;

/**
 * A layer as its file gives it.
 *
 * @param file the file's path as the user knows it
 * @param crs what the file says of its coordinate reference system: the text of its {@code .prj} (WKT), or a code such as
 *     {@code EPSG:2264} or {@code OGC:CRS84}; empty when it says nothing
 * @param features its features in file order, deleted ones left out
 * @param notes faults that do not stop the reading but that a person should know of
 */
public record RawLayer(String file, Optional<String> crs, List<RawFeature> features, List<Fault> notes) {

    public RawLayer {
        features = List.copyOf(features);
        notes = List.copyOf(notes);
    }
}
