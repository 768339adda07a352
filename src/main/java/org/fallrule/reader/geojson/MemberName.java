package org.fallrule.reader.geojson;

import org.fallrule.document.JsonStream;
import org.fallrule.document.JsonStream.Token;

/** Member names that GeoJSON gives a meaning: named twice in one object, nobody could say which value is meant. */
final class MemberName {

    private MemberName() {}

    /** The name at the cursor. */
    static String once(JsonStream json) {
        String name = json.text();
        if (json.repeatedName()) {
            throw json.fault("the member \"" + name + "\" stands twice in this object; keep one of them");
        }
        return name;
    }

    /** The text at the cursor. */
    static String text(JsonStream json, String member) {
        if (json.token() != Token.TEXT) {
            throw json.fault("\"" + member + "\" is " + json.found() + "; wanted a text");
        }
        return json.text();
    }
}
