package org.fallrule.cli;

import java.io.PrintWriter;
import java.util.Optional;
import org.fallrule.document.Nearest;
import org.fallrule.report.Visible;
import picocli.CommandLine;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says what is wrong with a command as it was typed, what was probably meant, and where the right words are listed. */
final class WrongCommand implements IParameterExceptionHandler {

    @Override
    public int handleParseException(ParameterException e, String[] args) {
        CommandLine command = e.getCommandLine();
        PrintWriter err = command.getErr();
        boolean chooses = !command.getSubcommands().isEmpty();
        Optional<String> unknown = chooses ? unknownCommand(e) : Optional.empty();
        if (unknown.isPresent()) {
            err.println(Visible.of(command.getCommandSpec().qualifiedName() + ": there is no command " + unknown.get()
                    + Nearest.hint(unknown.get(), command.getSubcommands().keySet())));
        } else {
            err.println(Visible.of(String.valueOf(e.getMessage())));
            UnmatchedArgumentException.printSuggestions(e, err);
        }
        err.println("\"" + help(command) + "\"" + (chooses ? " lists the commands." : " lists the options."));
        err.flush();
        return Fallrule.UNUSABLE;
    }

    private static Optional<String> unknownCommand(ParameterException e) {
        return e instanceof UnmatchedArgumentException unmatched && !unmatched.isUnknownOption()
                ? unmatched.getUnmatched().stream().findFirst()
                : Optional.empty();
    }

    /** {@code fallrule help rules show}. */
    private static String help(CommandLine command) {
        String[] names = command.getCommandSpec().qualifiedName().split(" ", 2);
        return names[0] + " help" + (names.length > 1 ? " " + names[1] : "");
    }
}
