package org.fallrule.rulebook;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.document.Fault;
import org.fallrule.document.UnusableInput;

/** A folder of rule books: {@code baseline.yaml}, {@code counties/*.yaml}, {@code house/*.yaml}. */
public final class RuleLibrary {
    private static final String COUNTIES = "counties";
    private static final String HOUSES = "house";

    private final BookFolder folder;

    /**
     * @param folder the folder
     * @param shownAs its path as the user knows it, without a slash at the end
     */
    public RuleLibrary(Path folder, String shownAs) {
        this.folder = new BookFolder(folder, shownAs);
    }

    /** The names of the counties that have a book. */
    public List<String> counties() {
        return folder.names(COUNTIES);
    }

    /** The names of the firms that have a book. */
    public List<String> houses() {
        return folder.names(HOUSES);
    }

    /**
     * The rules of a county, with a firm's own laid over them.
     *
     * @throws UnusableInput with every fault of every book
     */
    public RuleBook load(String county, Optional<String> house) {
        List<Fault> faults = new ArrayList<>();
        RuleBook book = new Layering(faults).layered(books(county, house, faults));
        if (!faults.isEmpty()) {
            throw new UnusableInput(faults);
        }
        return book;
    }

    /** The books, the lowest first. */
    private List<BookFile> books(String county, Optional<String> house, List<Fault> faults) {
        try {
            List<BookFile> books = new BookChain(folder, faults).downFrom(folder.book(COUNTIES, county));
            house.map(name -> folder.book(HOUSES, name))
                    .map(path -> new BookReader(faults).read(path, folder.shown(path), BookFile.Layer.HOUSE))
                    .ifPresent(books::add);
            return books;
        } catch (UnusableInput e) {
            faults.addAll(e.faults());
            throw new UnusableInput(faults);
        }
    }
}
