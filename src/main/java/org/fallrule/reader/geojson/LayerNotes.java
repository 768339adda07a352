package org.fallrule.reader.geojson;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;

/** What a person should know of a layer though it could be read. The same thing met many times is one note with its count. */
final class LayerNotes {

    /** A kind of note, with its sentence. */
    enum Kind {
        MORE_THAN_THREE_NUMBERS("%d position(s) have more than 3 numbers; those after x, y and z are ignored"),
        REPEATED_PROPERTY("%d properties are named twice in their feature; the last value counts"),
        MEMBER_IGNORED(
                "%d feature member(s) that GeoJSON does not know are ignored; attributes belong in \"properties\""),
        NO_GEOMETRY_MEMBER("%d feature(s) have no \"geometry\" member; they are read as features without geometry");

        private final String sentence;

        Kind(String sentence) {
            this.sentence = sentence;
        }
    }

    private record Met(Place first, int times) {}

    private final Map<Kind, Met> met = new LinkedHashMap<>();

    /** Counts one more of a kind; the first one's place is kept. */
    void count(Kind kind, Place where) {
        met.merge(kind, new Met(where, 1), (old, one) -> new Met(old.first(), old.times() + 1));
    }

    List<Fault> faults() {
        List<Fault> faults = new ArrayList<>();
        met.forEach((kind, counted) -> faults.add(new Fault(
                counted.first(), String.format(Locale.ROOT, kind.sentence, counted.times()) + first(counted))));
        return faults;
    }

    private static String first(Met counted) {
        return counted.times() == 1 ? "" : " (the first one is here)";
    }
}
