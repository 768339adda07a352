package org.fallrule.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.bookshelf.Jurisdiction;
import org.fallrule.docket.BooksInForce;
import org.fallrule.reader.SiteReader;
import org.fallrule.report.Report;
import org.fallrule.report.pdf.Paper;
import org.fallrule.report.pdf.PrintSettings;
import org.fallrule.review.Reviewer;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.rulebook.RuleLibrary;
import org.fallrule.site.Site;
import org.junit.jupiter.api.Test;

/** Several plans may be checked at once in one program: what one thread says of a plan, eight say of it too. */
class SitesSideBySideTest {
    private static final LocalDate DAY = LocalDate.of(2026, 6, 1);
    private static final List<String> SAMPLES =
            List.of("harrow-14", "maple-court-2", "plumb-line-1", "quillfeather-8", "thistledown-3");

    private final RuleLibrary library = new RuleLibrary(Path.of("rules"), "rules");

    @Test
    void fortySitesOnEightThreadsAreReportedAsOneByOne() throws Exception {
        Map<String, List<String>> alone = new LinkedHashMap<>();
        for (String sample : SAMPLES) {
            alone.put(sample, written(sample, ReportFormat.values()));
        }
        ExecutorService threads = Executors.newFixedThreadPool(8);
        try {
            List<Future<List<String>>> together = new ArrayList<>();
            for (int i = 0; i < 40; i++) {
                String sample = SAMPLES.get(i % SAMPLES.size());
                // All formats for some, as drawing is what takes longest.
                ReportFormat[] formats = i < 5
                        ? ReportFormat.values()
                        : new ReportFormat[] {ReportFormat.text, ReportFormat.json, ReportFormat.csv};
                together.add(threads.submit(() -> written(sample, formats)));
            }
            for (int i = 0; i < together.size(); i++) {
                String sample = SAMPLES.get(i % SAMPLES.size());
                assertThat(alone.get(sample))
                        .as(sample)
                        .containsAll(together.get(i).get());
            }
        } finally {
            threads.shutdownNow();
        }
    }

    /** The report's files, each with its format before it. */
    private List<String> written(String sample, ReportFormat... formats) {
        Site site = SiteReader.read(Path.of("sample-sites", sample));
        BooksInForce books = new BooksInForce(library, Optional.empty(), Optional.empty(), DAY);
        Jurisdiction place = books.place(site);
        RuleBook book = books.book(place, site);
        SiteAnalysis analysis = SiteAnalysis.of(site, book.locality());
        Report report = new Report(analysis, place.spoken(), book, Reviewer.review(analysis, book, DAY));
        List<String> files = new ArrayList<>();
        for (ReportFormat format : formats) {
            byte[] file = format.write(report, new PrintSettings(Paper.letter, DAY));
            files.add(format + " " + new String(file, StandardCharsets.ISO_8859_1));
        }
        return files;
    }
}
