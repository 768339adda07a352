package org.fallrule.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.docket.BooksInForce;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.UnreadableQuantity;
import org.fallrule.measure.Written;
import org.fallrule.reader.SiteReader;
import org.fallrule.report.Visible;
import org.fallrule.report.gradesheet.GradeSheet;
import org.fallrule.report.gradesheet.GradeSheetText;
import org.fallrule.report.gradesheet.HandZones;
import org.fallrule.report.gradesheet.Settings;
import org.fallrule.report.pdf.Paper;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.site.Site;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes what a crew needs to lay the pipes of a plan. */
@Command(
        name = "gradesheet",
        mixinStandardHelpOptions = true,
        description = "Writes what the crew needs to lay each pipe to its grade: ground, invert, cut and fall along it,"
                + " what a level shows, and where to dig by hand.",
        footer = {"", "Exit code: 0 written, 2 the input or the command could not be used."})
final class GradeSheetCommand implements Callable<Integer> {
    /** Least distance between rows, in metres: rows are for people. */
    private static final double LEAST = 0.1;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "SITE", description = "Site folder.")
    private Path site = Path.of("");

    @Option(
            names = "--every",
            paramLabel = "LENGTH",
            defaultValue = "10 ft",
            description = "From one row to the next; in metres the whole sheet is metric. Default: ${DEFAULT-VALUE}.")
    private String every = "";

    @Option(
            names = "--bedding",
            paramLabel = "LENGTH",
            defaultValue = "4 in",
            description = "Bedding under the pipe. Default: ${DEFAULT-VALUE}.")
    private String bedding = "";

    @Option(
            names = "--by-hand",
            paramLabel = "LENGTH",
            description =
                    "Dig by hand so near a utility's outside edge. Default: the zone of the rule book's hand_dig rules;"
                            + " with it no rule book is read.")
    private Optional<String> byHand = Optional.empty();

    @Mixin
    private BookOptions books = new BookOptions();

    @Option(names = "--out", paramLabel = "DIR", description = "Where to write SITE-gradesheet.txt, .csv and .pdf.")
    private Optional<Path> out = Optional.empty();

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            split = ",",
            description = "What to write to --out: ${COMPLETION-CANDIDATES}. All by default.")
    private List<GradeSheetFormat> formats = new ArrayList<>(List.of(GradeSheetFormat.values()));

    @Option(names = "--paper", paramLabel = "SIZE", description = "${COMPLETION-CANDIDATES}. Default: letter.")
    private Paper paper = Paper.letter;

    @Override
    public Integer call() {
        Written rows = length("--every", every, true);
        Written under = length("--bedding", bedding, false);
        Optional<HandZones> given = byHand.map(text -> HandZones.given(length("--by-hand", text, false)));
        out.ifPresent(folder -> OutFolder.refuseInside(folder, site, "the sheet"));
        Site plan = SiteReader.read(site);
        HandZones zones = given.orElseGet(() -> HandZones.of(rules(plan)));
        GradeSheet sheet = GradeSheet.of(SiteAnalysis.of(plan), new Settings(rows, under, zones));
        PrintWriter screen = spec.commandLine().getOut();
        screen.print(GradeSheetText.write(sheet));
        out.ifPresent(folder -> {
            write(sheet, folder);
            screen.println("\n" + Visible.of("Grade sheet written to " + folder.resolve(sheet.id() + "-gradesheet.*")));
        });
        screen.flush();
        return Fallrule.PASSES;
    }

    private RuleBook rules(Site plan) {
        BooksInForce inForce = books.inForce(books.library(), LocalDate.now(ZoneId.systemDefault()));
        return inForce.book(inForce.place(plan), plan);
    }

    private static Written length(String option, String text, boolean positive) {
        try {
            Written written = Written.parse(text, Dimension.LENGTH);
            double metres = written.quantity().si();
            if (metres < 0 || (positive && metres < LEAST)) {
                throw new UnusableInput(Place.of(option), text + " is too little; give a length such as 10 ft or 5 m");
            }
            return written;
        } catch (UnreadableQuantity e) {
            throw new UnusableInput(Place.of(option), String.valueOf(e.getMessage()));
        }
    }

    /** Makes every file before it writes one. */
    private void write(GradeSheet sheet, Path folder) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        formats.forEach(format -> files.put(format.file(sheet), format.write(sheet, paper)));
        try {
            Files.createDirectories(folder);
            WholeFiles.put(folder, files);
        } catch (IOException e) {
            throw OutFolder.unwritable(folder, e);
        }
    }
}
