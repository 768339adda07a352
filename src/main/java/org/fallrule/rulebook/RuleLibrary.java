package org.fallrule.rulebook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.document.Fault;
import org.fallrule.document.Nearest;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;

/** A folder of rule books: {@code baseline.yaml}, {@code counties/*.yaml}, {@code house/*.yaml}. */
public final class RuleLibrary {
    private final Path folder;
    private final String shownAs;

    /**
     * @param folder the folder
     * @param shownAs its path as the user knows it, without a slash at the end
     */
    public RuleLibrary(Path folder, String shownAs) {
        this.folder = folder;
        this.shownAs = shownAs;
    }

    /** The names of the counties that have a book. */
    public List<String> counties() {
        return namesIn("counties");
    }

    /** The names of the firms that have a book. */
    public List<String> houses() {
        return namesIn("house");
    }

    /**
     * The rules of a county, with a firm's own laid over them.
     *
     * @throws UnusableInput with every fault of every book
     */
    public RuleBook load(String county, Optional<String> house) {
        List<Fault> faults = new ArrayList<>();
        List<BookFile> books = countyBooks(county, faults);
        house.ifPresent(name -> books.add(
                new BookReader(faults).read(book("house", name), shown("house", name), BookFile.Layer.HOUSE)));
        RuleBook book = new Layering(faults).layered(books);
        if (!faults.isEmpty()) {
            throw new UnusableInput(faults);
        }
        return book;
    }

    private List<BookFile> countyBooks(String county, List<Fault> faults) {
        BookReader reader = new BookReader(faults);
        Map<Path, BookFile> chain = new LinkedHashMap<>();
        Optional<Path> next = Optional.of(book("counties", county));
        while (next.isPresent()) {
            Path path = next.get().toAbsolutePath().normalize();
            String shown = shown(path);
            refuseOutside(path, shown);
            boolean isBaseline = path.equals(root().resolve("baseline.yaml"));
            BookFile book = reader.read(path, shown, isBaseline ? BookFile.Layer.BASELINE : BookFile.Layer.COUNTY);
            if (chain.putIfAbsent(path, book) != null) {
                throw new UnusableInput(Place.of(shown), "builds on itself; take one builds_on out of the circle");
            }
            next = book.buildsOn().map(on -> path.resolveSibling(on));
        }
        List<BookFile> books = new ArrayList<>(chain.values());
        java.util.Collections.reverse(books);
        return books;
    }

    private Path book(String kind, String name) {
        List<String> known = namesIn(kind);
        if (!known.contains(name)) {
            throw new UnusableInput(
                    Place.of(shownAs + "/" + kind),
                    "there is no book " + name + ".yaml here" + Nearest.hint(name, known) + " Known: "
                            + (known.isEmpty() ? "none" : String.join(", ", known)));
        }
        return root().resolve(kind).resolve(name + ".yaml");
    }

    private Path root() {
        return folder.toAbsolutePath().normalize();
    }

    private String shown(String kind, String name) {
        return shownAs + "/" + kind + "/" + name + ".yaml";
    }

    private String shown(Path path) {
        return path.startsWith(root())
                ? shownAs + "/" + root().relativize(path).toString().replace('\\', '/')
                : path.toString();
    }

    private void refuseOutside(Path path, String shown) {
        if (!path.startsWith(root())) {
            throw new UnusableInput(
                    Place.of(shown), "lies outside of the rules folder " + shownAs + "; keep books inside");
        }
    }

    private List<String> namesIn(String kind) {
        Path place = root().resolve(kind);
        if (!Files.isDirectory(place)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(place)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".yaml") && !name.endsWith(".examples.yaml"))
                    .map(name -> name.substring(0, name.length() - ".yaml".length()))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UnusableInput(Place.of(shownAs + "/" + kind), "cannot be listed: " + e);
        }
    }
}
