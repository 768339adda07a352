package org.fallrule.document;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import com.fasterxml.jackson.core.io.NumberOutput;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * The bytes of a JSON text as they grow, in UTF-8. A report of many findings is mostly line ends, names and texts of ASCII that
 * need no escape, and numbers of a few decimals; these are written as they are.
 */
final class JsonBytes {
    private static final int STEP = 2;
    private static final int DECIMALS = 9;
    private static final int BILLION = 1_000_000_000;

    private byte[] bytes;
    private int size;

    /** @param room bytes to begin with */
    JsonBytes(int room) {
        this.bytes = new byte[room];
    }

    /** How many bytes there are so far. */
    int size() {
        return size;
    }

    /** Whether the last byte is this sign. */
    boolean endsWith(char sign) {
        return size > 0 && bytes[size - 1] == sign;
    }

    byte[] toArray() {
        return Arrays.copyOf(bytes, size);
    }

    String text() {
        return new String(bytes, 0, size, StandardCharsets.UTF_8);
    }

    void sign(char ascii) {
        makeRoom(1);
        bytes[size++] = (byte) ascii;
    }

    /** Text that is known to be ASCII: the method that copies it drops the upper byte of each sign, which is zero. */
    @SuppressWarnings("deprecation")
    void ascii(String signs) {
        int length = signs.length();
        makeRoom(length);
        signs.getBytes(0, length, bytes, size);
        size += length;
    }

    /** Any text within quotes. A half of a surrogate pair, which UTF-8 cannot hold, is a question mark. */
    void quoted(String text) {
        sign('"');
        if (isPlain(text)) {
            ascii(text);
        } else {
            StringBuilder escaped = new StringBuilder();
            JsonStringEncoder.getInstance().quoteAsString(text, escaped);
            byte[] more = escaped.toString().getBytes(StandardCharsets.UTF_8);
            copy(more, 0, more.length);
        }
        sign('"');
    }

    private static boolean isPlain(String text) {
        for (int i = 0; i < text.length(); i++) {
            char sign = text.charAt(i);
            if (sign < ' ' || sign > '~' || sign == '"' || sign == '\\') {
                return false;
            }
        }
        return true;
    }

    /** The bytes from one place to another once more. */
    void again(int start, int end) {
        copy(bytes, start, end);
    }

    void lineEnd(int depth) {
        int indent = STEP * depth;
        makeRoom(1 + indent);
        bytes[size++] = '\n';
        Arrays.fill(bytes, size, size + indent, (byte) ' ');
        size += indent;
    }

    /**
     * A number in the fewest digits that tell it from others. JSON (RFC 8259, section 6) has no word for a number that is
     * infinite or not one. A double tells every decimal of 15 digits from the next (IEEE 754, binary64), so that one of no more
     * digits from which the number comes back is its shortest.
     */
    void number(double number) {
        long billionths = Math.round(number * BILLION);
        boolean isOfFewDigits = Math.abs(number) >= 1e-3 && Math.abs(number) < 1e6;
        if (isOfFewDigits && (double) billionths / BILLION == number) {
            decimal(billionths);
        } else {
            ascii(Double.isFinite(number) ? NumberOutput.toString(number, true) : "null");
        }
    }

    private void decimal(long billionths) {
        if (billionths < 0) {
            sign('-');
        }
        long magnitude = Math.abs(billionths);
        ascii(Long.toString(magnitude / BILLION));
        sign('.');
        fraction((int) (magnitude % BILLION));
    }

    /** The decimals without zeros at their end; one at least. */
    private void fraction(int billionths) {
        int rest = billionths;
        int digits = DECIMALS;
        while (digits > 1 && rest % 10 == 0) {
            rest /= 10;
            digits--;
        }
        makeRoom(digits);
        for (int i = size + digits - 1; i >= size; i--) {
            bytes[i] = (byte) ('0' + rest % 10);
            rest /= 10;
        }
        size += digits;
    }

    void copy(byte[] from, int start, int end) {
        makeRoom(end - start);
        System.arraycopy(from, start, bytes, size, end - start);
        size += end - start;
    }

    private void makeRoom(int more) {
        if (size + more > bytes.length) {
            bytes = Arrays.copyOf(bytes, Math.max(2 * bytes.length, size + more));
        }
    }
}
