package org.fallrule.docket;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.SiteFolders;

/**
 * The sites that words of a command name.
 *
 * @param sites the sites, each once, in the order in which they were named; those of a folder by name
 * @param notices what was left out, found twice or renamed
 * @param single whether one site folder was named and nothing else
 */
public record Stack(List<Submittal> sites, List<Fault> notices, boolean single) {
    /** Names that the index has in the output folder. */
    private static final Set<String> TAKEN = Set.of("index.html", "index.csv", "index.json");

    public Stack {
        sites = List.copyOf(sites);
        notices = List.copyOf(notices);
    }

    /**
     * Finds the sites.
     *
     * @param words site folders, folders that hold site folders, or patterns such as {@code stack/*}
     * @param out the folder that reports go to, which is never looked into
     * @throws UnusableInput when a pattern matches nothing, or a folder cannot be listed
     */
    public static Stack of(List<String> words, Optional<Path> out) {
        Search search = new Search(out.map(Stack::real));
        words.forEach(search::word);
        boolean single = words.size() == 1 && !search.opened;
        return new Stack(search.found, search.notices, single);
    }

    /** The place on disk with links followed, as far as it is there yet. */
    public static Path real(Path path) {
        Path whole = path.toAbsolutePath().normalize();
        try {
            return whole.toRealPath();
        } catch (java.io.IOException e) {
            Path parent = whole.getParent();
            return parent == null ? whole : real(parent).resolve(whole.getFileName());
        }
    }

    private static final class Search {
        private final Optional<Path> out;
        private final List<Submittal> found = new ArrayList<>();
        private final List<Fault> notices = new ArrayList<>();
        private final Set<Path> seen = new HashSet<>();
        private final Set<String> folders = new HashSet<>(TAKEN);
        private final Map<String, Integer> last = new HashMap<>();
        private boolean opened;

        Search(Optional<Path> out) {
            this.out = out;
        }

        void word(String word) {
            if (Pattern.isOne(word)) {
                opened = true;
                List<Path> matches = Pattern.matches(word);
                if (matches.isEmpty()) {
                    throw new UnusableInput(Place.of(word), "matches no folder; name site folders or a folder of them");
                }
                matches.forEach(this::folder);
            } else {
                folder(Pattern.path(word));
            }
        }

        /** A site, or a folder that holds sites; anything else is taken for a site, so that its reading says what is amiss. */
        private void folder(Path path) {
            if (SiteFolders.isSite(path)) {
                add(path);
                return;
            }
            SiteFolders held = SiteFolders.in(path);
            List<Path> sites = held.sites().stream().filter(this::isInput).toList();
            if (sites.isEmpty()) {
                add(path);
                return;
            }
            opened = true;
            sites.forEach(this::add);
            held.others().stream()
                    .filter(this::isInput)
                    .forEach(other -> notice(
                            other, "holds no site.yaml and no file that is named for a role, and was not checked"));
        }

        private boolean isInput(Path path) {
            if (out.filter(real(path)::equals).isPresent()) {
                notice(path, "is where the reports go, and is not looked into");
                return false;
            }
            return true;
        }

        private void add(Path path) {
            if (!seen.add(real(path))) {
                notice(path, "is named twice, and was checked once");
                return;
            }
            String name = Submittal.nameOf(path);
            String folder = distinct(name);
            if (!folder.equals(name)) {
                notice(path, "has the folder name of another site; its report is written to " + folder);
            }
            found.add(new Submittal(path, shown(path), folder));
        }

        /** A name that no other report has, not even where capitals and small letters are the same. */
        private String distinct(String name) {
            String folder = name;
            int number = last.getOrDefault(name, 1);
            while (!folders.add(folder.toLowerCase(Locale.ROOT))) {
                number++;
                folder = name + "-" + number;
            }
            last.put(name, number);
            return folder;
        }

        private void notice(Path path, String says) {
            notices.add(new Fault(Place.of(shown(path)), says));
        }
    }

    private static String shown(Path path) {
        return path.toString().replace('\\', '/');
    }
}
