package org.fallrule.cli;

import java.io.Console;
import org.fallrule.report.text.Ink;

/** Whether to colour: only on a terminal that can, and never when NO_COLOR is set (no-color.org). */
final class Terminal {
    private Terminal() {}

    static Ink ink() {
        String noColor = System.getenv("NO_COLOR");
        boolean allowed = noColor == null || noColor.isEmpty();
        return allowed && redraws() ? Ink.COLOUR : Ink.PLAIN;
    }

    /** Whether a line can be written over: only on a terminal that can. */
    static boolean redraws() {
        String term = System.getenv("TERM");
        return term != null && !term.equals("dumb") && isTerminal();
    }

    /** Up to Java 21 there is a console only on a terminal; from 22 on it has to be asked. */
    @SuppressWarnings("SystemConsoleNull")
    static boolean isTerminal() {
        Console console = System.console();
        if (console == null) {
            return false;
        }
        try {
            return (boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (ReflectiveOperationException e) {
            return true;
        }
    }
}
