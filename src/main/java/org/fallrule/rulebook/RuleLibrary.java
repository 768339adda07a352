package org.fallrule.rulebook;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.fallrule.document.Fault;
import org.fallrule.document.Keys;
import org.fallrule.document.Place;
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

    /** The rules of a county today, with a firm's own laid over them; see {@link #load(String, Optional, LocalDate)}. */
    public RuleBook load(String county, Optional<String> house) {
        return load(county, house, LocalDate.now(ZoneId.systemDefault()));
    }

    /**
     * The rules of a county on a day, with a firm's own laid over them.
     *
     * @throws UnusableInput with every fault of every book
     */
    public RuleBook load(String county, Optional<String> house, LocalDate day) {
        return open(county, house, day).book();
    }

    /** As {@link #load(String, Optional, LocalDate)}, with what each book wrote. */
    public LayeredBook open(String county, Optional<String> house, LocalDate day) {
        return open(Optional.of(county), house, day);
    }

    /** The rules of the baseline alone, with a firm's own laid over them if one is named. */
    public LayeredBook baseline(Optional<String> house, LocalDate day) {
        return open(Optional.empty(), house, day);
    }

    private LayeredBook open(Optional<String> county, Optional<String> house, LocalDate day) {
        List<Fault> faults = new ArrayList<>();
        LayeredBook book = new Layering(day, faults).layered(books(county, house, faults));
        if (!faults.isEmpty()) {
            throw new UnusableInput(faults.stream().distinct().toList());
        }
        return book;
    }

    /** Every day on which a part of these books begins or has ended to be in force. */
    public List<LocalDate> turns(Optional<String> county, Optional<String> house) {
        TreeSet<LocalDate> turns = new TreeSet<>();
        for (BookFile book : books(county, house, new ArrayList<>())) {
            turns.addAll(book.inForce().turns());
            book.rules()
                    .values()
                    .forEach(rule -> turns.addAll(InForce.read(new Keys(rule, new ArrayList<>()), new ArrayList<>())
                            .turns()));
        }
        return List.copyOf(turns);
    }

    /** The file of the baseline, a county's or a firm's book, as the user knows it. */
    public String shown(Path path) {
        return folder.shown(path.toAbsolutePath().normalize());
    }

    /** The folder's absolute path. */
    public Path folder() {
        return folder.root();
    }

    /** The path of the baseline's book. */
    public Path baselineFile() {
        return folder.baseline();
    }

    /** The path of a county's book. */
    public Path countyFile(String county) {
        return folder.book(COUNTIES, county);
    }

    /** The path of a firm's book. */
    public Path houseFile(String house) {
        return folder.book(HOUSES, house);
    }

    /** A file of the folder by its name, if it is there. */
    public Optional<Path> file(String name) {
        Optional<Path> file = Optional.of(folder.root().resolve(name)).filter(Files::isRegularFile);
        file.ifPresent(path -> folder.refuseLinkOut(path, Place.of(folder.shown(path))));
        return file;
    }

    /** The books, the lowest first. */
    private List<BookFile> books(Optional<String> county, Optional<String> house, List<Fault> faults) {
        try {
            Path lowest = county.map(this::countyFile).orElseGet(folder::baseline);
            List<BookFile> books = new BookChain(folder, faults).downFrom(lowest);
            house.map(this::houseFile)
                    .map(path -> new BookReader(faults).read(path, folder.shown(path), BookFile.Layer.HOUSE))
                    .ifPresent(books::add);
            return books;
        } catch (UnusableInput e) {
            faults.addAll(e.faults());
            throw new UnusableInput(faults);
        }
    }
}
