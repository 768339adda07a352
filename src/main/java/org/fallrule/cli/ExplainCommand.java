package org.fallrule.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
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
        Map<String, String> pages = pages();
        if (name.isEmpty()) {
            pages.keySet().forEach(spec.commandLine().getOut()::println);
            return Fallrule.PASSES;
        }
        String page = pages.get(name.get());
        if (page == null) {
            throw new UnusableInput(
                    Place.of("explain"),
                    "there is no check or method " + name.get() + Nearest.hint(name.get(), List.copyOf(pages.keySet()))
                            + " Known: " + String.join(", ", pages.keySet()));
        }
        spec.commandLine().getOut().print(page);
        spec.commandLine().getOut().flush();
        return Fallrule.PASSES;
    }

    /** Every page by its name: those of the checks, then those of the methods; both where a name is both. */
    private static Map<String, String> pages() {
        Map<String, String> pages = new LinkedHashMap<>();
        Checks checks = Checks.all();
        for (String check : checks.names()) {
            pages.put(check, CheckReference.page(checks.named(check).orElseThrow()));
        }
        for (Method method : MethodList.all()) {
            pages.merge(method.name(), MethodReference.page(method), (one, other) -> one + "\n" + other);
        }
        return pages;
    }
}
