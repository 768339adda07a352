package org.fallrule.reader;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.site.Role;

/**
 * What a folder holds that may hold sites.
 *
 * @param sites the folders in it that are sites, by name
 * @param others the other folders in it, by name; hidden ones are left out
 */
public record SiteFolders(List<Path> sites, List<Path> others) {
    public SiteFolders {
        sites = List.copyOf(sites);
        others = List.copyOf(others);
    }

    /**
     * Whether a folder is a site: it has a site.yaml, in any spelling, or a layer that is named for a role and no sites.yaml. A
     * folder that cannot be listed counts as one, so that its reading says what is amiss.
     */
    public static boolean isSite(Path folder) {
        if (!Files.isDirectory(folder)) {
            return false;
        }
        try {
            List<String> names = names(folder);
            boolean said = names.stream().anyMatch(SiteFolders::isSiteFile);
            return said || (!names.contains(SharedFile.NAME) && names.stream().anyMatch(SiteFolders::isNamedForRole));
        } catch (UnusableInput e) {
            return true;
        }
    }

    /**
     * The folders in a folder; none for what is no folder.
     *
     * @throws UnusableInput when it cannot be listed
     */
    public static SiteFolders in(Path folder) {
        List<Path> sites = new ArrayList<>();
        List<Path> others = new ArrayList<>();
        if (Files.isDirectory(folder)) {
            for (String name : names(folder)) {
                Path path = path(folder, name);
                if (!name.startsWith(".") && Files.isDirectory(path)) {
                    (isSite(path) ? sites : others).add(path);
                }
            }
        }
        return new SiteFolders(sites, others);
    }

    /** Under a language setting without a letter of a name, such as LC_ALL=C, the name can be listed and not be opened. */
    static Path path(Path folder, String name) {
        try {
            return folder.resolve(name);
        } catch (InvalidPathException e) {
            throw new UnusableInput(
                    Place.of(folder.toString()),
                    "holds a name with letters that the language setting does not have: " + name
                            + "; set LC_ALL=C.UTF-8, or rename it");
        }
    }

    private static boolean isSiteFile(String name) {
        String small = name.toLowerCase(Locale.ROOT);
        return small.equals("site.yaml") || small.equals("site.yml");
    }

    private static boolean isNamedForRole(String name) {
        return Stream.of(Role.values()).anyMatch(role -> isNamedFor(role, name));
    }

    /** Whether a file is named for a role, such as {@code lot.geojson}; capitals do not matter. */
    static boolean isNamedFor(Role role, String name) {
        int length = role.word().length();
        return name.regionMatches(true, 0, role.word(), 0, length)
                && LayerFormat.allEndings().stream().anyMatch(name.substring(length)::equalsIgnoreCase);
    }

    /** What stands in a folder, by name. */
    static List<String> names(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(path -> String.valueOf(path.getFileName()))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UnusableInput(
                    Place.of(folder.toString()), "cannot be listed (" + e + "); make the folder readable");
        }
    }
}
