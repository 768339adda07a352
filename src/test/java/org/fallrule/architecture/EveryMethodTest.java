package org.fallrule.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fallrule.method.Method;
import org.fallrule.method.MethodContract;
import org.fallrule.method.MethodList;
import org.fallrule.method.PublishedValue;
import org.fallrule.method.PublishedValues;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every method of calculation. Nothing here is edited when one is added. */
class EveryMethodTest {

    static List<JavaClass> classesWithAMethod() {
        return new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS).importPackages("org.fallrule").stream()
                        .filter(type -> type.getFields().stream().anyMatch(EveryMethodTest::describesAMethod))
                        .toList();
    }

    private static boolean describesAMethod(JavaField field) {
        return field.getName().equals("METHOD") && field.getRawType().isEquivalentTo(Method.class);
    }

    @ParameterizedTest
    @MethodSource("classesWithAMethod")
    void hasATestThatHoldsItAgainstPublishedFigures(JavaClass type) throws ClassNotFoundException {
        assertThat(MethodContract.class)
                .as("let %sTest implement MethodContract", type.getSimpleName())
                .isAssignableFrom(Class.forName(type.getName() + "Test"));
    }

    @Test
    void namesAreUniqueAndNoneIsForgottenInTheLists() {
        assertThat(MethodList.all().stream().map(Method::name)).doesNotHaveDuplicates();
        assertThat(MethodList.all())
                .as("name every METHOD in its package's MethodList")
                .hasSameSizeAs(classesWithAMethod());
    }

    @Test
    void noPageIsLeftOfAMethodThatIsGone() throws IOException {
        Set<String> names =
                MethodList.all().stream().map(method -> method.name() + ".md").collect(Collectors.toSet());
        try (Stream<Path> pages = Files.list(MethodContract.PAGES)) {
            assertThat(pages.map(page -> page.getFileName().toString())).isSubsetOf(names);
        }
    }

    /** That each is computed and compared is the promise of {@link MethodContract}. */
    @Test
    void atLeastAHundredAndTwentyFiguresFromOutsideAreHeldAgainstTheMethods() {
        Map<String, List<PublishedValue>> figures = PublishedValues.all();
        assertThat(figures.keySet())
                .as("names of methods")
                .isSubsetOf(MethodList.all().stream().map(Method::name).toList());
        assertThat(figures.values().stream().mapToInt(List::size).sum()).isGreaterThanOrEqualTo(120);
    }

    @Test
    void everyFigureFromOutsideSaysWhereItStandsAndHowItIsKnown() {
        assertThat(PublishedValues.all().values().stream().flatMap(List::stream))
                .allSatisfy(each -> {
                    assertThat(each.source()).isNotBlank();
                    assertThat(each.known()).matches("from memory|read\\b.*");
                    assertThat(each.inputs()).isNotEmpty();
                });
    }
}
