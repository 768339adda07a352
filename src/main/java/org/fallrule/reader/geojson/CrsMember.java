package org.fallrule.reader.geojson;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fallrule.document.JsonStream;
import org.fallrule.document.JsonStream.Token;
import org.jspecify.annotations.Nullable;

/**
 * The {@code crs} member of the GeoJSON 2008 specification (section 3), which RFC 7946 dropped but many programs still write.
 * Only the named form is read; a link would have to be fetched.
 */
final class CrsMember {
    private static final Pattern EPSG = Pattern.compile(
            "(?:EPSG:{1,2}|urn:(?:x-)?ogc:def:crs:EPSG:[0-9.]*:|https?://www\\.opengis\\.net/def/crs/EPSG/[0-9.]+/)([0-9]{1,6})",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern CRS84 = Pattern.compile(
            "(?:OGC:|urn:(?:x-)?ogc:def:crs:OGC:[0-9.]*:|https?://www\\.opengis\\.net/def/crs/OGC/[0-9.]+/)CRS84h?",
            Pattern.CASE_INSENSITIVE);

    private final JsonStream json;
    private @Nullable String type;
    private @Nullable String name;

    private CrsMember(JsonStream json) {
        this.json = json;
    }

    /** The code in the member at the cursor, such as {@code EPSG:2264} or {@code OGC:CRS84}; empty for null. */
    static Optional<String> read(JsonStream json) {
        if (json.token() == Token.NULL) {
            return Optional.empty();
        }
        if (json.token() != Token.OBJECT_START) {
            throw json.fault("\"crs\" is " + json.found() + "; wanted an object with \"type\": \"name\"");
        }
        CrsMember member = new CrsMember(json);
        member.members();
        return Optional.of(member.code());
    }

    private void members() {
        while (json.next() == Token.NAME) {
            String member = MemberName.once(json);
            json.next();
            switch (member) {
                case "type" -> type = MemberName.text(json, "crs type");
                case "properties" -> properties();
                default -> json.skip();
            }
        }
    }

    private void properties() {
        if (json.token() != Token.OBJECT_START) {
            throw json.fault("the crs properties are " + json.found() + "; wanted an object with a \"name\"");
        }
        while (json.next() == Token.NAME) {
            String member = MemberName.once(json);
            json.next();
            if (member.equals("name")) {
                name = MemberName.text(json, "crs name");
            } else {
                json.skip();
            }
        }
    }

    private String code() {
        if (type == null || !type.equals("name") || name == null) {
            throw json.fault("this crs is of the form \"" + (type == null ? "" : type)
                    + "\", which is not read; wanted {\"type\": \"name\", \"properties\": {\"name\": \"EPSG:2264\"}}");
        }
        Matcher epsg = EPSG.matcher(name.trim());
        if (epsg.matches()) {
            return "EPSG:" + epsg.group(1);
        }
        if (CRS84.matcher(name.trim()).matches()) {
            return "OGC:CRS84";
        }
        throw json.fault("the crs name \"" + name
                + "\" is not understood; wanted a code such as EPSG:2264 or urn:ogc:def:crs:EPSG::2264");
    }
}
