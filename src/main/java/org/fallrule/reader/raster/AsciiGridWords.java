package org.fallrule.reader.raster;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;

/** The blank-separated words of an ASCII grid, each known by its line. */
final class AsciiGridWords implements AutoCloseable {
    /** Characters; no number is longer. */
    private static final int LONGEST = 64;

    private static final String BLANKS = " \t\r\n\f";

    /** In a row; no layout of heights has more. */
    private static final int MOST_BLANKS = 1_000_000;

    private final BufferedReader text;
    private final Place file;
    private int line = 1;
    private int next;

    AsciiGridWords(Path path, Place file) throws IOException {
        this.text = new BufferedReader(Files.newBufferedReader(path, StandardCharsets.ISO_8859_1), 1 << 16);
        this.file = file;
        this.next = text.read();
    }

    UnusableInput fault(String says) {
        return new UnusableInput(file.at(line, 0), says);
    }

    private void skipBlank() throws IOException {
        int blanks = 0;
        while (BLANKS.indexOf(next) >= 0) {
            if (next == '\n') {
                line++;
            }
            if (++blanks > MOST_BLANKS) {
                throw fault("has nothing but blanks for long; wanted heights parted by blanks");
            }
            next = text.read();
        }
        if (next >= 0 && next < ' ') {
            throw fault("holds a byte that is no text (" + next + "); it seems broken, copy or export it again");
        }
    }

    /** Whether a word of the header comes next: one that begins with a letter and is not nan. */
    boolean peeksWord() throws IOException {
        skipBlank();
        if (!Character.isLetter(next)) {
            return false;
        }
        text.mark(2);
        int second = text.read();
        int third = text.read();
        text.reset();
        return !((next == 'n' || next == 'N') && (second == 'a' || second == 'A') && (third == 'n' || third == 'N'));
    }

    String word() throws IOException {
        skipBlank();
        StringBuilder word = new StringBuilder();
        while (next > ' ') {
            word.append((char) next);
            if (word.length() > LONGEST) {
                throw fault("found \"" + word + "...\", longer than any number; wanted heights parted by blanks");
            }
            next = text.read();
        }
        return word.toString();
    }

    double number() throws IOException {
        String word = word();
        if (word.isEmpty()) {
            throw fault("ends before its last height; it seems cut off, or mend ncols and nrows");
        }
        try {
            // Java takes hexadecimal numbers and a last d or f as well; this format does not.
            if (word.chars().allMatch(sign -> "0123456789+-.eE".indexOf(sign) >= 0)) {
                return Double.parseDouble(word);
            }
        } catch (NumberFormatException e) {
            throw wrong(word);
        }
        if (word.matches("[+-]?[nN][aA][nN]")) {
            return Double.NaN;
        }
        throw wrong(word);
    }

    private UnusableInput wrong(String word) {
        return fault("found \"" + word + "\"; wanted a number, such as 412.35");
    }

    void refuseMore() throws IOException {
        if (!word().isEmpty()) {
            throw fault("has more heights than ncols times nrows; mend the header");
        }
    }

    @Override
    public void close() throws IOException {
        text.close();
    }
}
