package org.fallrule.document;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.reader.StreamReader;

/**
 * Reads a YAML document into {@link Node}s that know their line and column. Aliases are refused, a key may stand once, and
 * size and depth are bounded, so that no document can grow beyond what is written in it or keep anybody waiting.
 */
public final class Yaml {
    private static final int MOST_DEPTH = 30;
    private static final int LARGEST = 512 << 10;

    private static final YAMLFactory FACTORY = factory();

    private final YAMLParser parser;
    private final YamlFaults faults;

    private Yaml(YAMLParser parser, YamlFaults faults) {
        this.parser = parser;
        this.faults = faults;
    }

    /**
     * Reads a file whose outermost value is keys with values. An empty file is an empty mapping.
     *
     * @param shownAs the path to show in messages
     * @throws UnusableInput if the file cannot be read or is not such a document; names line and column
     */
    public static Node.Mapping read(Path path, String shownAs) {
        return parse(text(path, shownAs), shownAs);
    }

    /**
     * The text of a file, of no more than a document may hold.
     *
     * @param shownAs the path to show in messages
     * @throws UnusableInput if the file cannot be read or is larger
     */
    public static String text(Path path, String shownAs) {
        try {
            refuseLong(Files.size(path), shownAs);
            return Files.readString(path);
        } catch (IOException e) {
            throw new UnusableInput(
                    Place.of(shownAs), "cannot be read as UTF-8 text (" + e + "); check that it is there and is text");
        }
    }

    /** Reads a document from its text, as {@link #read} does from a file. */
    public static Node.Mapping parse(String text, String shownAs) {
        refuseLong(text.length(), shownAs);
        refuseUnprintable(text, shownAs);
        YamlFaults faults = new YamlFaults(shownAs);
        try (YAMLParser parser = FACTORY.createParser(text)) {
            return new Yaml(parser, faults).document();
        } catch (JsonProcessingException e) {
            throw faults.of(e);
        } catch (IOException e) {
            throw new UnusableInput(Place.of(shownAs), "cannot be read: " + e.getMessage());
        }
    }

    private static YAMLFactory factory() {
        LoaderOptions options = new LoaderOptions();
        options.setNestingDepthLimit(MOST_DEPTH);
        options.setMaxAliasesForCollections(0);
        return YAMLFactory.builder().loaderOptions(options).build();
    }

    private Node.Mapping document() throws IOException {
        if (parser.nextToken() == null) {
            return Node.Mapping.empty(here());
        }
        Node outermost = node(0);
        if (parser.nextToken() != null) {
            throw new UnusableInput(here(), "a second document starts here; keep one document in a file");
        }
        if (outermost instanceof Node.Mapping mapping) {
            return mapping;
        }
        throw new UnusableInput(outermost.place(), "found " + outermost.kind() + ", wanted keys with values");
    }

    private Node node(int depth) throws IOException {
        if (depth > MOST_DEPTH) {
            throw new UnusableInput(here(), "nested more than " + MOST_DEPTH + " deep; write it flatter");
        }
        if (parser.isCurrentAlias() || parser.getObjectId() != null) {
            throw new UnusableInput(here(), "anchors (&) and aliases (*) are not read; write the value out");
        }
        JsonToken token = parser.currentToken();
        if (token == JsonToken.START_OBJECT) {
            return mapping(depth);
        }
        if (token == JsonToken.START_ARRAY) {
            return sequence(depth);
        }
        String text = token == JsonToken.VALUE_NULL ? "" : parser.getText();
        return new Node.Scalar(here(), text, text.isBlank());
    }

    private Node sequence(int depth) throws IOException {
        Place start = here();
        List<Node> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(node(depth + 1));
        }
        return new Node.Sequence(start, items);
    }

    private Node mapping(int depth) throws IOException {
        Place start = here();
        Map<String, Node> entries = new LinkedHashMap<>();
        Map<String, Place> places = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String key = parser.currentName();
            Place first = places.putIfAbsent(key, here());
            if (first != null) {
                throw new UnusableInput(
                        here(), "the key " + key + " stands already in line " + first.line() + "; keep one of them");
            }
            parser.nextToken();
            entries.put(key, node(depth + 1));
        }
        return new Node.Mapping(start, entries, places);
    }

    private Place here() {
        return faults.place(parser.currentTokenLocation());
    }

    private static void refuseLong(long size, String shownAs) {
        if (size > LARGEST) {
            throw new UnusableInput(
                    Place.of(shownAs), "the file is larger than " + (LARGEST >> 10) + " kB; is it really YAML?");
        }
    }

    /** The parser refuses these characters too, but does not say where they stand. */
    private static void refuseUnprintable(String text, String shownAs) {
        int line = 1;
        int column = 0;
        for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
            int letter = text.codePointAt(i);
            column++;
            if (!StreamReader.isPrintable(letter)) {
                throw new UnusableInput(
                        Place.of(shownAs).at(line, column),
                        String.format("the character U+%04X cannot stand in YAML; is this really text?", letter));
            }
            if (letter == '\n') {
                line++;
                column = 0;
            }
        }
    }
}
