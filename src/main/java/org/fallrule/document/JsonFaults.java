package org.fallrule.document;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;

/** Puts what went wrong while reading JSON into plain sentences. */
final class JsonFaults {

    private JsonFaults() {}

    /** @param reached how far the reading had come, for faults that do not say themselves where they are */
    static UnusableInput of(IOException fault, Place file, JsonLocation reached) {
        if (fault instanceof JsonProcessingException syntax) {
            JsonLocation location = syntax.getLocation() == null ? reached : syntax.getLocation();
            Place where = at(file, location);
            int back = strangeToken(syntax).length();
            return new UnusableInput(where.at(where.line(), Math.max(where.column() - back, 1)), sentence(syntax));
        }
        if (fault instanceof CharacterCodingException) {
            return new UnusableInput(
                    at(file, reached),
                    "the bytes here are not UTF-8 text; JSON is UTF-8: save the file in that encoding");
        }
        return unreadable(fault, file);
    }

    static UnusableInput unreadable(IOException fault, Place file) {
        if (fault instanceof NoSuchFileException) {
            return new UnusableInput(file, "there is no such file");
        }
        if (fault instanceof AccessDeniedException) {
            return new UnusableInput(file, "the file may not be read: access is denied");
        }
        return new UnusableInput(file, "the file cannot be read: " + fault.getMessage());
    }

    static Place at(Place file, JsonLocation location) {
        return file.at(Math.max(location.getLineNr(), 0), Math.max(location.getColumnNr(), 0));
    }

    private static String sentence(JsonProcessingException syntax) {
        String says = String.valueOf(syntax.getOriginalMessage());
        if (syntax instanceof StreamConstraintsException) {
            return "the JSON is beyond what is read: " + lowerFirst(cut(says));
        }
        if (syntax instanceof JsonEOFException) {
            return "the file ends in the middle of its JSON: it was cut off; export or copy it again";
        }
        if (!strangeToken(syntax).isEmpty()) {
            return strangeToken(syntax) + " is not JSON; wanted a finite number, or null where there is none";
        }
        return "this is not JSON: " + lowerFirst(cut(says));
    }

    /** A word such as NaN, which many programs write for a number and the parser knows; it reports the place after it. */
    private static String strangeToken(JsonProcessingException syntax) {
        String[] quoted = String.valueOf(syntax.getOriginalMessage()).split("'", 3);
        return quoted[0].equals("Non-standard token ") && quoted.length == 3 ? quoted[1] : "";
    }

    /** What the parser adds for programmers, such as option names and where its own buffers are, is left out. */
    private static String cut(String says) {
        return says.replaceAll("(?s)\\s*(: enable `|\\(from `|\\(start marker|; maximum allowed via|\\[Source:).*", "")
                .replaceAll("\\s+", " ");
    }

    private static String lowerFirst(String says) {
        return says.isEmpty() ? says : Character.toLowerCase(says.charAt(0)) + says.substring(1);
    }
}
