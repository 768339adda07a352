package org.fallrule.document;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParseException;
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
import java.util.Locale;
import java.util.Map;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/**
 * Reads a YAML document into {@link Node}s that know their line and column. Anchors and aliases are refused, a key may stand
 * once, and size and depth are bounded, so that no document can grow beyond what is written in it.
 */
public final class Yaml {
    private static final int MOST_DEPTH = 30;
    private static final int MOST_BYTES = 4 << 20;

    private final YAMLParser parser;
    private final String file;

    private Yaml(YAMLParser parser, String file) {
        this.parser = parser;
        this.file = file;
    }

    /**
     * Reads a file whose outermost value is keys with values. An empty file is an empty mapping.
     *
     * @param shownAs the path to show in messages
     * @throws UnusableInput if the file cannot be read or is not such a document; names line and column
     */
    public static Node.Mapping read(Path path, String shownAs) {
        try {
            if (Files.size(path) > MOST_BYTES) {
                throw new UnusableInput(Place.of(shownAs), "the file is larger than 4 MB; is it really YAML?");
            }
            return parse(Files.readString(path), shownAs);
        } catch (IOException e) {
            throw new UnusableInput(
                    Place.of(shownAs), "cannot be read as UTF-8 text (" + e + "); check that it is there and is text");
        }
    }

    /** Reads a document from its text, as {@link #read} does from a file. */
    public static Node.Mapping parse(String text, String shownAs) {
        LoaderOptions options = new LoaderOptions();
        options.setNestingDepthLimit(MOST_DEPTH);
        options.setMaxAliasesForCollections(0);
        try (YAMLParser parser =
                YAMLFactory.builder().loaderOptions(options).build().createParser(text)) {
            return new Yaml(parser, shownAs).document();
        } catch (JsonProcessingException e) {
            throw new UnusableInput(place(shownAs, e), plain(e));
        } catch (IOException e) {
            throw new UnusableInput(Place.of(shownAs), "cannot be read: " + e.getMessage());
        }
    }

    private Node.Mapping document() throws IOException {
        if (parser.nextToken() == null) {
            return Node.Mapping.empty(Place.of(file).at(1, 1));
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
        boolean blank = token == JsonToken.VALUE_NULL;
        return new Node.Scalar(here(), blank ? "" : parser.getText(), blank);
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
        return place(file, parser.currentTokenLocation());
    }

    private static Place place(String file, JsonLocation location) {
        return Place.of(file).at(Math.max(1, location.getLineNr()), Math.max(1, location.getColumnNr()));
    }

    private static Place place(String file, JsonProcessingException e) {
        return e.getLocation() == null ? Place.of(file) : place(file, e.getLocation());
    }

    private static String plain(JsonProcessingException e) {
        if (e.getCause() instanceof MarkedYAMLException marked && marked.getProblem() != null) {
            return "not readable as YAML: " + hint(marked.getProblem());
        }
        String kind = e instanceof JsonParseException ? "not readable as YAML: " : "cannot be read: ";
        return kind
                + hint(String.valueOf(e.getOriginalMessage())
                        .lines()
                        .findFirst()
                        .orElse(""));
    }

    private static String hint(String problem) {
        String lower = problem.toLowerCase(Locale.ROOT);
        return lower.contains("'\\t") || lower.contains("tab") ? problem + "; indent with spaces, not tabs" : problem;
    }
}
