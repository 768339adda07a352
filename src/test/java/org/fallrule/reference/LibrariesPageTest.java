package org.fallrule.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.geotools.api.filter.Filter;
import org.junit.jupiter.api.Test;

/** The page of libraries and their licences is what the build resolves. */
class LibrariesPageTest {
    private static final Path PAGE = Path.of("docs/dependencies.md");
    private static final Path PROGRAM = Path.of("target/libraries.txt");
    private static final Path TESTS = Path.of("target/test-libraries.txt");

    /** {@code (licence) (licence) name (group:artifact:version - address)}. */
    private static final Pattern LINE = Pattern.compile("((?:\\([^()]*\\) )+).*\\(([^ :]+:[^ :]+):([^ :]+) - [^ ]*\\)");

    private static final Pattern LICENCE = Pattern.compile("\\(([^()]*)\\)");
    private static final Pattern LICENCE_IN_POM =
            Pattern.compile("<license>.*?<name>(.*?)</name>.*?</license>", Pattern.DOTALL);

    private record Library(String name, String version, String licence) implements Comparable<Library> {
        @Override
        public int compareTo(Library other) {
            return name.compareTo(other.name);
        }

        String row() {
            return "| " + name + " | " + version + " | " + licence + " |\n";
        }
    }

    @Test
    void pageListsWhatTheBuildResolves() throws IOException {
        String wanted = page();
        if (Boolean.getBoolean("fallrule.renew")) {
            Files.writeString(PAGE, wanted);
        }
        assertThat(PAGE)
                .as("written from what Maven resolves; renew it with -Dfallrule.renew=true")
                .hasContent(wanted);
    }

    private static String page() throws IOException {
        StringBuilder page = new StringBuilder("""
                # Libraries

                Written from what the build resolves; edit nothing here. Licences are as each library's own description names
                them.

                ## In the program

                """);
        table(page, read(PROGRAM));
        page.append("""

                `org.datasyslab:geotools-wrapper` is GeoTools with what it needs in one file. Inside it, as far as each part
                says so (a dash where its description leaves the licence to its parent's), and beside these the HSQLDB database
                engine under the licence of the HSQL Development Group, a BSD licence:

                """);
        table(page, inGeoTools());
        page.append("""

                ## In the tests only

                """);
        table(page, read(TESTS));
        return page.toString();
    }

    private static void table(StringBuilder page, List<Library> libraries) {
        page.append("| library | version | licence |\n| --- | --- | --- |\n");
        new TreeSet<>(libraries).forEach(library -> page.append(library.row()));
    }

    private static List<Library> read(Path list) throws IOException {
        List<Library> libraries = new ArrayList<>();
        for (String line : Files.readAllLines(list)) {
            Matcher parts = LINE.matcher(line.strip());
            if (parts.matches()) {
                libraries.add(new Library(parts.group(2), parts.group(3), named(LICENCE, parts.group(1))));
            }
        }
        assertThat(libraries).as("libraries in %s", list).hasSizeGreaterThan(10);
        return libraries;
    }

    private static List<Library> inGeoTools() throws IOException {
        Path jar = Path.of(
                Filter.class.getProtectionDomain().getCodeSource().getLocation().getPath());
        List<Library> libraries = new ArrayList<>();
        try (ZipFile zip = new ZipFile(jar.toFile())) {
            for (ZipEntry entry : zip.stream()
                    .filter(each -> each.getName().startsWith("META-INF/maven/")
                            && each.getName().endsWith("/pom.properties"))
                    .toList()) {
                Properties said = new Properties();
                try (InputStream in = zip.getInputStream(entry)) {
                    said.load(in);
                }
                libraries.add(new Library(
                        said.getProperty("groupId") + ":" + said.getProperty("artifactId"),
                        said.getProperty("version"),
                        licence(zip, entry)));
            }
        }
        return libraries;
    }

    private static String licence(ZipFile zip, ZipEntry properties) throws IOException {
        ZipEntry pom = zip.getEntry(properties.getName().replace("pom.properties", "pom.xml"));
        if (pom == null) {
            return "-";
        }
        try (InputStream in = zip.getInputStream(pom)) {
            return named(LICENCE_IN_POM, new String(in.readAllBytes(), StandardCharsets.UTF_8));
        }
    }

    private static String named(Pattern licence, String text) {
        Stream<String> names = licence.matcher(text)
                .results()
                .map(found -> found.group(1).strip().replaceAll("\\s+", " "));
        String all = names.collect(Collectors.joining("; "));
        return all.isEmpty() ? "-" : all;
    }
}
