package org.fallrule.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import org.fallrule.docket.Causes;
import org.fallrule.report.Visible;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.TypeConversionException;

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
        String[] words = asOptions(args);
        CommandLine line = new CommandLine(new Fallrule());
        commands(words).forEach(line::addSubcommand);
        line.setOut(out);
        line.setErr(err);
        line.setUseSimplifiedAtFiles(true);
        line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
        line.registerConverter(LocalDate.class, Fallrule::day);
        line.setParameterExceptionHandler(new WrongCommand());
        line.setExecutionExceptionHandler((e, command, parsed) -> unusable(e, err));
        if (words.length == 0) {
            line.usage(out);
            return UNUSABLE;
        }
        try {
            return line.execute(words);
        } catch (StackOverflowError | OutOfMemoryError e) {
            return unusable(e, err);
        }
    }

    /** {@code help rules show} as {@code rules show --help}: the library's own help looks at one word only. */
    private static String[] asOptions(String... args) {
        if (args.length < 2 || !args[0].equals("help") || args[1].equals("help") || args[1].startsWith("-")) {
            return args;
        }
        return Stream.concat(Arrays.stream(args).skip(1), Stream.of("--help")).toArray(String[]::new);
    }

    private static LocalDate day(String written) {
        try {
            return LocalDate.parse(written);
        } catch (DateTimeParseException e) {
            throw new TypeConversionException("\"" + written + "\" is not a day; give it as 2026-05-04");
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

    /** Says in a line each why a command could not be done. */
    static int unusable(Throwable failure, PrintWriter err) {
        Causes.of(failure).forEach(cause -> err.println(Visible.of(cause)));
        return UNUSABLE;
    }
}
