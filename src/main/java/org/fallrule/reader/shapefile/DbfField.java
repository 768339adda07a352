package org.fallrule.reader.shapefile;

import java.nio.ByteBuffer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/**
 * A column of a {@code .dbf}, as its 32-byte field descriptor says.
 *
 * @param name its name
 * @param type its type letter
 * @param start offset of its value in a row, the deletion mark included
 * @param length bytes of its value
 * @param decimals digits behind the point, for numbers
 */
record DbfField(String name, char type, int start, int length, int decimals) {
    static final int DESCRIPTOR = 32;
    private static final int NAME = 11;

    static DbfField read(ByteBuffer bytes, int at, int start, Charset charset) {
        return new DbfField(
                name(bytes, at, charset),
                (char) (bytes.get(at + NAME) & 0xFF),
                start,
                bytes.get(at + 16) & 0xFF,
                bytes.get(at + 17) & 0xFF);
    }

    /** Offset behind its value in a row. */
    int end() {
        return start + length;
    }

    private static String name(ByteBuffer bytes, int at, Charset charset) {
        byte[] raw = new byte[NAME];
        bytes.get(at, raw);
        int end = 0;
        while (end < NAME && raw[end] != 0) {
            end++;
        }
        String name = new String(raw, 0, end, charset).strip();
        return name.indexOf('\uFFFD') < 0 ? name : new String(raw, 0, end, StandardCharsets.ISO_8859_1).strip();
    }
}
