package org.fallrule.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The links from page to page lead to files that are there. */
class LinksOfPagesTest {
    private static final Pattern LINK = Pattern.compile("]\\(([^)#\\s]+)(?:#[^)\\s]*)?\\)");

    static List<Path> pages() throws IOException {
        try (Stream<Path> docs = Files.walk(Path.of("docs"));
                Stream<Path> samples = Files.walk(Path.of("sample-sites"))) {
            return Stream.of(Stream.of(Path.of("README.md"), Path.of("DEVELOPERS.md")), docs, samples)
                    .flatMap(paths -> paths)
                    .filter(path -> path.toString().endsWith(".md"))
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("pages")
    void eachLeadsToAFile(Path page) throws IOException {
        List<String> broken = LINK.matcher(Files.readString(page))
                .results()
                .map(link -> link.group(1))
                .filter(link -> !link.contains(":"))
                .filter(link -> !Files.exists(page.resolveSibling(link).normalize()))
                .toList();

        assertThat(broken).isEmpty();
    }
}
