package org.fallrule.reader.shapefile;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.fallrule.document.Nearest;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;

/**
 * The names of the files in a zip file, and which of the shapefiles among them is meant.
 *
 * @param names the names, with their folders; what archivers add of their own left out
 * @param place the zip file
 */
record ZipContents(List<String> names, Place place) {
    private static final int MOST_ENTRIES = 10_000;
    private static final Set<String> WANTED = Set.of("shp", "shx", "dbf", "prj", "cpg");
    private static final Pattern LEADS_OUT =
            Pattern.compile("(?:.*[/\\\\])?\\.\\.(?:[/\\\\].*)?|[/\\\\].*|[A-Za-z]:.*");
    private static final Pattern OF_THE_ARCHIVER = Pattern.compile("__MACOSX/.*|(?:.*/)?\\._[^/]*");

    /** @throws UnusableInput when it holds too many files, or one that leads out of it */
    static ZipContents of(ZipFile zip, Place place) {
        if (zip.size() > MOST_ENTRIES) {
            throw new UnusableInput(
                    place, "holds " + zip.size() + " files, wanted at most " + MOST_ENTRIES + "; zip the layer alone");
        }
        List<String> names = zip.stream()
                .filter(entry -> !entry.isDirectory())
                .map(ZipEntry::getName)
                .filter(name -> !OF_THE_ARCHIVER.matcher(name).matches())
                .toList();
        names.stream()
                .filter(name -> LEADS_OUT.matcher(name).matches())
                .findFirst()
                .ifPresent(name -> {
                    throw new UnusableInput(
                            place,
                            "holds a file " + name
                                    + ", which leads out of it; zip the layer's files again without folders");
                });
        return new ZipContents(names, place);
    }

    /** The shapefiles, with their folders, without {@code .shp}. */
    List<String> shapefiles() {
        return names.stream()
                .filter(name -> extension(name).equals("shp"))
                .map(ZipContents::stem)
                .toList();
    }

    /**
     * The shapefile of a name, or the only one there is.
     *
     * @throws UnusableInput when there is none, or several could be meant
     */
    String shapefile(Optional<String> wanted) {
        List<String> stems = shapefiles();
        if (stems.isEmpty()) {
            throw new UnusableInput(
                    place, "holds no shapefile (.shp); zip the .shp with its .shx, .dbf and .prj, or unpack it");
        }
        if (wanted.isPresent()) {
            return named(wanted.get().replaceFirst("(?i)\\.shp$", ""), stems);
        }
        if (stems.size() > 1) {
            List<String> shown = stems.stream().map(ZipContents::base).toList();
            throw new UnusableInput(
                    place,
                    "holds " + stems.size() + " shapefiles: " + String.join(", ", shown)
                            + "; say in site.yaml which one it is, such as {file: " + place.file() + ", table: "
                            + shown.get(0) + "}");
        }
        return stems.get(0);
    }

    private String named(String word, List<String> stems) {
        List<String> found = stems.stream()
                .filter(stem -> stem.equalsIgnoreCase(word) || base(stem).equalsIgnoreCase(word))
                .toList();
        if (found.size() == 1) {
            return found.get(0);
        }
        List<String> shown = stems.stream().map(ZipContents::base).toList();
        throw new UnusableInput(
                place,
                found.isEmpty()
                        ? "holds no shapefile " + word + Nearest.hint(word, shown) + " It has "
                                + String.join(", ", shown)
                        : "holds several shapefiles " + word + ": " + String.join(", ", found)
                                + "; name it with its folder");
    }

    /** The names of a shapefile's files by their extension; of two that differ in case only, the one spelled as it is. */
    Map<String, String> filesOf(String shapefile) {
        Map<String, String> files = new LinkedHashMap<>();
        for (String name : names) {
            String extension = extension(name);
            if (WANTED.contains(extension)
                    && stem(name).equalsIgnoreCase(shapefile)
                    && (stem(name).equals(shapefile) || !files.containsKey(extension))) {
                files.put(extension, name);
            }
        }
        return files;
    }

    private static String extension(String name) {
        return name.substring(stem(name).length()).replace(".", "").toLowerCase(Locale.ROOT);
    }

    private static String stem(String name) {
        int dot = name.lastIndexOf('.');
        return dot > name.lastIndexOf('/') ? name.substring(0, dot) : name;
    }

    /** A name without its folders. */
    static String base(String name) {
        return name.substring(name.lastIndexOf('/') + 1);
    }
}
