package org.fallrule.cli;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.fallrule.Fuzzed;
import org.fallrule.FuzzedFolder;
import org.fallrule.document.Yaml;
import org.fallrule.intake.Intake;
import org.fallrule.intake.Question;

/** Any folder is drafted or refused; what is drafted can be read, and check takes it or says what is open. */
class BeginFuzzTest {
    @FuzzTest
    void anyFolderIsDraftedOrRefused(byte[] bytes) {
        Path folder = FuzzedFolder.of("begin/asked", bytes);
        Ran ran = Ran.command("begin", "--no-ask", "--replace", folder);
        RanWell.must(ran);
        if (ran.code() == Fallrule.PASSES) {
            RanWell.must(Ran.check("--rules", "rules", "--county", "larkmoor", "--remedies", "none", folder));
        }
    }

    /** The answers are picked by the bytes too. */
    @FuzzTest
    void anyFolderIsDraftedWithAnswers(byte[] bytes) {
        Path folder = FuzzedFolder.of("begin/answered", bytes);
        int seed = Arrays.hashCode(bytes);
        Fuzzed.readOrRefuse(() -> {
            String yaml = Intake.draft(folder, Optional.empty(), question -> answer(question, seed))
                    .yaml();
            Yaml.parse(yaml, "site.yaml");
            write(folder.resolve("site.yaml"), yaml);
            RanWell.must(Ran.check("--rules", "rules", "--county", "larkmoor", "--remedies", "none", folder));
        });
    }

    private static Optional<String> answer(Question question, int seed) {
        List<String> choices = question.choices();
        int pick = Math.floorMod(31 * seed + question.key().hashCode(), choices.size() + 1);
        return choices.isEmpty()
                ? question.read("1 ft")
                : choices.stream().skip(pick).findFirst();
    }

    private static void write(Path file, String text) {
        try {
            Files.writeString(file, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
