package org.fallrule.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.fallrule.docket.Causes;
import org.fallrule.report.Visible;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The command line. */
@Command(
        name = "fallrule",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Checks lot-drainage plans, given as GIS layers, against a county's rules.")
public final class Fallrule {
    /** Nothing fails. */
    static final int PASSES = 0;
    /** A binding rule fails. */
    static final int FAILS = 1;
    /** The input or the command could not be used. */
    static final int UNUSABLE = 2;

    private static final List<Class<?>> COMMANDS = List.of(
            CheckCommand.class,
            BeginCommand.class,
            CompareCommand.class,
            GradeSheetCommand.class,
            ProposeCommand.class,
            RulesCommand.class,
            ExplainCommand.class,
            CommandLine.HelpCommand.class);

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
        commands(args).forEach(line::addSubcommand);
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
        } catch (StackOverflowError | OutOfMemoryError e) {
            return unusable(e, err);
        }
    }

    /** The command that is asked for, alone, as looking at each takes time; all where it is none of them, or asks for help. */
    private static List<Class<?>> commands(String... args) {
        List<Class<?>> asked = COMMANDS.stream()
                .filter(each -> each != CommandLine.HelpCommand.class)
                .filter(each -> args.length > 0
                        && each.getAnnotation(Command.class).name().equals(args[0]))
                .toList();
        return asked.isEmpty() ? COMMANDS : asked;
    }

    static int unusable(Throwable failure, PrintWriter err) {
        Causes.of(failure).forEach(cause -> err.println(Visible.of(cause)));
        return UNUSABLE;
    }
}
