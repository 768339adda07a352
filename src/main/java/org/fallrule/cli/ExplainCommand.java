package org.fallrule.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import org.fallrule.check.Check;
import org.fallrule.document.Nearest;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.reference.CheckReference;
import org.fallrule.rulebook.Checks;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints what a check measures. */
@Command(
        name = "explain",
        mixinStandardHelpOptions = true,
        description = "Says what a check measures, its formula, its source, and what it cannot see.")
final class ExplainCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "CHECK", arity = "0..1", description = "The check's name; without one, all names.")
    private Optional<String> name = Optional.empty();

    @Override
    public Integer call() {
        Checks checks = Checks.all();
        if (name.isEmpty()) {
            checks.names().forEach(spec.commandLine().getOut()::println);
            return Fallrule.PASSES;
        }
        Check check = checks.named(name.get())
                .orElseThrow(() -> new UnusableInput(
                        Place.of("explain"),
                        "there is no check " + name.get() + Nearest.hint(name.get(), checks.names()) + " Known: "
                                + String.join(", ", checks.names())));
        spec.commandLine().getOut().print(CheckReference.page(check));
        spec.commandLine().getOut().flush();
        return Fallrule.PASSES;
    }
}
