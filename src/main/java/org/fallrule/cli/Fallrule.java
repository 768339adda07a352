package org.fallrule.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.fallrule.document.Fault;
import org.fallrule.document.UnusableInput;
import org.fallrule.report.Visible;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The command line. */
@Command(
        name = "fallrule",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Checks lot-drainage plans, given as GIS layers, against a county's rules.",
        subcommands = {
            CheckCommand.class,
            BeginCommand.class,
            CompareCommand.class,
            GradeSheetCommand.class,
            ProposeCommand.class,
            RulesCommand.class,
            ExplainCommand.class,
            CommandLine.HelpCommand.class
        })
public final class Fallrule {
    /** Nothing fails. */
    static final int PASSES = 0;
    /** A binding rule fails. */
    static final int FAILS = 1;
    /** The input or the command could not be used. */
    static final int UNUSABLE = 2;

    private Fallrule() {}

    public static void main(String[] args) {
        Logger.getLogger("").setLevel(Level.OFF);
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        System.exit(run(out, err, args));
    }

    /** Runs a command and gives its exit code. */
    static int run(PrintWriter out, PrintWriter err, String... args) {
        CommandLine line = new CommandLine(new Fallrule());
        line.setOut(out);
        line.setErr(err);
        line.setUseSimplifiedAtFiles(true);
        line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
        line.setExecutionExceptionHandler((e, command, parsed) -> unusable(e, err));
        if (args.length == 0) {
            line.usage(out);
            return UNUSABLE;
        }
        try {
            return line.execute(args);
        } catch (OutOfMemoryError e) {
            err.println(
                    "There is not enough memory for it; keep what lies around the site, or give more with java -Xmx.");
        } catch (StackOverflowError e) {
            unusable(new IllegalStateException(e), err);
        }
        return UNUSABLE;
    }

    private static int unusable(Exception e, PrintWriter err) {
        if (e instanceof UnusableInput unusable) {
            for (Fault fault : unusable.faults()) {
                err.println(Visible.of(fault.toString()));
            }
        } else {
            err.println("This is a fault of the program, please report it: " + Visible.of(e.toString()));
        }
        return UNUSABLE;
    }
}
