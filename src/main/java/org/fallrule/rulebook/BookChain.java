package org.fallrule.rulebook;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.document.Fault;
import org.fallrule.document.Node;
import org.fallrule.document.UnusableInput;

/** A county's book and those that it builds on. */
final class BookChain {
    private final BookFolder folder;
    private final BookReader reader;
    private final Map<Path, BookFile> books = new LinkedHashMap<>();

    BookChain(BookFolder folder, List<Fault> faults) {
        this.folder = folder;
        this.reader = new BookReader(faults);
    }

    /** The book and all under it, the lowest first. */
    List<BookFile> downFrom(Path county) {
        Optional<Path> next = Optional.of(county);
        while (next.isPresent()) {
            Path path = next.get();
            BookFile.Layer layer = path.equals(folder.baseline()) ? BookFile.Layer.BASELINE : BookFile.Layer.COUNTY;
            BookFile book = reader.read(path, folder.shown(path), layer);
            books.put(path, book);
            next = book.buildsOn().map(on -> under(path, on));
        }
        List<BookFile> lowestFirst = new ArrayList<>(books.values());
        Collections.reverse(lowestFirst);
        return lowestFirst;
    }

    private Path under(Path book, Node.Scalar on) {
        Path path = path(book, on);
        if (!folder.holds(path)) {
            throw refused(
                    on, on.kind() + " lies outside of the rules folder " + folder.shownAs() + "; keep books inside");
        }
        if (books.containsKey(path)) {
            throw refused(on, folder.shown(path) + " builds on itself; take one builds_on out of the circle");
        }
        if (!Files.isRegularFile(path)) {
            throw refused(
                    on, "there is no book " + folder.shown(path) + "; give its path from the folder of this book");
        }
        folder.refuseLinkOut(path, on.place());
        return path;
    }

    private static Path path(Path book, Node.Scalar on) {
        try {
            return book.resolveSibling(on.text()).normalize();
        } catch (InvalidPathException e) {
            throw refused(on, on.kind() + " is no path; give one such as ../baseline.yaml");
        }
    }

    private static UnusableInput refused(Node.Scalar on, String why) {
        return new UnusableInput(on.place(), "builds_on: " + why);
    }
}
