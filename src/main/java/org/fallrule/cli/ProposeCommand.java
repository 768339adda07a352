package org.fallrule.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.bookshelf.Jurisdiction;
import org.fallrule.docket.BooksInForce;
import org.fallrule.document.Nearest;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.proposal.Proposals;
import org.fallrule.proposal.Proposer;
import org.fallrule.reader.SiteReader;
import org.fallrule.report.Visible;
import org.fallrule.report.pdf.Paper;
import org.fallrule.report.pdf.PrintSettings;
import org.fallrule.report.proposal.ProposalText;
import org.fallrule.rulebook.Rule;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.site.Site;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Looks for lines that pass. */
@Command(
        name = "propose",
        mixinStandardHelpOptions = true,
        description =
                "Looks for a line from every inlet of a plan to a legal outfall that meets every binding rule: its way,"
                        + " grades, sizes and cleanouts, proved by a check. At most three that clearly differ, each with what it"
                        + " takes to build.",
        footer = {
            "",
            "Exit code: 0 a line is proposed, 1 none was found, 2 the input or the command could not be",
            "used. With --out each proposal is written as a site folder that check accepts, and its report."
        })
final class ProposeCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "SITE", description = "Site folder.")
    private Path folder = Path.of("");

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Where to write proposal-1, proposal-2, ... and proposals.json.")
    private Optional<Path> out = Optional.empty();

    @Option(
            names = "--without",
            paramLabel = "RULE",
            split = ",",
            description = "Leave a rule out of account that no line can meet. The plan then still misses it.")
    private Set<String> without = new LinkedHashSet<>();

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            split = ",",
            description = "What to write of each report: ${COMPLETION-CANDIDATES}. All by default.")
    private Set<ReportFormat> formats = EnumSet.allOf(ReportFormat.class);

    @Option(names = "--paper", paramLabel = "SIZE", description = "${COMPLETION-CANDIDATES}. Default: letter.")
    private Paper paper = Paper.letter;

    @Mixin
    private BookOptions books = new BookOptions();

    @Option(
            names = "--today",
            paramLabel = "DATE",
            description = "The day on which rules are in force. Default: today.")
    private LocalDate today = LocalDate.now(ZoneId.systemDefault());

    @Override
    public Integer call() {
        BooksInForce inForce = books.inForce(books.library(), today);
        Optional<ProposalFolder> place = out.map(to -> ProposalFolder.prepare(to, folder));
        Site site = SiteReader.read(folder);
        Jurisdiction jurisdiction = inForce.place(site);
        RuleBook book = inForce.book(jurisdiction, site);
        refuseUnknown(book);
        SiteAnalysis analysis = SiteAnalysis.of(site, book.locality());
        Proposals proposals = Proposer.of(analysis, book, today, without);
        place.ifPresent(to -> to.write(
                proposals, analysis, jurisdiction.spoken(), book, without, formats, new PrintSettings(paper, today)));
        PrintWriter screen = spec.commandLine().getOut();
        screen.print(ProposalText.write(analysis, book, proposals, without));
        place.filter(any -> !proposals.proposals().isEmpty())
                .ifPresent(to -> screen.println(Visible.of("\nProposals written to " + to.shown())));
        screen.flush();
        return proposals.proposals().isEmpty() ? Fallrule.FAILS : Fallrule.PASSES;
    }

    private void refuseUnknown(RuleBook book) {
        Set<String> known = book.rules().stream().map(Rule::id).collect(Collectors.toCollection(TreeSet::new));
        List<String> unknown = new ArrayList<>(without);
        unknown.removeAll(known);
        if (!unknown.isEmpty()) {
            throw new UnusableInput(
                    Place.of("--without"),
                    "no rule that applies here is called " + unknown.get(0) + Nearest.hint(unknown.get(0), known));
        }
    }
}
