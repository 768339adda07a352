package org.fallrule.bookshelf;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.rulebook.RuleLibrary;
import org.fallrule.rulebook.StricterBook;
import org.fallrule.site.Feature;
import org.fallrule.site.Site;

/**
 * The county whose rules apply to a plan, or the counties on whose line the lot lies.
 *
 * @param counties their names, one or more
 * @param statedBy who says so
 * @param notices what a reader of the report should know of it
 */
public record Jurisdiction(List<String> counties, Place statedBy, List<Fault> notices) {
    private static final Place IN_PLAN = Place.of("site.yaml").field("county");

    public Jurisdiction {
        counties = List.copyOf(counties);
        notices = List.copyOf(notices);
    }

    /**
     * The county that is named, on the command line or by the plan; else where the plan's own lot lies.
     *
     * @param named the county named on the command line
     * @throws UnusableInput when none is named and the lot's place does not tell
     */
    public static Jurisdiction of(Optional<String> named, Site site, RuleLibrary library) {
        return of(named, site, library, CountyMap.of(library));
    }

    /** As {@link #of(Optional, Site, RuleLibrary)}, by a map that has been read. */
    public static Jurisdiction of(Optional<String> named, Site site, RuleLibrary library, Optional<CountyMap> map) {
        Optional<Place> lot = site.ownLot().map(Feature::origin);
        Optional<LotOnMap> place = site.ownLot().map(own -> new LotOnMap(own.geometry(), site.frame()));
        List<CountyArea> found = map.flatMap(each -> place.map(each::at)).orElse(List.of());
        String file = map.map(CountyMap::file).orElse("");
        Optional<String> stated = named.or(site::county);
        if (stated.isPresent()) {
            return stated(stated.get(), named.isPresent() ? Place.of("--county") : IN_PLAN, names(found), file);
        }
        if (found.isEmpty()) {
            throw unknown(library, map.isPresent(), lot.isPresent(), file);
        }
        return found(found, place.orElseThrow(), file);
    }

    private static Jurisdiction stated(String county, Place by, List<String> found, String file) {
        boolean agrees = found.isEmpty() || found.equals(List.of(county));
        return new Jurisdiction(
                List.of(county),
                by,
                agrees
                        ? List.of()
                        : List.of(new Fault(
                                by,
                                "names " + county + ", whose rules alone are applied, but by " + file + " the lot lies "
                                        + where(found) + "; ask whose rules govern")));
    }

    private static Jurisdiction found(List<CountyArea> found, LotOnMap lot, String file) {
        List<String> names = names(found);
        List<Fault> notices = new ArrayList<>();
        String says = "says no county; by " + file + " the lot lies " + where(names);
        notices.add(new Fault(
                IN_PLAN,
                names.size() == 1
                        ? says + ", whose rules are applied; name the county to settle it"
                        : says
                                + ", so that the rules of both are applied, of each the stricter; ask whose rules govern,"
                                + " and name that county"));
        if (lot.leaves(found)) {
            notices.add(new Fault(
                    IN_PLAN, "a part of the lot lies outside of the counties in " + file + "; ask what applies there"));
        }
        return new Jurisdiction(names, Place.of(file), notices);
    }

    private static UnusableInput unknown(RuleLibrary library, boolean mapped, boolean lot, String file) {
        String why = "";
        if (mapped) {
            why = lot
                    ? " (the lot lies in none of the counties in " + file + ")"
                    : " (the plan's own lot, which would tell by " + file + ", is not known)";
        }
        return new UnusableInput(
                IN_PLAN,
                "says no county; name one of " + String.join(", ", library.counties()) + ", here or with --county" + why
                        + "; a county without a book begins with two lines: docs/rule-books.md");
    }

    private static List<String> names(List<CountyArea> areas) {
        return areas.stream().map(CountyArea::county).distinct().toList();
    }

    private static String where(List<String> counties) {
        return counties.size() == 1 ? "in " + counties.get(0) : "on the line of " + String.join(" and ", counties);
    }

    /** The counties in a sentence: {@code larkmoor and saltmeadow}. */
    public String spoken() {
        return String.join(" and ", counties);
    }

    /** Their rules on a day, with a firm's own laid over each; of several the stricter. */
    public RuleBook book(RuleLibrary library, Optional<String> house, LocalDate day) {
        return book(county -> library.load(county, house, day));
    }

    /** Their rules, those of each county got by its name; of several the stricter. */
    public RuleBook book(Function<String, RuleBook> ofCounty) {
        String names = counties.get(0);
        RuleBook book = ofCounty.apply(names);
        for (String county : counties.subList(1, counties.size())) {
            book = StricterBook.of(names, book, county, ofCounty.apply(county), statedBy);
            names = names + " and " + county;
        }
        return new RuleBook(
                book.books(),
                book.locality(),
                book.rules(),
                Stream.concat(notices.stream(), book.notices().stream()).toList(),
                book.checklist(),
                book.asBuilt());
    }
}
