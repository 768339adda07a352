package org.fallrule.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Arrays;
import java.util.stream.Stream;

/** A command that has run: its exit code and what it printed. */
record Ran(int code, String out, String err) {

    static Ran command(Object... words) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String[] args = Arrays.stream(words).map(String::valueOf).toArray(String[]::new);
        int code = Fallrule.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
        return new Ran(code, out.toString(), err.toString());
    }

    /** The command check on a day when every sample's waivers hold. */
    static Ran check(Object... words) {
        return command(Stream.concat(Stream.of("check", "--today", "2026-06-01"), Arrays.stream(words))
                .toArray());
    }
}
