package org.fallrule.reader.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Coordinate;

/** In a process of its own, as only there nothing has been set up or opened before. */
class QuietLibraryTest {

    @TempDir
    Path folder;

    /** What the process runs: a code of the table, text, a position outside, and, when asked, the database. */
    public static final class Run {
        private Run() {}

        public static void main(String[] arguments) {
            Place where = Place.of("lot.prj");
            for (String code : arguments) {
                CoordinateSystem system = CoordinateSystem.of(code, where);
                try {
                    system.toLonLat(new Coordinate(1e12, 1e12), where);
                } catch (UnusableInput e) {
                    System.out.println(system.name() + " refuses");
                }
            }
        }
    }

    private record Output(String out, String err) {}

    private Output run(String... codes) throws IOException, InterruptedException {
        Path out = folder.resolve("out.txt");
        Path err = folder.resolve("err.txt");
        for (String name : List.of("prefs", "temp")) {
            Files.createDirectories(folder.resolve(name));
        }
        List<String> command = Stream.concat(
                        Stream.of(
                                Path.of(System.getProperty("java.home"), "bin", "java")
                                        .toString(),
                                "-Djava.util.prefs.userRoot=" + folder.resolve("prefs"),
                                "-Djava.io.tmpdir=" + folder.resolve("temp"),
                                "-cp",
                                System.getProperty("java.class.path"),
                                Run.class.getName()),
                        Stream.of(codes))
                .toList();
        int exit = new ProcessBuilder(command)
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start()
                .waitFor();
        assertThat(exit).isZero();
        return new Output(Files.readString(out), Files.readString(err));
    }

    private List<Path> filesIn(String name) throws IOException {
        try (Stream<Path> files = Files.walk(folder.resolve(name))) {
            return files.filter(Files::isRegularFile)
                    .filter(file -> !file.toString().contains("hsperfdata"))
                    .toList();
        }
    }

    @Test
    void aCodeOfTheTableOpensNoDatabaseAndPrintsAndStoresNothing() throws IOException, InterruptedException {
        Output output = run("EPSG:2264");

        assertThat(output.out().strip()).isEqualTo("NAD83 / North Carolina (ftUS) refuses");
        assertThat(output.err()).isEmpty();
        assertThat(filesIn("prefs")).isEmpty();
        assertThat(filesIn("temp")).isEmpty();
    }

    @Test
    void aCodeOfTheDatabasePrintsAndStoresNothingElse() throws IOException, InterruptedException {
        Output output = run("EPSG:8742");

        assertThat(output.out().strip()).isEqualTo("NAD83 / Kentucky South (ftUS) refuses");
        assertThat(output.err()).isEmpty();
        assertThat(filesIn("prefs")).isEmpty();
        assertThat(filesIn("temp"))
                .isNotEmpty()
                .allMatch(file -> file.toString().contains("HSQL"));
    }
}
