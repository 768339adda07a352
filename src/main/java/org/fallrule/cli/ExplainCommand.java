package org.fallrule.cli;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fallrule.document.Nearest;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.method.Method;
import org.fallrule.method.MethodList;
import org.fallrule.reference.CheckReference;
import org.fallrule.reference.MethodReference;
import org.fallrule.rulebook.Checks;
import org.fallrule.rulebook.Rule;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints what a check measures, or how a method of calculation goes. */
@Command(
        name = "explain",
        mixinStandardHelpOptions = true,
        description =
                "Says what a check or a rule measures, or how a method of calculation goes: its formula, its source, its"
                        + " limits.")
final class ExplainCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(
            paramLabel = "NAME",
            arity = "0..1",
            description = "The name of a check, a rule or a method; without one, all checks and methods.")
    private Optional<String> name = Optional.empty();

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        out.print(name.map(this::page).orElseGet(ExplainCommand::list));
        out.flush();
        return Fallrule.PASSES;
    }

    private static String list() {
        return "Checks:\n" + words(Checks.all().names().stream())
                + "\nMethods of calculation:\n"
                + words(MethodList.all().stream().map(Method::name))
                + "\nEach is explained by its name: fallrule explain cover\n";
    }

    private static String words(Stream<String> names) {
        return names.map(each -> "  " + each + "\n").collect(Collectors.joining());
    }

    private String page(String wanted) {
        List<String> pages = pages(wanted);
        return pages.isEmpty() ? pageOfRule(wanted) : PageText.of(String.join("\n", pages));
    }

    private static List<String> pages(String wanted) {
        Stream<String> ofCheck = Checks.all().named(wanted).map(CheckReference::page).stream();
        Stream<String> ofMethod = MethodList.all().stream()
                .filter(method -> method.name().equals(wanted))
                .map(MethodReference::page);
        return Stream.concat(ofCheck, ofMethod).toList();
    }

    /** Reports name rules; what a rule measures is said by its check. */
    private static String pageOfRule(String wanted) {
        Rule rule = rules().filter(each -> each.id().equals(wanted)).findFirst().orElseThrow(() -> unknown(wanted));
        String lead = wanted + " is a rule of the baseline. What it measures is said by its check, "
                + rule.check().name() + ", below; what a county asks, and by whose word, by: fallrule rules show COUNTY"
                + " --rule " + wanted;
        return PageText.of(lead + "\n\n" + CheckReference.page(rule.check()));
    }

    private static Stream<Rule> rules() {
        return RulesFolder.open(Optional.empty())
                .baseline(Optional.empty(), LocalDate.now(ZoneId.systemDefault()))
                .book()
                .rules()
                .stream();
    }

    private static UnusableInput unknown(String wanted) {
        List<String> known = Stream.of(
                        Checks.all().names().stream(),
                        MethodList.all().stream().map(Method::name),
                        rules().map(Rule::id))
                .flatMap(names -> names)
                .toList();
        return new UnusableInput(
                Place.of("explain"),
                "there is no check, method or rule " + wanted + Nearest.hint(wanted, known)
                        + " fallrule explain lists the checks and methods");
    }
}
