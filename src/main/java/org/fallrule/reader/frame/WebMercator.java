package org.fallrule.reader.frame;

import java.util.regex.Pattern;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;

/**
 * Web Mercator (EPSG:3857) takes WGS 84 latitudes as if the earth were a sphere, for which the first edition of well-known text
 * has no method. Programs write it as the ellipsoidal Mercator with a name or an extension beside it; read to the letter that
 * is 20 km off.
 */
final class WebMercator {
    static final int CODE = 3857;

    private static final Pattern MERCATOR =
            Pattern.compile("PROJECTION\\s*[\\[(]\\s*\"Mercator_", Pattern.CASE_INSENSITIVE);
    private static final Pattern NAME =
            Pattern.compile("PROJCS\\s*[\\[(]\\s*\"[^\"]*(pseudo|web|google)[^\"]*\"", Pattern.CASE_INSENSITIVE);
    private static final Pattern SPHERE = Pattern.compile("\\+a=6378137(\\.0*)? \\+b=6378137(\\.0*)? ");
    private static final Pattern EXTENSION =
            Pattern.compile("EXTENSION\\s*[\\[(]\\s*\"PROJ4\"", Pattern.CASE_INSENSITIVE);

    private WebMercator() {}

    /** Whether a text means Web Mercator, whatever method it names. */
    static boolean isMeant(String wkt) {
        return MERCATOR.matcher(wkt).find()
                && (NAME.matcher(wkt).find() || SPHERE.matcher(wkt).find());
    }

    /** Other extensions change a definition as well, in ways that are not read. */
    static void refuseOtherExtension(String wkt, Place where) {
        if (EXTENSION.matcher(wkt).find()) {
            throw new UnusableInput(
                    where,
                    "this well-known text has an EXTENSION of PROJ4, which is not read and may change its meaning; wanted the"
                            + " text without it, or a code such as EPSG:2264");
        }
    }
}
