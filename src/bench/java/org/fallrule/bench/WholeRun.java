package org.fallrule.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;

/**
 * Runs the built program over made-up sites, each several times in a process of its own with 1 GiB of heap, and shows the
 * least processor time as a ratio to that of a sample site, measured in turn with the others.
 */
final class WholeRun {
    private static final int ROUNDS = 3;

    /** Milliseconds; what a run uses after the last look is not seen. */
    private static final long LOOK_AGAIN = 10;

    private final Path launcher;
    private final MadeSites sites;

    /** @param built the folder with the built launcher */
    WholeRun(Path built) {
        this.launcher = built.resolve("fallrule");
        this.sites = new MadeSites(built.resolve("bench-sites"));
    }

    void measure() throws IOException, InterruptedException {
        List<Path> checked = List.of(
                Path.of("sample-sites", "thistledown-3"),
                sites.raster(1000, 0.25),
                sites.raster(2000, 0.25),
                sites.raster(4000, 0.25),
                sites.raster(2000, 0.1),
                sites.spots(25_000, 0.5),
                sites.spots(50_000, 0.5),
                sites.spots(100_000, 0.5),
                sites.spots(200_000, 0.5));
        double[] seconds = new double[checked.size()];
        Arrays.fill(seconds, Double.POSITIVE_INFINITY);
        for (int round = 0; round < ROUNDS; round++) {
            for (int i = 0; i < seconds.length; i++) {
                seconds[i] = Math.min(seconds[i], processorSeconds(checked.get(i)));
            }
        }
        for (int i = 0; i < seconds.length; i++) {
            System.out.printf(
                    Locale.ROOT,
                    "%-24s %6.2f s  %5.2f times the first%n",
                    checked.get(i).getFileName(),
                    seconds[i],
                    seconds[i] / seconds[0]);
        }
    }

    private double processorSeconds(Path site) throws IOException, InterruptedException {
        List<String> command = List.of(
                launcher.toString(),
                "check",
                site.toString(),
                "--format",
                "text",
                "--out",
                launcher.resolveSibling("bench-out").toString());
        ProcessBuilder builder = new ProcessBuilder(command)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD);
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        builder.environment().put("JDK_JAVA_OPTIONS", "-Xmx1g");
        Process process = builder.start();
        Duration used = Duration.ZERO;
        while (!process.waitFor(LOOK_AGAIN, TimeUnit.MILLISECONDS)) {
            used = process.info().totalCpuDuration().orElse(used);
        }
        if (process.exitValue() > 1) {
            throw new IOException(site + " could not be checked");
        }
        return used.toNanos() / 1e9;
    }
}
