package org.fallrule.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProposeCommandTest {
    private static Ran propose(Object... words) {
        return Ran.command(Stream.concat(Stream.of("propose", "--today", "2026-06-01"), Arrays.stream(words))
                .toArray());
    }

    @Test
    void eachProposalIsASiteFolderThatCheckPasses(@TempDir Path out) throws IOException {
        Path folder = out.resolve("lines");

        Ran ran = propose("sample-sites/maple-court-2", "--out", folder, "--format", "svg,json,html,text");

        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("Proposal 1", "proved by a review", "screening aid");
        assertThat(ran.out().lines()).allMatch(line -> line.length() <= 80 || line.contains("Proposals written"));
        assertThat(Ran.check("--quiet", folder.resolve("proposal-1")).code()).isZero();
        assertThat(Files.readString(folder.resolve("reports/proposal-1/plan.svg")))
                .contains("drain as submitted", "an outfall may stand here");
        assertThat(Files.readString(folder.resolve("reports/proposal-1/report.html")))
                .contains("What it takes to build", "<th scope=\"row\">trench dug</th>", "An outfall may stand in");
        assertThat(Files.readString(folder.resolve("reports/proposal-1/report.txt")))
                .contains("WHAT IT TAKES TO BUILD", "  spoil to haul off: ");
        assertThat(Files.readString(folder.resolve("proposals.json")))
                .contains("fallrule-proposals/1", "\"folder\" : \"proposal-1\"");
    }

    @Test
    void whereNoneIsFoundTheRulesInTheWayAreNamed() {
        Ran ran = propose("sample-sites/harrow-14");

        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.out())
                .contains("No line was found", "ground-falls-from-house", "fails whatever the line")
                .contains("An outfall may stand nowhere", "outfall-lot-line-setback", "still none")
                .contains("where its water runs also by", "outfall-flow-across-walk", "--without");
    }

    @Test
    void whereTheSubmittedLinePassesItIsNotSaidThatThereIsNone(@TempDir Path out) {
        Path folder = out.resolve("lines");

        Ran ran = propose("sample-sites/plumb-line-1", "--out", folder, "--format", "json");

        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("along the course that", "course     as submitted");
        assertThat(Ran.check("--quiet", folder.resolve("proposal-1")).code()).isZero();
    }

    @Test
    void withoutGroundThereIsNothingToGoBy() {
        Ran ran = propose("sample-sites/thistledown-3");

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("has no ground", "spot elevations");
    }

    @Test
    void aRuleThatThereIsNotCannotBeLeftOut() {
        Ran ran = propose("sample-sites/harrow-14", "--without", "ground-falls-from-hose");

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("ground-falls-from-house");
    }

    @Test
    void aFolderWithOtherThingsInItIsLeftAlone(@TempDir Path out) throws IOException {
        Files.writeString(out.resolve("letter.txt"), "mine");

        Ran ran = propose("sample-sites/maple-court-2", "--out", out);

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("letter.txt");
        assertThat(out.resolve("letter.txt")).exists();
    }
}
