package org.fallrule.reader.csv;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.layer.Findings;

/** The text of a file, without its byte-order mark. */
final class CsvText {
    private static final long MOST_BYTES = 256 << 20;
    /** What stands where bytes were no letter; a text may hold it itself. */
    private static final char REPLACED = '\uFFFD';

    private CsvText() {}

    static String of(Path csv, Place file, Findings findings) {
        byte[] bytes = bytes(csv, file);
        if (startsWith(bytes, 0xEF, 0xBB, 0xBF)) {
            return new String(bytes, 3, bytes.length - 3, StandardCharsets.UTF_8);
        }
        if (startsWith(bytes, 0xFF, 0xFE)) {
            return new String(bytes, 2, bytes.length - 2, StandardCharsets.UTF_16LE);
        }
        if (startsWith(bytes, 0xFE, 0xFF)) {
            return new String(bytes, 2, bytes.length - 2, StandardCharsets.UTF_16BE);
        }
        String text = new String(bytes, StandardCharsets.UTF_8);
        if (text.indexOf(REPLACED) < 0) {
            return text;
        }
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException notUtf8) {
            findings.note(file, "is not UTF-8; read as windows-1252; save it as UTF-8 where letters come out wrong");
            return new String(bytes, Charset.forName("windows-1252"));
        }
    }

    private static byte[] bytes(Path csv, Place file) {
        try {
            long length = Files.size(csv);
            if (length > MOST_BYTES) {
                throw new UnusableInput(
                        file,
                        "is " + length + " bytes long; wanted at most " + (MOST_BYTES >> 20)
                                + " MiB; keep the points around the site");
            }
            return Files.readAllBytes(csv);
        } catch (IOException failed) {
            throw new UnusableInput(file, "cannot be read (" + failed + "); check that the file is there and readable");
        }
    }

    private static boolean startsWith(byte[] bytes, int... mark) {
        for (int index = 0; index < mark.length; index++) {
            if (bytes.length <= index || (bytes[index] & 0xFF) != mark[index]) {
                return false;
            }
        }
        return true;
    }
}
