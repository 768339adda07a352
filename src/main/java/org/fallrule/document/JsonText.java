package org.fallrule.document;

import com.fasterxml.jackson.core.io.JsonStringEncoder;

/** Writes the value at a stream's cursor as compact JSON, its numbers as they stand in the file. */
final class JsonText {
    private static final int MAX_LENGTH = 1 << 20;

    private final JsonStream stream;
    private final StringBuilder text = new StringBuilder();

    private JsonText(JsonStream stream) {
        this.stream = stream;
    }

    static String of(JsonStream stream) {
        JsonText writer = new JsonText(stream);
        writer.value();
        return writer.text.toString();
    }

    private void value() {
        if (text.length() > MAX_LENGTH) {
            throw stream.fault(
                    "this value is longer than " + MAX_LENGTH + " characters of JSON, which no attribute needs");
        }
        switch (stream.token()) {
            case OBJECT_START -> object();
            case ARRAY_START -> array();
            case TEXT -> quoted();
            default -> text.append(stream.text());
        }
    }

    private void object() {
        text.append('{');
        for (boolean first = true; stream.next() != JsonStream.Token.OBJECT_END; first = false) {
            comma(first);
            quoted();
            text.append(':');
            stream.next();
            value();
        }
        text.append('}');
    }

    private void array() {
        text.append('[');
        for (boolean first = true; stream.next() != JsonStream.Token.ARRAY_END; first = false) {
            comma(first);
            value();
        }
        text.append(']');
    }

    private void comma(boolean first) {
        if (!first) {
            text.append(',');
        }
    }

    private void quoted() {
        text.append('"');
        JsonStringEncoder.getInstance().quoteAsString(stream.text(), text);
        text.append('"');
    }
}
