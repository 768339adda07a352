package org.fallrule.docket;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.fallrule.report.Report;
import org.fallrule.report.docket.DocketEntry;
import org.fallrule.report.docket.EntryOfReport;

/** What is done with each site of a run: checked and filed, or taken over from the run before. Whatever happens, an entry comes of it. */
public final class SiteTask {
    private final PlanReview review;
    private final Optional<Filing> filing;
    private final RunDigest digest;
    private final boolean resume;
    private final AtomicInteger resumed = new AtomicInteger();

    /**
     * @param filing where reports go, if they are written
     * @param digest the digest of what a site's report is made from
     * @param resume whether reports that were made from the same are taken over
     */
    public SiteTask(PlanReview review, Optional<Filing> filing, RunDigest digest, boolean resume) {
        this.review = review;
        this.filing = filing;
        this.digest = digest;
        this.resume = resume;
    }

    /** How many sites were taken over so far. */
    public int resumed() {
        return resumed.get();
    }

    DocketEntry entry(Submittal site) {
        try {
            return filing.isPresent() ? filed(site, filing.get()) : of(review.of(site.path()), site);
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            return broken(site, Causes.of(e));
        }
    }

    /** The digest is taken first: what changes while the site is read then differs from it in the next run. */
    private DocketEntry filed(Submittal site, Filing place) {
        String made = digest.of(site.path());
        Optional<DocketEntry> kept =
                resume ? ReportRecord.entry(place.folder().resolve(site.folder()), made, site) : Optional.empty();
        if (kept.isPresent()) {
            resumed.incrementAndGet();
            return kept.get();
        }
        Report report = review.of(site.path());
        DocketEntry entry = of(report, site);
        Map<String, byte[]> files = ReportRecord.with(place.files(report), made, entry);
        place.put(site.folder(), files);
        return entry;
    }

    private static DocketEntry of(Report report, Submittal site) {
        return EntryOfReport.of(report, site.shown(), site.folder());
    }

    private static DocketEntry broken(Submittal site, List<String> causes) {
        return DocketEntry.broken(site.shown(), site.folder(), site.name(), causes);
    }
}
