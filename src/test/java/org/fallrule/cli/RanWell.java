package org.fallrule.cli;

import java.util.List;

/** What every command keeps to, whatever it is given. */
final class RanWell {
    private RanWell() {}

    /** It ends with one of its exit codes, says something, and speaks of no fault of its own. */
    static void must(Ran ran) {
        String said = ran.code() == Fallrule.UNUSABLE ? ran.err() : ran.out();
        boolean brokeDown = (ran.out() + ran.err()).contains("fault of the program");
        boolean isExitCode =
                List.of(Fallrule.PASSES, Fallrule.FAILS, Fallrule.UNUSABLE).contains(ran.code());
        if (brokeDown || !isExitCode || said.isBlank()) {
            throw new AssertionError("ended with " + ran.code() + " and said: " + ran.err() + ran.out());
        }
    }
}
