package org.fallrule.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.intake.Asker;
import org.fallrule.intake.Draft;
import org.fallrule.intake.Intake;
import org.fallrule.report.Visible;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Looks over a folder of loose layers and writes its first site.yaml. */
@Command(
        name = "begin",
        mixinStandardHelpOptions = true,
        description = "Looks over the layer files in a folder and writes site.yaml: what each file and column was taken"
                + " for, how sure that is, and what nobody but you can tell. On a terminal it asks that; else it leaves"
                + " marked lines to fill in. An empty answer leaves a question open.",
        footer = {"", "Exit code: 0 written, 2 the folder or the command could not be used."})
final class BeginCommand implements Callable<Integer> {
    private static final String SITE_FILE = "site.yaml";

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FOLDER", description = "The folder that holds the layers.")
    private Path folder = Path.of("");

    @Option(
            names = "--profile",
            paramLabel = "FILE",
            description = "What your firm says once of the columns of all its sites; a .yaml file in the folder or at"
                    + " most three folders up.")
    private Optional<Path> profile = Optional.empty();

    @Option(names = "--replace", description = "Write over the site.yaml that is there.")
    private boolean replace;

    @Option(names = "--ask", negatable = true, description = "Ask, or never ask. Default: ask on a terminal.")
    private Optional<Boolean> ask = Optional.empty();

    @Override
    public Integer call() {
        refuseExisting();
        boolean asks = ask.orElseGet(Terminal::isTerminal);
        PrintWriter out = spec.commandLine().getOut();
        Draft draft = Intake.draft(folder, profile.map(this::fromFolder), asks ? asker(out) : Asker.NOBODY);
        if (draft.layers().isEmpty() && draft.open().isEmpty()) {
            throw nothing(draft);
        }
        write(draft.yaml());
        out.print(BeginText.write(draft, folder));
        out.flush();
        return Fallrule.PASSES;
    }

    private static Asker asker(PrintWriter out) {
        Charset typed = Optional.ofNullable(System.console())
                .map(java.io.Console::charset)
                .orElse(StandardCharsets.UTF_8);
        return new TypedAnswers(new BufferedReader(new InputStreamReader(System.in, typed)), out);
    }

    /** Before any question is put: nobody answers for nothing. */
    private void refuseExisting() {
        if (!Files.isDirectory(folder)) {
            return;
        }
        try (Stream<Path> files = Files.list(folder)) {
            files.map(file -> String.valueOf(file.getFileName()))
                    .filter(name -> Set.of(SITE_FILE, "site.yml").contains(name.toLowerCase(Locale.ROOT)))
                    .filter(name -> !replace || !name.equals(SITE_FILE))
                    .findFirst()
                    .ifPresent(this::refuse);
        } catch (IOException e) {
            throw new UnusableInput(
                    Place.of(folder.toString()), "cannot be listed (" + e + "); make the folder readable");
        }
    }

    private void refuse(String name) {
        throw new UnusableInput(
                Place.of(folder.resolve(name).toString()),
                name.equals(SITE_FILE)
                        ? "is there already and stays as it is; give --replace to write over it"
                        : "is there already, though " + SITE_FILE
                                + " is the name that is read; rename it or take it away");
    }

    /** A profile as site.yaml names it: from the folder of the site. */
    private String fromFolder(Path file) {
        try {
            return folder.toRealPath().relativize(file.toRealPath()).toString().replace('\\', '/');
        } catch (IOException e) {
            throw new UnusableInput(Place.of(file.toString()), "cannot be read (" + e + "); name the profile's file");
        } catch (IllegalArgumentException e) {
            throw new UnusableInput(Place.of(file.toString()), "lies on another disk; put it near the site folder");
        }
    }

    private UnusableInput nothing(Draft draft) {
        Fault none = new Fault(
                Place.of(folder.toString()),
                "no file here can be read as a layer; put GeoJSON, shapefiles, GeoPackages, tables of points or"
                        + " elevation rasters into it");
        return new UnusableInput(
                Stream.concat(Stream.of(none), draft.unreadable().stream()).toList());
    }

    /** Whole beside its place before it is moved there, so that a failure leaves what was. */
    private void write(String yaml) {
        Path place = folder.resolve(SITE_FILE);
        Path fresh = folder.resolve("." + SITE_FILE + ".part");
        try {
            Files.deleteIfExists(fresh);
            Files.writeString(fresh, yaml, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
            if (replace) {
                Files.move(fresh, place, StandardCopyOption.REPLACE_EXISTING);
            } else {
                Files.move(fresh, place);
            }
        } catch (FileAlreadyExistsException e) {
            refuse(SITE_FILE);
        } catch (IOException e) {
            throw new UnusableInput(
                    Place.of(Visible.of(place.toString())), "cannot be written (" + e + "); make the folder writable");
        } finally {
            discard(fresh);
        }
    }

    private static void discard(Path fresh) {
        try {
            Files.deleteIfExists(fresh);
        } catch (IOException e) {
            // it could not be made either, which has been said
        }
    }
}
