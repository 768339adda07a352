package org.fallrule.reader.shapefile;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;

/** A file together with the name that the user knows it by. */
abstract class ShownFile {
    private static final long MOST_TEXT = 1 << 20;

    private final Place place;

    ShownFile(Place place) {
        this.place = place;
    }

    /** Its name in every fault. */
    Place place() {
        return place;
    }

    /**
     * Its whole content, little-endian, from 0 to its end.
     *
     * @throws UnusableInput when it cannot be had
     */
    abstract ByteBuffer bytes();

    /**
     * Its content as text: UTF-8 where it is that, else ISO 8859-1, without a byte order mark and outer blanks.
     *
     * @throws UnusableInput as {@link #bytes()}, and when it is too long to be the short text that is wanted
     */
    String text() {
        ByteBuffer bytes = bytes();
        if (bytes.remaining() > MOST_TEXT) {
            throw unusable("is " + bytes.remaining() + " bytes long; wanted a short text; replace it or take it away");
        }
        byte[] raw = new byte[bytes.remaining()];
        bytes.get(raw);
        String utf8 = new String(raw, StandardCharsets.UTF_8);
        String text = utf8.indexOf('\uFFFD') < 0 ? utf8 : new String(raw, StandardCharsets.ISO_8859_1);
        return (text.startsWith("\uFEFF") ? text.substring(1) : text).strip();
    }

    UnusableInput unusable(String says) {
        return new UnusableInput(place, says);
    }
}
