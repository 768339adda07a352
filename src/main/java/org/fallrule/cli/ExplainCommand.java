package org.fallrule.cli;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.fallrule.document.Nearest;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.method.Method;
import org.fallrule.method.MethodList;
import org.fallrule.reference.CheckReference;
import org.fallrule.reference.MethodReference;
import org.fallrule.rulebook.Checks;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints what a check measures, or how a method of calculation goes. */
@Command(
        name = "explain",
        mixinStandardHelpOptions = true,
        description =
                "Says what a check measures, or how a method of calculation goes: its formula, its source, its limits.")
final class ExplainCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(
            paramLabel = "NAME",
            arity = "0..1",
            description = "The name of a check or method; without one, all names.")
    private Optional<String> name = Optional.empty();

    @Override
    public Integer call() {
        Checks checks = Checks.all();
        List<Method> methods = MethodList.all();
        List<String> names = Stream.concat(
                        checks.names().stream(), methods.stream().map(Method::name))
                .distinct()
                .toList();
        if (name.isEmpty()) {
            names.forEach(spec.commandLine().getOut()::println);
            return Fallrule.PASSES;
        }
        Stream<String> ofCheck = checks.named(name.get()).map(CheckReference::page).stream();
        Stream<String> ofMethod = methods.stream()
                .filter(method -> method.name().equals(name.get()))
                .map(MethodReference::page);
        List<String> pages = Stream.concat(ofCheck, ofMethod).toList();
        if (pages.isEmpty()) {
            throw new UnusableInput(
                    Place.of("explain"),
                    "there is no check or method " + name.get() + Nearest.hint(name.get(), names) + " Known: "
                            + String.join(", ", names));
        }
        spec.commandLine().getOut().print(String.join("\n", pages));
        spec.commandLine().getOut().flush();
        return Fallrule.PASSES;
    }
}
