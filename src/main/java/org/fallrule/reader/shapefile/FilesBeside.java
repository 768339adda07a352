package org.fallrule.reader.shapefile;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;

/**
 * The files of one shapefile: same folder, same name, differing in what follows the last dot (Technical Description, Naming Conventions). Names
 * that differ in case only are taken as the same, since many writers mix them.
 */
final class FilesBeside implements Companions {
    private final Path main;
    private final String shownAs;

    FilesBeside(Path main, String shownAs) {
        this.main = main;
        this.shownAs = shownAs;
    }

    @Override
    public ShownFile main() {
        return new FileOnDisk(main, Place.of(shownAs));
    }

    /** The companion, the name of exactly that spelling before any other. */
    @Override
    public Optional<ShownFile> find(String extension) {
        String wanted = baseName() + "." + extension;
        Path exact = main.resolveSibling(wanted);
        return (Files.exists(exact) ? Optional.of(exact) : spelledOtherwise(wanted)).map(this::shown);
    }

    private String baseName() {
        String name = name(main);
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
    }

    private Optional<Path> spelledOtherwise(String wanted) {
        Path folder = main.toAbsolutePath().getParent();
        if (folder == null) {
            return Optional.empty();
        }
        try (Stream<Path> siblings = Files.list(folder)) {
            return siblings.filter(path -> name(path).equalsIgnoreCase(wanted)).min(sameBaseFirst());
        } catch (IOException | UncheckedIOException failed) {
            throw new UnusableInput(
                    Place.of(shownAs),
                    "its folder cannot be listed (" + FileOnDisk.reason(failed) + "); make the folder readable");
        }
    }

    private Comparator<Path> sameBaseFirst() {
        String base = baseName();
        return Comparator.<Path, Boolean>comparing(path -> !name(path).startsWith(base))
                .thenComparing(FilesBeside::name);
    }

    private ShownFile shown(Path companion) {
        int folderEnd = Math.max(shownAs.lastIndexOf('/'), shownAs.lastIndexOf('\\')) + 1;
        return new FileOnDisk(companion, Place.of(shownAs.substring(0, folderEnd) + name(companion)));
    }

    private static String name(Path path) {
        Path name = path.getFileName();
        return name == null ? "" : name.toString();
    }
}
