package org.fallrule.bench;

import java.io.IOException;
import java.nio.file.Path;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Runs the benchmarks that a pattern picks, and last the whole program over made-up sites and stacks of them. */
final class Measure {
    private static final String WHOLE = "WholeRun";
    private static final String STACK = "StackRun";

    private Measure() {}

    /**
     * Measures.
     *
     * @param args the folder with the built jar, where sites are made too, and a pattern of benchmarks' names
     */
    public static void main(String[] args) throws RunnerException, IOException, InterruptedException {
        Path built = Path.of(args[0]).toAbsolutePath();
        String wanted = args[1];
        if (!wanted.equals(WHOLE) && !wanted.equals(STACK)) {
            new Runner(new OptionsBuilder()
                            .include(wanted)
                            .addProfiler(ProcessorTime.class)
                            .jvmArgsAppend("-Xmx1g", "-D" + MadeSites.FOLDER + "=" + built.resolve("bench-sites"))
                            .build())
                    .run();
        }
        if (WHOLE.matches(wanted)) {
            new WholeRun(built).measure();
        }
        if (STACK.matches(wanted)) {
            new StackRun(built).measure();
        }
    }
}
