package org.fallrule.bookshelf;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.review.Review;
import org.fallrule.review.Reviewer;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.site.Site;

/**
 * A small plan beside a rule book, and what the book's rules should make of it.
 *
 * @param name its name, a sentence
 * @param place where it stands
 * @param site the plan
 * @param county the county whose rules a firm's book is laid over; empty for the baseline, and beside a county's own book
 * @param day the day of review; empty for today
 * @param expected what is expected
 */
public record Example(
        String name,
        Place place,
        Site site,
        Optional<String> county,
        Optional<LocalDate> day,
        List<Expectation> expected) {

    public Example {
        expected = List.copyOf(expected);
    }

    /** Reviews the plan under a book and holds the result against what is expected. */
    Held held(RuleBook book, LocalDate reviewed) {
        Review review = Reviewer.review(SiteAnalysis.of(site, book.locality()), book, reviewed);
        List<Fault> misses = new ArrayList<>();
        for (Expectation each : expected) {
            each.missed(review, book).ifPresent(says -> misses.add(new Fault(each.place(), says)));
        }
        return new Held(name, place, misses, Optional.of(review));
    }

    /**
     * How an example came out.
     *
     * @param misses what is otherwise than expected
     * @param review what the rules made of its plan; empty when its book could not be used
     */
    public record Held(String name, Place place, List<Fault> misses, Optional<Review> review) {
        public Held {
            misses = List.copyOf(misses);
        }

        public boolean holds() {
            return misses.isEmpty();
        }
    }
}
