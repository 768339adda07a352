package org.fallrule.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.fallrule.bookshelf.BookDifference;
import org.fallrule.bookshelf.BookJson;
import org.fallrule.bookshelf.BookList;
import org.fallrule.bookshelf.BookName;
import org.fallrule.bookshelf.BookProof;
import org.fallrule.bookshelf.BookText;
import org.fallrule.bookshelf.MapProof;
import org.fallrule.bookshelf.ProofText;
import org.fallrule.rulebook.LayeredBook;
import org.fallrule.rulebook.RuleLibrary;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Works with the rule books. */
@Command(
        name = "rules",
        mixinStandardHelpOptions = true,
        description = "Shows, verifies and compares the rule books of counties and firms.",
        subcommands = {
            RulesCommand.ListBooks.class,
            RulesCommand.Show.class,
            RulesCommand.Verify.class,
            RulesCommand.Differ.class
        })
final class RulesCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        throw new ParameterException(spec.commandLine(), "Missing subcommand: name one of list, show, verify, differ.");
    }

    /** What all of them take. */
    static final class Where {
        @Option(
                names = "--rules",
                paramLabel = "DIR",
                description = "The folder of rule books. Default: rules here, else beside the jar.")
        private Optional<Path> rules = Optional.empty();

        @Option(
                names = "--today",
                paramLabel = "DATE",
                description = "The day on which rules are to be in force. Default: today.")
        private LocalDate today = LocalDate.now(ZoneId.systemDefault());

        RuleLibrary library() {
            return RulesFolder.open(rules);
        }
    }

    /** What there is. */
    @Command(name = "list", mixinStandardHelpOptions = true, description = "Lists the counties and firms there are.")
    static final class ListBooks implements Callable<Integer> {
        @Spec
        private CommandSpec spec;

        @Mixin
        private Where where = new Where();

        @Override
        public Integer call() {
            return printed(spec, BookList.of(where.library(), where.today));
        }
    }

    /** The forms that rules are shown in. The names are what a person types. */
    enum Format {
        text,
        json
    }

    /** What applies, and who set it. */
    @Command(
            name = "show",
            mixinStandardHelpOptions = true,
            description = "Shows each rule that applies in a county, each value with the file and line that set it, and"
                    + " what it overrode.")
    static final class Show implements Callable<Integer> {
        @Spec
        private CommandSpec spec;

        @Mixin
        private Where where = new Where();

        @Parameters(paramLabel = "COUNTY", description = "The county; baseline for the baseline alone.")
        private String county = "";

        @Option(names = "--house", paramLabel = "NAME", description = "A firm's own rules on top.")
        private Optional<String> house = Optional.empty();

        @Option(names = "--rule", paramLabel = "ID", description = "Only this rule.")
        private Optional<String> rule = Optional.empty();

        @Option(names = "--format", paramLabel = "FORMAT", description = "${COMPLETION-CANDIDATES}. Default: text.")
        private Format format = Format.text;

        @Override
        public Integer call() {
            LayeredBook book = opened(where.library(), county, house, where.today);
            return printed(spec, format == Format.json ? BookJson.of(book, rule) : BookText.of(book, rule));
        }
    }

    /** Whether books can be used and their examples hold. */
    @Command(
            name = "verify",
            mixinStandardHelpOptions = true,
            description = "Says every fault of a rule book at once, with its line, and runs the examples beside it.",
            footer = {"", "Exit code: 0 all is well, 1 an example is otherwise than expected, 2 a book has faults."})
    static final class Verify implements Callable<Integer> {
        @Spec
        private CommandSpec spec;

        @Mixin
        private Where where = new Where();

        @Parameters(
                paramLabel = "BOOK",
                arity = "0..*",
                description = "A county, a firm, baseline, or a book's file. All books, and the map of counties, by"
                        + " default.")
        private List<String> books = new ArrayList<>();

        @Override
        public Integer call() {
            RuleLibrary library = where.library();
            List<BookName> names = books.isEmpty()
                    ? BookName.all(library)
                    : books.stream().map(word -> BookName.named(word, library)).toList();
            int worst = Fallrule.PASSES;
            for (BookName name : names) {
                BookProof proof = BookProof.of(library, name, where.today);
                printed(spec, ProofText.of(proof));
                worst = Math.max(worst, code(proof));
            }
            return books.isEmpty() ? Math.max(worst, map(library)) : worst;
        }

        private int map(RuleLibrary library) {
            Optional<MapProof> proof = MapProof.of(library);
            proof.ifPresent(each -> printed(spec, ProofText.of(each)));
            return proof.stream().allMatch(MapProof::usable) ? Fallrule.PASSES : Fallrule.UNUSABLE;
        }

        private static int code(BookProof proof) {
            if (!proof.usable()) {
                return Fallrule.UNUSABLE;
            }
            return proof.holds() ? Fallrule.PASSES : Fallrule.FAILS;
        }
    }

    /** Two counties side by side. */
    @Command(
            name = "differ",
            mixinStandardHelpOptions = true,
            description = "Puts two counties side by side, as far as they differ.")
    static final class Differ implements Callable<Integer> {
        @Spec
        private CommandSpec spec;

        @Mixin
        private Where where = new Where();

        @Parameters(index = "0", paramLabel = "COUNTY", description = "A county, or baseline.")
        private String one = "";

        @Parameters(index = "1", paramLabel = "COUNTY", description = "The other.")
        private String other = "";

        @Option(names = "--all", description = "Also what is the same.")
        private boolean all;

        @Override
        public Integer call() {
            RuleLibrary library = where.library();
            return printed(
                    spec,
                    BookDifference.of(
                            one,
                            opened(library, one, Optional.empty(), where.today),
                            other,
                            opened(library, other, Optional.empty(), where.today),
                            all));
        }
    }

    private static LayeredBook opened(RuleLibrary library, String county, Optional<String> house, LocalDate day) {
        return county.equals("baseline") ? library.baseline(house, day) : library.open(county, house, day);
    }

    private static int printed(CommandSpec spec, String text) {
        PrintWriter out = spec.commandLine().getOut();
        out.print(text);
        out.flush();
        return Fallrule.PASSES;
    }
}
