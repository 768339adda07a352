package org.fallrule.reader.shapefile;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.Consumer;

/** Type C: text, filled up with blanks or ended by a NUL byte. */
final class TextFormat implements ValueFormat {
    private final Charset charset;

    TextFormat(Charset charset) {
        this.charset = charset;
    }

    @Override
    public Optional<Object> read(byte[] raw, Consumer<String> complain) {
        int end = firstNul(raw);
        if (!AsciiText.of(raw).equals(AsciiText.of(Arrays.copyOf(raw, end)))) {
            complain.accept(
                    "its text goes on behind a NUL byte; what stands before it was read; clear and retype the text");
        }
        while (end > 0 && raw[end - 1] == ' ') {
            end--;
        }
        return end == 0 ? Optional.empty() : Optional.of(decoded(raw, end, complain));
    }

    private String decoded(byte[] raw, int end, Consumer<String> complain) {
        try {
            return charset.newDecoder().decode(ByteBuffer.wrap(raw, 0, end)).toString();
        } catch (CharacterCodingException wrongBytes) {
            String text = new String(raw, 0, end, charset);
            complain.accept("its text holds bytes that are not " + charset.name() + "; read as "
                    + AsciiText.quoted(text) + "; name the right encoding in the .cpg or retype the text");
            return text;
        }
    }

    private static int firstNul(byte[] raw) {
        int end = 0;
        while (end < raw.length && raw[end] != 0) {
            end++;
        }
        return end;
    }
}
