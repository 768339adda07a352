package org.fallrule.docket;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ConcurrentHashMap;
import org.fallrule.bookshelf.CountyMap;
import org.fallrule.bookshelf.Jurisdiction;
import org.fallrule.document.Excerpt;
import org.fallrule.document.Nearest;
import org.fallrule.document.Node;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.rulebook.RuleLibrary;
import org.fallrule.site.Site;
import org.jspecify.annotations.Nullable;

/** The rule books of one run: each county's and firm's read once, however many plans they are held against. */
public final class BooksInForce {
    private record Drawn(Optional<CountyMap> map) {}

    private record Chosen(String county, Optional<String> house) {}

    private final RuleLibrary library;
    private final Optional<String> county;
    private final Optional<String> house;
    private final LocalDate day;
    private final Map<Chosen, CompletableFuture<RuleBook>> read = new ConcurrentHashMap<>();
    private @Nullable Drawn drawn;

    /**
     * @param county the county that is named for every plan, if one is
     * @param house the firm that is named for every plan, if one is
     * @param day the day that the books are to be in force on
     */
    public BooksInForce(RuleLibrary library, Optional<String> county, Optional<String> house, LocalDate day) {
        this.library = library;
        this.county = county;
        this.house = house;
        this.day = day;
    }

    public LocalDate day() {
        return day;
    }

    /** The county or counties whose rules apply to a plan. */
    public Jurisdiction place(Site site) {
        Place inPlan = Place.of("site.yaml");
        site.county()
                .filter(any -> county.isEmpty())
                .ifPresent(name -> refuseUnknown("county", name, inPlan, library.counties()));
        return Jurisdiction.of(county, site, library, map());
    }

    /** The firm whose rules are laid over those of a plan's county. */
    public Optional<String> house(Site site) {
        return house.or(site::house);
    }

    /** The rules that apply to a plan in its place. */
    public RuleBook book(Jurisdiction place, Site site) {
        return place.book(name -> whole(begun(new Chosen(name, house(site)))));
    }

    /**
     * Begins to read the books that a plan names, on another thread, as its layers take as long.
     *
     * @throws UnusableInput at the line of the plan that names a book that there is not
     */
    void readAhead(Optional<Node.Scalar> planCounty, Optional<Node.Scalar> planHouse) {
        planCounty
                .filter(any -> county.isEmpty())
                .ifPresent(name -> refuseUnknown("county", name.text(), name.place(), library.counties()));
        planHouse
                .filter(any -> house.isEmpty())
                .ifPresent(name -> refuseUnknown("house", name.text(), name.place(), library.houses()));
        county.or(() -> planCounty.map(Node.Scalar::text)).ifPresent(name -> {
            CompletableFuture<RuleBook> unused =
                    begun(new Chosen(name, house.or(() -> planHouse.map(Node.Scalar::text))));
        });
    }

    private static void refuseUnknown(String key, String name, Place where, List<String> known) {
        if (!known.contains(name)) {
            throw new UnusableInput(
                    where,
                    key + ": there is no book " + Excerpt.of(name) + ".yaml" + Nearest.hint(name, known) + " Known: "
                            + (known.isEmpty() ? "none" : String.join(", ", known)));
        }
    }

    private CompletableFuture<RuleBook> begun(Chosen books) {
        return read.computeIfAbsent(
                books,
                chosen -> CompletableFuture.supplyAsync(() -> library.load(chosen.county(), chosen.house(), day)));
    }

    private static RuleBook whole(CompletableFuture<RuleBook> book) {
        try {
            return book.join();
        } catch (CompletionException e) {
            throw e.getCause() instanceof UnusableInput refused ? refused : e;
        }
    }

    private synchronized Optional<CountyMap> map() {
        Drawn known = drawn;
        if (known == null) {
            known = new Drawn(CountyMap.of(library));
            drawn = known;
        }
        return known.map();
    }
}
