package org.fallrule.docket;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.PatternSyntaxException;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;

/** A path with {@code *}, {@code ?}, {@code [...]} or <code>{a,b}</code> in its names, for shells that leave them as they stand. */
final class Pattern {
    private static final String SIGNS = "*?[{";

    private Pattern() {}

    /** Whether a word is a pattern and not the name of something that is there. */
    static boolean isOne(String word) {
        return word.chars().anyMatch(letter -> SIGNS.indexOf(letter) >= 0) && !isThere(word);
    }

    /**
     * The path that a word names.
     *
     * @throws UnusableInput when it cannot be a path
     */
    static Path path(String word) {
        try {
            return Path.of(word);
        } catch (InvalidPathException e) {
            throw new UnusableInput(
                    Place.of(word),
                    "cannot be a folder's name; name a site folder (if it has letters that the language setting does not have,"
                            + " set LC_ALL=C.UTF-8)");
        }
    }

    private static boolean isThere(String word) {
        try {
            return Files.exists(Path.of(word));
        } catch (InvalidPathException e) {
            return false;
        }
    }

    /** The folders that match, by name. */
    static List<Path> matches(String word) {
        String slashed = java.io.File.separatorChar == '\\' ? word.replace('\\', '/') : word;
        List<Path> places = List.of(path(slashed.startsWith("/") ? "/" : ""));
        for (String name : slashed.split("/+", -1)) {
            if (!name.isEmpty()) {
                List<Path> next = new ArrayList<>();
                for (Path place : places) {
                    next.addAll(named(place, name, word));
                }
                places = next;
            }
        }
        return places;
    }

    private static List<Path> named(Path place, String name, String word) {
        boolean plain = name.chars().noneMatch(letter -> SIGNS.indexOf(letter) >= 0);
        if (plain) {
            Path next = place.resolve(name);
            return Files.isDirectory(next) ? List.of(next) : List.of();
        }
        List<Path> found = new ArrayList<>();
        try (DirectoryStream<Path> matching = Files.newDirectoryStream(place, name)) {
            for (Path path : matching) {
                boolean hidden = String.valueOf(path.getFileName()).startsWith(".");
                if (Files.isDirectory(path) && (!hidden || name.startsWith("."))) {
                    found.add(path);
                }
            }
        } catch (PatternSyntaxException e) {
            throw new UnusableInput(Place.of(word), "is no pattern that can be read (" + e.getDescription() + ")");
        } catch (IOException | DirectoryIteratorException e) {
            throw new UnusableInput(Place.of(place.toString()), "cannot be listed (" + e + "); make it readable");
        }
        return found.stream().sorted().toList();
    }
}
