package org.fallrule.reader.frame;

import java.text.ParseException;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.geotools.api.referencing.crs.CoordinateReferenceSystem;
import org.geotools.referencing.factory.ReferencingObjectFactory;
import org.geotools.referencing.operation.DefaultMathTransformFactory;
import org.geotools.referencing.wkt.Parser;
import org.geotools.referencing.wkt.Symbols;

/**
 * Parses well-known text with factories made directly: looking them up through the library's registries would scan all its
 * services and write to the user's preferences.
 */
final class WktParsing {
    /** Held, as a logger that nobody holds loses its level. */
    private static final Logger LIBRARY = Logger.getLogger("org.geotools");

    static {
        quiet();
    }

    private WktParsing() {}

    /** The library's own remarks would stand among the report's lines; what matters of them comes as exceptions. */
    static void quiet() {
        LIBRARY.setLevel(Level.OFF);
    }

    static CoordinateReferenceSystem parse(String wkt, Place where) {
        ReferencingObjectFactory objects = new ReferencingObjectFactory();
        Parser parser = new Parser(Symbols.DEFAULT, objects, objects, objects, new DefaultMathTransformFactory());
        try {
            return parser.parseCoordinateReferenceSystem(wkt);
        } catch (ParseException | RuntimeException e) {
            // The library answers some malformed texts with unchecked exceptions of many kinds.
            throw new UnusableInput(
                    where,
                    "this well-known text is not understood: " + said(e)
                            + "; wanted a .prj as GIS programs write it (WKT1), or a code such as EPSG:2264");
        }
    }

    private static String said(Exception e) {
        return WktText.shortened(String.valueOf(e.getMessage()));
    }
}
