package org.fallrule.reader;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.fallrule.document.Fault;
import org.fallrule.document.Node;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.document.Yaml;

/**
 * Where a profile of layers may stand: a {@code .yaml} file in the site folder, or in or below a folder at most
 * {@value #MOST_UP} above it. A plan from elsewhere could name any file on the computer; so nothing else is opened, and no link
 * that leads out of there.
 */
public final class ProfileFile {
    /** How many folders up from the site a profile may stand. */
    public static final int MOST_UP = 3;

    /** The key of site.yaml that names one. */
    static final String KEY = "layers_from";

    private static final String WANTED = "; wanted a .yaml file in the site folder or at most " + MOST_UP
            + " folders up, such as ../our-collector.yaml";

    private ProfileFile() {}

    /** The profile that site.yaml names; one that cannot be used is a fault, and says nothing. */
    static LayerProfile read(Path folder, Optional<Node.Scalar> named, List<Fault> faults) {
        if (named.isEmpty()) {
            return LayerProfile.NONE;
        }
        int before = faults.size();
        try {
            String name = named.get().text();
            LayerProfile profile =
                    LayerProfile.of(Yaml.read(path(folder, name, named.get().place()), name), faults);
            return faults.size() == before ? profile : LayerProfile.NONE;
        } catch (UnusableInput e) {
            faults.addAll(e.faults());
            return LayerProfile.NONE;
        }
    }

    /** The profile that the site.yaml of a folder names, if one may be read there. */
    public static Optional<Path> of(Path folder) {
        try {
            return named(folder).map(named -> path(folder, named.text(), named.place()));
        } catch (UnusableInput e) {
            return Optional.empty();
        }
    }

    /** What a profile that site.yaml names leaves open, each with its line there. */
    static List<Fault> questions(Path folder, Node.Scalar named) {
        try {
            return named.text().isBlank()
                    ? List.of()
                    : OpenQuestions.in(
                            Yaml.text(path(folder, named.text(), named.place()), named.text()), named.text());
        } catch (UnusableInput e) {
            // whoever reads the profile says what is wrong with it
            return List.of();
        }
    }

    private static Optional<Node.Scalar> named(Path folder) {
        Path said = folder.resolve("site.yaml");
        String text = Files.isRegularFile(said) ? Yaml.text(said, "site.yaml") : "";
        // most sites name none, and to parse takes long; a key that is written otherwise is so with a backslash
        return text.contains(KEY) || text.contains("\\")
                ? Yaml.parse(text, "site.yaml")
                        .get(KEY)
                        .filter(Node.Scalar.class::isInstance)
                        .map(Node.Scalar.class::cast)
                        .filter(named -> !named.text().isBlank())
                : Optional.empty();
    }

    /**
     * The file of a profile.
     *
     * @param folder the site folder
     * @param name its path from there
     * @param place where it is named
     * @throws UnusableInput if no profile may stand there, or none does
     */
    static Path path(Path folder, String name, Place place) {
        try {
            Path path = Path.of(name.replace('\\', '/'));
            long up = upward(path);
            boolean isFar = path.isAbsolute()
                    || up > MOST_UP
                    || path.subpath((int) up, path.getNameCount()).normalize().startsWith("..");
            if (isFar || !isYaml(path)) {
                throw new UnusableInput(place, "layers_from: " + name + " may not be read" + WANTED);
            }
            Path base = folder.toRealPath();
            for (long i = 0; i < up; i++) {
                base = Optional.ofNullable(base.getParent()).orElse(base);
            }
            Path file = base.resolve(path.subpath((int) up, path.getNameCount()));
            if (!Files.isRegularFile(file)) {
                throw new UnusableInput(place, "layers_from: there is no file " + name + WANTED);
            }
            Path real = file.toRealPath();
            if (!real.startsWith(base) || !isYaml(real)) {
                throw new UnusableInput(place, "layers_from: " + name + " is a link that leads elsewhere" + WANTED);
            }
            return real;
        } catch (IllegalArgumentException e) {
            throw new UnusableInput(place, "layers_from: \"" + name + "\" cannot be a file's name" + WANTED);
        } catch (IOException e) {
            throw new UnusableInput(place, "layers_from: " + name + " cannot be read (" + e + ")" + WANTED);
        }
    }

    /** How many of the first steps lead up. */
    private static long upward(Path path) {
        long up = 0;
        while (up < path.getNameCount() && path.getName((int) up).toString().equals("..")) {
            up++;
        }
        return up;
    }

    private static boolean isYaml(Path path) {
        return path.toString().toLowerCase(Locale.ROOT).endsWith(".yaml");
    }
}
