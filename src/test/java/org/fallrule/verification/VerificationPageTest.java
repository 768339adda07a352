package org.fallrule.verification;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The page that sets the program's figures beside those of others is what the tests hold. */
class VerificationPageTest {
    private static final Path PAGE = Path.of("docs/verification.md");

    @Test
    void pageSaysWhatTheTestsHold() throws IOException {
        String wanted = VerificationPage.write();
        if (Boolean.getBoolean("fallrule.renew")) {
            Files.writeString(PAGE, wanted);
        }
        assertThat(PAGE).as("renew it with -Dfallrule.renew=true").hasContent(wanted);
    }

    @Test
    void enoughFiguresComeFromOutside() {
        assertThat(VerificationPage.figures()).isGreaterThanOrEqualTo(200);
    }
}
