package org.fallrule.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fallrule.check.Check;
import org.fallrule.check.Parameter;
import org.fallrule.reference.CheckReference;
import org.fallrule.rulebook.Checks;
import org.fallrule.rulebook.RuleLibrary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every check. Nothing here is edited when a check is added. */
class EveryCheckTest {
    private static final Path PAGES = Path.of("docs/checks");
    private static final boolean RENEW = Boolean.getBoolean("fallrule.renew");

    static Collection<Check> checks() {
        return Checks.all().checks();
    }

    @Test
    void everyImplementationIsRegistered() {
        Set<String> registered =
                checks().stream().map(check -> check.getClass().getName()).collect(Collectors.toSet());
        Set<String> written = new ClassFileImporter()
                        .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                        .importPackages("org.fallrule.check")
                        .stream()
                        .filter(type -> type.isAssignableTo(Check.class) && !type.isInterface())
                        .map(JavaClass::getName)
                        .collect(Collectors.toSet());
        assertThat(registered)
                .as("annotate each check with @AutoService(Check.class)")
                .isEqualTo(written);
    }

    @ParameterizedTest
    @MethodSource("checks")
    void hasATestClassOfItsOwn(Check check) throws ClassNotFoundException {
        assertThat(Class.forName(check.getClass().getName() + "Test"))
                .as("write %sTest beside the others", check.getClass().getSimpleName())
                .isNotNull();
    }

    @ParameterizedTest
    @MethodSource("checks")
    void saysWhatItMeasuresAndWhatItCannotSee(Check check) {
        assertThat(check.page().measures()).isNotBlank();
        assertThat(check.page().formula()).isNotBlank();
        assertThat(check.page().source()).isNotBlank();
        assertThat(check.page().blindTo()).isNotEmpty();
        assertThat(check.name()).matches("[a-z]+(_[a-z]+)*");
    }

    @ParameterizedTest
    @MethodSource("checks")
    void everyParameterHasAMeaning(Check check) {
        assertThat(check.parameters()).isNotEmpty().allSatisfy(parameter -> {
            assertThat(parameter.name()).matches("[a-z]+(_[a-z]+)*");
            assertThat(parameter.meaning()).isNotBlank();
        });
        assertThat(check.parameters().stream().map(Parameter::name)).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @MethodSource("checks")
    void isUsedByAShippedRule(Check check) {
        RuleLibrary library = new RuleLibrary(Path.of("rules"), "rules");
        List<String> used = library.counties().stream()
                .flatMap(county -> library.load(county, Optional.empty()).rules().stream())
                .map(rule -> rule.check().name())
                .distinct()
                .toList();
        assertThat(used).as("use it in rules/baseline.yaml").contains(check.name());
    }

    @ParameterizedTest
    @MethodSource("checks")
    void hasAFreshPage(Check check) throws IOException {
        Path page = PAGES.resolve(check.name() + ".md");
        if (RENEW) {
            Files.createDirectories(PAGES);
            Files.writeString(page, CheckReference.page(check));
        }
        assertThat(page)
                .as("renew it: mvn test -Dtest=EveryCheckTest -Dfallrule.renew=true")
                .exists();
        assertThat(Files.readString(page))
                .as(
                        "%s is written from the check; renew it: mvn test -Dtest=EveryCheckTest -Dfallrule.renew=true",
                        page)
                .isEqualTo(CheckReference.page(check));
    }

    @Test
    void noPageIsLeftOfACheckThatIsGone() throws IOException {
        try (Stream<Path> pages = Files.list(PAGES)) {
            assertThat(pages.map(page -> page.getFileName().toString()))
                    .containsExactlyInAnyOrderElementsOf(
                            checks().stream().map(check -> check.name() + ".md").toList());
        }
    }
}
