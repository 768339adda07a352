package org.fallrule.docket;

import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.bookshelf.Jurisdiction;
import org.fallrule.proposal.Outlook;
import org.fallrule.reader.SharedLayersByFolder;
import org.fallrule.reader.SiteReader;
import org.fallrule.report.Report;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.site.Site;

/** From a site folder to its report. What plans have in common, rule books and shared layers, is read once. */
public final class PlanReview {
    private final BooksInForce books;
    private final RemedySearch remedies;
    private final SharedLayersByFolder shared = new SharedLayersByFolder();

    public PlanReview(BooksInForce books, RemedySearch remedies) {
        this.books = books;
        this.remedies = remedies;
    }

    /**
     * The report of the plan in a folder.
     *
     * @throws org.fallrule.document.UnusableInput with every fault found, if it cannot be checked
     */
    public Report of(Path folder) {
        SiteReader plan = SiteReader.open(folder, shared.around(folder));
        books.readAhead(plan.county(), plan.house());
        Site site = plan.site();
        Jurisdiction place = books.place(site);
        RuleBook book = books.book(place, site);
        SiteAnalysis analysis = SiteAnalysis.of(site, book.locality());
        CompletableFuture<Outlook> outlook = remedies.outlook(analysis, book);
        RemedySearch.Reviewed reviewed = remedies.reviewed(analysis, book, books.day());
        return new Report(analysis, place.spoken(), book, reviewed.review(), reviewed.remedies(), outlook.join());
    }
}
