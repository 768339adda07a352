package org.fallrule.reader.shapefile;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/** Bytes written one number after another. */
final class Bytes {
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();

    Bytes big(int... numbers) {
        for (int number : numbers) {
            out.writeBytes(ByteBuffer.allocate(4).putInt(number).array());
        }
        return this;
    }

    Bytes little(int... numbers) {
        for (int number : numbers) {
            out.writeBytes(ByteBuffer.allocate(4)
                    .order(ByteOrder.LITTLE_ENDIAN)
                    .putInt(number)
                    .array());
        }
        return this;
    }

    Bytes shorts(int... numbers) {
        for (int number : numbers) {
            out.write(number);
            out.write(number >> 8);
        }
        return this;
    }

    Bytes doubles(double... numbers) {
        for (double number : numbers) {
            out.writeBytes(ByteBuffer.allocate(8)
                    .order(ByteOrder.LITTLE_ENDIAN)
                    .putDouble(number)
                    .array());
        }
        return this;
    }

    Bytes bytes(int... bytes) {
        for (int each : bytes) {
            out.write(each);
        }
        return this;
    }

    Bytes raw(byte[] bytes) {
        out.writeBytes(bytes);
        return this;
    }

    Bytes text(String text, int length, int filler) {
        byte[] latin = text.getBytes(StandardCharsets.ISO_8859_1);
        out.writeBytes(latin);
        for (int missing = latin.length; missing < length; missing++) {
            out.write(filler);
        }
        return this;
    }

    int size() {
        return out.size();
    }

    byte[] toArray() {
        return out.toByteArray();
    }
}
