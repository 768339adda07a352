package org.fallrule.reader.shapefile;

import java.util.Optional;
import org.fallrule.reader.layer.Findings;

/** The {@code .prj} file: the layer's coordinate reference system as well-known text. */
final class ProjectionFile {
    private ProjectionFile() {}

    /** Its text; empty, with a note, when it is blank. */
    static Optional<String> text(ShownFile prj, Findings findings) {
        String text = prj.text();
        if (text.isEmpty()) {
            findings.note(
                    prj.place(),
                    "is blank, so the layer says nothing of its coordinates; write the WKT of their CRS into it");
            return Optional.empty();
        }
        return Optional.of(text);
    }
}
