package org.fallrule.document;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/**
 * UTF-8 text that refuses bytes that are not UTF-8, and does so only after every character before them has been handed out,
 * so that whoever reads knows their exact place. Leaves out a byte-order mark at the start, and hands out the record
 * separator of a JSON text sequence (RFC 8142, section 2.2) as a tab, which is blank between JSON texts and still refused
 * within a string.
 */
final class Utf8Text extends Reader {
    private static final char BYTE_ORDER_MARK = '\uFEFF';
    private static final char RECORD_SEPARATOR = '\u001E';

    private final InputStream source;
    private final CharsetDecoder decoder = StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    private final ByteBuffer bytes = ByteBuffer.allocate(1 << 16).flip();
    private boolean sourceEnded;
    private boolean atStart = true;

    Utf8Text(InputStream source) {
        this.source = source;
    }

    /** @throws java.nio.charset.CharacterCodingException when the next byte is not UTF-8 */
    @Override
    public int read(char[] target, int offset, int length) throws IOException {
        if (length < 2) {
            throw new IllegalArgumentException("A character may take two chars, room was for " + length);
        }
        CharBuffer chars = CharBuffer.wrap(target, offset, length);
        int start = chars.position();
        while (chars.position() == start) {
            boolean ended = decodeInto(chars);
            dropByteOrderMark(chars, start);
            if (ended && chars.position() == start) {
                return -1;
            }
        }
        int count = chars.position() - start;
        blankSeparators(target, offset, count);
        return count;
    }

    private boolean decodeInto(CharBuffer chars) throws IOException {
        int before = chars.position();
        CoderResult result = decoder.decode(bytes, chars, sourceEnded);
        if (chars.position() > before) {
            return false;
        }
        if (result.isError()) {
            result.throwException();
        }
        if (sourceEnded) {
            return true;
        }
        fill();
        return false;
    }

    private void fill() throws IOException {
        bytes.compact();
        int count = source.read(bytes.array(), bytes.position(), bytes.remaining());
        sourceEnded = count < 0;
        bytes.position(bytes.position() + Math.max(count, 0));
        bytes.flip();
    }

    private void dropByteOrderMark(CharBuffer chars, int start) {
        if (!atStart || chars.position() == start) {
            return;
        }
        atStart = false;
        int count = chars.position() - start;
        char[] text = chars.array();
        if (text[start] == BYTE_ORDER_MARK) {
            System.arraycopy(text, start + 1, text, start, count - 1);
            chars.position(start + count - 1);
        }
    }

    private static void blankSeparators(char[] text, int offset, int count) {
        for (int i = offset; i < offset + count; i++) {
            if (text[i] == RECORD_SEPARATOR) {
                text[i] = '\t';
            }
        }
    }

    @Override
    public void close() throws IOException {
        source.close();
    }
}
