package org.fallrule.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.proposal.Outlook;
import org.fallrule.proposal.Proposal;
import org.fallrule.proposal.Proposals;
import org.fallrule.reader.SiteReader;
import org.fallrule.remedy.Remedies;
import org.fallrule.remedy.SiteWriter;
import org.fallrule.report.Report;
import org.fallrule.report.pdf.PrintSettings;
import org.fallrule.report.proposal.ProposalJson;
import org.fallrule.review.Review;
import org.fallrule.review.Reviewer;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.site.Site;

/** The folder that proposals go to: each as a site folder, which is read and checked again, and its report. */
final class ProposalFolder {
    private static final String PROPOSAL = "proposal-";
    private static final String REPORTS = "reports";
    /** Where proposals are made before they take their places. */
    private static final String ASIDE = ".proposals-";

    private static final String SUMMARY = "proposals.json";

    private final Path folder;
    private final Path submitted;

    private ProposalFolder(Path folder, Path submitted) {
        this.folder = folder;
        this.submitted = submitted;
    }

    /**
     * Makes the folder ready before anything is looked for.
     *
     * @throws UnusableInput if it cannot be written to, lies inside of the site, or holds what is no proposal
     */
    static ProposalFolder prepare(Path folder, Path submitted) {
        OutFolder.refuseInside(folder, submitted, "proposals");
        OutFolder.ready(folder);
        try {
            refuseForeign(folder);
        } catch (IOException e) {
            throw OutFolder.unwritable(folder, e);
        }
        return new ProposalFolder(folder, submitted);
    }

    private static void refuseForeign(Path folder) throws IOException {
        for (Path path : listed(folder)) {
            String name = String.valueOf(path.getFileName());
            if (!name.startsWith(ASIDE)
                    && !name.equals(SUMMARY)
                    && !name.equals(REPORTS)
                    && !name.matches(PROPOSAL + "[0-9]+")) {
                throw new UnusableInput(
                        Place.of(folder.toString()),
                        "holds " + name + ", which is no proposal; move it, or name another --out");
            }
        }
    }

    private static List<Path> listed(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.toList();
        }
    }

    String shown() {
        return folder.toString();
    }

    /** Writes each proposal and its report, whole, and then puts them in the place of older ones; on a failure these stay. */
    void write(
            Proposals proposals,
            SiteAnalysis analysis,
            String county,
            RuleBook book,
            Set<String> without,
            Set<ReportFormat> formats,
            PrintSettings settings) {
        try {
            Path aside = Files.createTempDirectory(folder, ASIDE);
            try {
                int number = 0;
                for (Proposal proposal : proposals.proposals()) {
                    number++;
                    Path place = aside.resolve(PROPOSAL + number);
                    SiteWriter.write(proposal.analysis().site(), submitted, place);
                    report(proposal, place, analysis.site(), county, book, without, formats, settings);
                }
                Files.writeString(
                        aside.resolve(SUMMARY),
                        ProposalJson.write(analysis, book, proposals, without),
                        StandardCharsets.UTF_8);
                replace(aside);
            } finally {
                delete(aside);
            }
        } catch (IOException e) {
            throw new UnusableInput(Place.of(folder.toString()), "the proposals could not be written: " + e);
        }
    }

    private void replace(Path aside) throws IOException {
        for (Path old : listed(folder)) {
            if (!old.equals(aside)) {
                delete(old);
            }
        }
        for (Path fresh : listed(aside)) {
            Files.move(fresh, folder.resolve(fresh.getFileName()));
        }
    }

    /** Reads the folder as whoever gets it will, reviews it again, and writes the report of that. */
    private void report(
            Proposal proposal,
            Path place,
            Site plan,
            String county,
            RuleBook book,
            Set<String> without,
            Set<ReportFormat> formats,
            PrintSettings settings) {
        Site site = SiteReader.read(place);
        SiteAnalysis analysis = SiteAnalysis.of(site, book.locality());
        Review review = Reviewer.review(analysis, book, settings.reviewed());
        review.findings().stream()
                .filter(finding -> finding.failsPlan() && !without.contains(finding.rule()))
                .findFirst()
                .ifPresent(finding -> {
                    throw new IllegalStateException(
                            "the proposal in " + place + " does not pass once it is written: " + finding.rule());
                });
        ReportFolder.prepare(place.resolveSibling(REPORTS), List.of(place), formats, settings)
                .write(new Report(
                        analysis,
                        county,
                        book,
                        review,
                        Remedies.NONE,
                        Outlook.of(analysis, book).of(proposal, plan)));
    }

    private static void delete(Path tree) throws IOException {
        List<Path> all;
        try (Stream<Path> paths = Files.walk(tree)) {
            all = paths.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path path : all) {
            Files.delete(path);
        }
    }
}
