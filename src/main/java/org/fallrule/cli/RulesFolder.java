package org.fallrule.cli;

import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.rulebook.RuleLibrary;

/** Finds the folder of rule books. */
final class RulesFolder {
    private RulesFolder() {}

    /** The named folder; else {@code rules} in the current folder; else {@code rules} beside the jar or one folder up. */
    static RuleLibrary open(Optional<Path> named) {
        if (named.isPresent()) {
            return library(named.get());
        }
        Path here = Path.of("rules");
        if (Files.isDirectory(here)) {
            return library(here);
        }
        return besideJar()
                .map(RulesFolder::library)
                .orElseThrow(() -> new UnusableInput(
                        Place.of("rules"), "there is no folder of rule books here; name it with --rules DIR"));
    }

    private static RuleLibrary library(Path folder) {
        String shown = folder.toString().replace('\\', '/');
        if (!Files.isRegularFile(folder.resolve("baseline.yaml"))) {
            throw new UnusableInput(Place.of(shown), "holds no baseline.yaml; name the folder of rule books");
        }
        return new RuleLibrary(folder, shown.endsWith("/") ? shown.substring(0, shown.length() - 1) : shown);
    }

    private static Optional<Path> besideJar() {
        try {
            Path jar = Path.of(RulesFolder.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
            return Optional.ofNullable(jar.getParent()).stream()
                    .flatMap(folder ->
                            java.util.stream.Stream.of(folder.resolve("rules"), folder.resolveSibling("rules")))
                    .filter(Files::isDirectory)
                    .findFirst();
        } catch (URISyntaxException e) {
            return Optional.empty();
        }
    }
}
