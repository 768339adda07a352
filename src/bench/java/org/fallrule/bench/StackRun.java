package org.fallrule.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;

/**
 * Runs the built jar over made-up stacks, each in a process of its own with 1 GiB of heap and findings as JSON alone, and shows
 * sites by the second and processor time: by the number of sites, by kind of file, and by the features of a site.
 */
final class StackRun {
    /** Milliseconds; what a run uses after the last look is not seen. */
    private static final long LOOK_AGAIN = 10;

    private static final int SITES = 1000;

    private final Path built;
    private final Path folder;

    /** @param built the folder with the built jar, where stacks are made too */
    StackRun(Path built) {
        this.built = built;
        this.folder = built.resolve("bench-stacks");
    }

    void measure() throws IOException, InterruptedException {
        List<MadeFormat> all = List.of(MadeFormat.values());
        for (int sites : List.of(SITES / 2, SITES, 2 * SITES)) {
            tell(sites + " sites", sites, MadeStack.write(folder.resolve("all"), sites, 1, MadeStack.SEED, all));
        }
        for (MadeFormat format : all) {
            String name = format.name().toLowerCase(Locale.ROOT);
            tell(name, SITES / 2, MadeStack.write(folder.resolve(name), SITES / 2, 1, MadeStack.SEED, List.of(format)));
        }
        for (int homes : List.of(1, 2, 4, 8)) {
            Path stack = folder.resolve("homes-" + homes);
            tell(homes + " times 60 features", 200, MadeStack.write(stack, 200, homes, MadeStack.SEED, all));
        }
    }

    private void tell(String what, int count, List<Path> sites) throws IOException, InterruptedException {
        long start = System.nanoTime();
        double processor = processorSeconds(sites.subList(0, count));
        double seconds = (System.nanoTime() - start) / 1e9;
        System.out.printf(
                Locale.ROOT,
                "%-24s %6.1f sites by the second, %7.2f ms of processor time for each%n",
                what,
                count / seconds,
                1000 * processor / count);
    }

    /** Names are given in a file of arguments, as a stack has more than a command line holds. */
    private double processorSeconds(List<Path> sites) throws IOException, InterruptedException {
        Path names = folder.resolve("sites.txt");
        Files.writeString(
                names, String.join("\n", sites.stream().map(Path::toString).toList()));
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx1g",
                "-jar",
                built.resolve("fallrule.jar").toString(),
                "check",
                "@" + names,
                "--quiet",
                "--format",
                "json",
                "--out",
                folder.resolve("out").toString()));
        Process process = new ProcessBuilder(command)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        Duration used = Duration.ZERO;
        while (!process.waitFor(LOOK_AGAIN, TimeUnit.MILLISECONDS)) {
            used = process.info().totalCpuDuration().orElse(used);
        }
        if (process.exitValue() > 1) {
            throw new IOException("the stack in " + folder + " could not be checked");
        }
        return used.toNanos() / 1e9;
    }
}
