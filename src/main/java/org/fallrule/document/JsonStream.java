package org.fallrule.document;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * A file of JSON (RFC 8259) read token by token, every token with its place; never a tree of the whole file. Several texts may
 * follow each other, parted by line ends or by the record separators of RFC 8142. A byte-order mark is passed over. Text that
 * is not JSON, nesting deeper than {@value #MAX_DEPTH} and numbers too large for a {@code double} are {@link UnusableInput}
 * with line and column.
 */
public final class JsonStream implements Closeable {
    /** Letters of a token that a sentence on it repeats. */
    private static final int LONGEST_FOUND = 40;

    /** Objects and arrays within each other. */
    public static final int MAX_DEPTH = 100;

    private static final JsonFactory FACTORY = JsonFactory.builder()
            .disable(JsonFactory.Feature.INTERN_FIELD_NAMES)
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(MAX_DEPTH)
                    .maxStringLength(1 << 23)
                    .maxNameLength(10_000)
                    .build())
            .build();

    /** What stands at the cursor. */
    public enum Token {
        OBJECT_START,
        OBJECT_END,
        ARRAY_START,
        ARRAY_END,
        NAME,
        TEXT,
        NUMBER,
        BOOLEAN,
        NULL,
        /** Before the first token, and after the last. */
        END
    }

    private final Place file;
    private final JsonParser parser;
    private final NamesSeen names = new NamesSeen();
    private Token token = Token.END;
    private boolean repeatedName;

    private JsonStream(Place file, JsonParser parser) {
        this.file = file;
        this.parser = parser;
    }

    /**
     * Opens a file; the cursor stands before its first token.
     *
     * @param shownAs the file's path as the user knows it
     * @throws UnusableInput when the file cannot be opened
     */
    public static JsonStream open(Path file, String shownAs) {
        Place place = Place.of(shownAs);
        try {
            return new JsonStream(place, FACTORY.createParser(new Utf8Text(Files.newInputStream(file))));
        } catch (IOException e) {
            throw JsonFaults.unreadable(e, place);
        }
    }

    /** Moves to the next token and returns it; {@link Token#END} after the last text of the file. */
    public Token next() {
        try {
            token = kind(parser.nextToken());
            repeatedName = false;
            switch (token) {
                case OBJECT_START -> names.objectStarts();
                case OBJECT_END -> names.objectEnds();
                case NAME -> noteName();
                default -> {}
            }
            return token;
        } catch (IOException e) {
            throw JsonFaults.of(e, file, parser.currentLocation());
        }
    }

    private void noteName() {
        repeatedName = !names.add(text());
        if (names.tooMany()) {
            throw fault("this object has more than " + NamesSeen.MAX_NAMES + " members, which no layer needs");
        }
    }

    /** The token at the cursor. */
    public Token token() {
        return token;
    }

    /** Whether the name at the cursor stood in the same object before. Which value then counts is for the caller to say. */
    public boolean repeatedName() {
        return repeatedName;
    }

    /** The name or text at the cursor; of other values their JSON. */
    public String text() {
        try {
            String text = parser.getText();
            return text == null ? "" : text;
        } catch (IOException e) {
            throw JsonFaults.of(e, file, parser.currentLocation());
        }
    }

    /**
     * The number at the cursor.
     *
     * @throws UnusableInput when the cursor is not on a number, or the number is too large
     */
    public double number() {
        wanted(Token.NUMBER, "a number");
        try {
            double value = parser.getDoubleValue();
            if (!Double.isFinite(value)) {
                throw fault(
                        "the number " + Excerpt.of(text(), LONGEST_FOUND) + " is too large; wanted a finite number");
            }
            return value;
        } catch (IOException e) {
            throw JsonFaults.of(e, file, parser.currentLocation());
        }
    }

    /** The number at the cursor: a {@link Long} when written without fraction and exponent and fitting, else a {@link Double}. */
    public Number longOrDouble() {
        double value = number();
        try {
            JsonParser.NumberType type = parser.getNumberType();
            boolean fits = type == JsonParser.NumberType.INT || type == JsonParser.NumberType.LONG;
            return fits ? (Number) parser.getLongValue() : (Number) value;
        } catch (IOException e) {
            throw JsonFaults.of(e, file, parser.currentLocation());
        }
    }

    /** The boolean at the cursor. */
    public boolean bool() {
        wanted(Token.BOOLEAN, "true or false");
        return parser.currentToken() == JsonToken.VALUE_TRUE;
    }

    /** Passes over the value at the cursor: from an opening token to its closing one, else nothing. */
    public void skip() {
        int open = 0;
        do {
            if (token == Token.OBJECT_START || token == Token.ARRAY_START) {
                open++;
            } else if (token == Token.OBJECT_END || token == Token.ARRAY_END) {
                open--;
            }
        } while (open > 0 && next() != Token.END);
    }

    /** The value at the cursor as compact JSON text; the cursor is then on its last token. Meant for small values. */
    public String json() {
        return JsonText.of(this);
    }

    /** The place of the token at the cursor. */
    public Place here() {
        return JsonFaults.at(file, parser.currentTokenLocation());
    }

    /** For short sentences on what was found: the token at the cursor in words, such as {@code the text "north"}. */
    public String found() {
        return switch (token) {
            case OBJECT_START -> "an object";
            case OBJECT_END -> "the end of an object";
            case ARRAY_START -> "an array";
            case ARRAY_END -> "the end of an array";
            case NAME -> "the member \"" + Excerpt.of(text(), LONGEST_FOUND) + "\"";
            case TEXT -> "the text \"" + Excerpt.of(text(), LONGEST_FOUND) + "\"";
            case NUMBER -> "the number " + Excerpt.of(text(), LONGEST_FOUND);
            case BOOLEAN, NULL -> text();
            case END -> "nothing";
        };
    }

    /** An exception about the token at the cursor. */
    public UnusableInput fault(String says) {
        return new UnusableInput(here(), says);
    }

    private void wanted(Token kind, String inWords) {
        if (token != kind) {
            throw fault("found " + found() + "; wanted " + inWords);
        }
    }

    private static Token kind(@Nullable JsonToken token) {
        if (token == null) {
            return Token.END;
        }
        return switch (token) {
            case START_OBJECT -> Token.OBJECT_START;
            case END_OBJECT -> Token.OBJECT_END;
            case START_ARRAY -> Token.ARRAY_START;
            case END_ARRAY -> Token.ARRAY_END;
            case FIELD_NAME -> Token.NAME;
            case VALUE_STRING -> Token.TEXT;
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> Token.NUMBER;
            case VALUE_TRUE, VALUE_FALSE -> Token.BOOLEAN;
            case VALUE_NULL, VALUE_EMBEDDED_OBJECT -> Token.NULL;
            case NOT_AVAILABLE -> Token.END;
        };
    }

    @Override
    public void close() {
        try {
            parser.close();
        } catch (IOException e) {
            throw JsonFaults.unreadable(e, file);
        }
    }
}
