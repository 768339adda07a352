package org.fallrule.method;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fallrule.reference.MethodReference;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * What the test of every method of calculation promises: it agrees with the figures that others have published, and its page,
 * which shows them, is fresh.
 */
public interface MethodContract {
    Path PAGES = Path.of("docs/methods");

    Method method();

    /** Figures from outside; empty only where nobody has printed one that could be read. */
    List<Published> published();

    @TestFactory
    default Stream<DynamicTest> agreesWithWhatIsPublished() {
        return published().stream()
                .map(each -> DynamicTest.dynamicTest(
                        each.given() + " (" + each.source() + ")",
                        () -> assertThat(each.ours().getAsDouble()).isCloseTo(each.printed(), within(each.within()))));
    }

    @Test
    default void isListedAndSaysWhereItComesFrom() {
        Method method = method();
        assertThat(MethodList.all()).as("name it in its package's MethodList").contains(method);
        assertThat(method.name()).matches("[a-z]+(_[a-z]+)*");
        assertThat(method.formulas()).isNotEmpty();
        assertThat(method.symbols()).isNotEmpty();
        assertThat(method.sources()).isNotEmpty();
        assertThat(method.limits()).isNotEmpty();
    }

    @Test
    default void hasAFreshPage() throws IOException {
        Path page = PAGES.resolve(method().name() + ".md");
        String wanted = MethodReference.page(method())
                + (published().isEmpty()
                        ? ""
                        : Published.HEADING
                                + published().stream().map(Published::row).collect(Collectors.joining()));
        if (Boolean.getBoolean("fallrule.renew")) {
            Files.createDirectories(PAGES);
            Files.writeString(page, wanted);
        }
        assertThat(page)
                .as("renew it: mvn test -Dfallrule.renew=true -Dtest="
                        + getClass().getSimpleName())
                .exists();
        assertThat(Files.readString(page))
                .as("%s is written from the method; renew it with -Dfallrule.renew=true", page)
                .isEqualTo(wanted);
    }
}
