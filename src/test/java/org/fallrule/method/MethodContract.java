package org.fallrule.method;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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
    Path VALUES = Path.of("src/main/resources/org/fallrule/method", PublishedValues.FILE);

    Method method();

    /** Our figure for a published one of this method, from the inputs given with it, in its unit. */
    default double ours(Given given) {
        throw new AssertionError("say how " + given.what() + " is computed: " + given.value());
    }

    @TestFactory
    default Stream<DynamicTest> agreesWithWhatIsPublished() {
        return PublishedValues.of(method().name()).stream()
                .map(each -> DynamicTest.dynamicTest(
                        each.what() + " of " + each.inputs() + ", " + each.source() + ", " + each.known(),
                        () -> assertThat(ours(new Given(each)))
                                .isCloseTo(
                                        Double.parseDouble(each.published()),
                                        within(Double.parseDouble(each.within())))));
    }

    @Test
    default void printsWhatItComputesBesideThePublishedFigures() throws IOException {
        List<PublishedValue> values = PublishedValues.of(method().name());
        if (Boolean.getBoolean("fallrule.renew") && !values.isEmpty()) {
            List<String> lines = new ArrayList<>(Files.readAllLines(VALUES));
            values.forEach(each -> lines.set(
                    each.place().line() - 1,
                    lines.get(each.place().line() - 1).replaceFirst("ours: [^,}]*", "ours: " + printed(each))));
            Files.write(VALUES, lines);
            return;
        }
        assertThat(values)
                .allSatisfy(each -> assertThat(each.ours())
                        .as("ours, in " + each.place() + "; renew it with -Dfallrule.renew=true")
                        .isEqualTo(printed(each)));
    }

    /** Our figure with as many digits as the published one, at least four. */
    private String printed(PublishedValue value) {
        int digits = Math.max(4, new BigDecimal(value.published()).precision());
        return new BigDecimal(ours(new Given(value)), new MathContext(digits))
                .stripTrailingZeros()
                .toPlainString();
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
        String wanted = MethodReference.page(method());
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
