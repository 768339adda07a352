package org.fallrule.rulebook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.fallrule.document.Excerpt;
import org.fallrule.document.Nearest;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;

/**
 * The folder that rule books stand in.
 *
 * @param root its absolute path
 * @param shownAs its path as the user knows it
 */
record BookFolder(Path root, String shownAs) {

    BookFolder {
        root = root.toAbsolutePath().normalize();
    }

    Path baseline() {
        Path book = root.resolve("baseline.yaml");
        if (Files.exists(book)) {
            refuseLinkOut(book, Place.of(shown(book)));
        }
        return book;
    }

    /** The names of the books of a kind. */
    List<String> names(String kind) {
        Path place = root.resolve(kind);
        if (!Files.isDirectory(place)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(place)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".yaml") && !name.startsWith(".") && !name.endsWith(".examples.yaml"))
                    .map(name -> name.substring(0, name.length() - ".yaml".length()))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UnusableInput(Place.of(shownAs + "/" + kind), "cannot be listed: " + e);
        }
    }

    /** The book of a kind that goes by a name; only names from the list, so that none leads out of the folder. */
    Path book(String kind, String name) {
        List<String> known = names(kind);
        if (!known.contains(name)) {
            throw new UnusableInput(
                    Place.of(shownAs + "/" + kind),
                    "there is no book " + Excerpt.of(name) + ".yaml here" + Nearest.hint(name, known) + " Known: "
                            + (known.isEmpty() ? "none" : String.join(", ", known)));
        }
        Path book = root.resolve(kind).resolve(name + ".yaml");
        refuseLinkOut(book, Place.of(shown(book)));
        return book;
    }

    boolean holds(Path path) {
        return path.startsWith(root);
    }

    /** A link may not lead out of the folder either: a book from elsewhere could name any file on the computer. */
    void refuseLinkOut(Path path, Place named) {
        try {
            if (!path.toRealPath().startsWith(root.toRealPath())) {
                throw new UnusableInput(
                        named,
                        shown(path) + " is a link to a place outside of the rules folder " + shownAs
                                + "; copy the book in");
            }
        } catch (IOException e) {
            throw new UnusableInput(named, shown(path) + " cannot be read (" + e + "); check the file");
        }
    }

    /** A path inside the folder as the user knows it. */
    String shown(Path path) {
        return shownAs + "/" + root.relativize(path).toString().replace('\\', '/');
    }
}
