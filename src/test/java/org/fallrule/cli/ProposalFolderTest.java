package org.fallrule.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.proposal.Proposals;
import org.fallrule.proposal.Proposer;
import org.fallrule.reader.SiteReader;
import org.fallrule.report.pdf.Paper;
import org.fallrule.report.pdf.PrintSettings;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.rulebook.RuleLibrary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProposalFolderTest {
    private static final Path SUBMITTED = Path.of("sample-sites/maple-court-2");
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 1);

    @TempDir
    Path out;

    private static RuleBook rules(String county) {
        return new RuleLibrary(Path.of("rules"), "rules").load(county, Optional.empty(), TODAY);
    }

    private void write(Proposals proposals, SiteAnalysis analysis, RuleBook book) {
        ProposalFolder.prepare(out, SUBMITTED)
                .write(
                        proposals,
                        analysis,
                        "saltmeadow",
                        book,
                        Set.of(),
                        Set.of(ReportFormat.json),
                        new PrintSettings(Paper.letter, TODAY));
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(out)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void olderProposalsStayUntilTheNewOnesAreWhole() throws IOException {
        RuleBook book = rules("saltmeadow");
        SiteAnalysis analysis = SiteAnalysis.of(SiteReader.read(SUBMITTED), book.locality());
        Proposals proposals = Proposer.of(analysis, book, TODAY, Set.of());
        Path old = Files.createDirectories(out.resolve("proposal-7"));
        Files.writeString(old.resolve("site.yaml"), "site: old\n");

        // under the rules of another county they do not pass, which is found out once they are written
        assertThatThrownBy(() -> write(proposals, analysis, rules("larkmoor"))).hasMessageContaining("does not pass");
        assertThat(names()).containsExactly("proposal-7");
        assertThat(old.resolve("site.yaml")).hasContent("site: old");

        Files.createDirectory(out.resolve(".proposals-left"));
        write(proposals, analysis, book);
        assertThat(names()).contains("proposal-1", "proposals.json", "reports").doesNotContain("proposal-7");
        assertThat(names()).noneMatch(name -> name.startsWith("."));
    }
}
