package org.fallrule.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A stack of made-up plans, as a reviewer has them: several counties and kinds of file in turn, some of them failing. */
final class MadeStack {
    static final long SEED = 20_263;

    private MadeStack() {}

    /**
     * Writes a stack.
     *
     * @param args the folder, how many sites, and if wanted how many houses on each lot and the seed
     */
    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]);
        int homes = args.length > 2 ? Integer.parseInt(args[2]) : 1;
        long seed = args.length > 3 ? Long.parseLong(args[3]) : SEED;
        write(folder, Integer.parseInt(args[1]), homes, seed, List.of(MadeFormat.values()));
    }

    /** Writes sites into a folder, the formats in turn; a site that is there already is left as it is. */
    static List<Path> write(Path folder, int sites, int homes, long seed, List<MadeFormat> formats) throws IOException {
        List<Path> made = new ArrayList<>();
        for (int number = 0; number < sites; number++) {
            String name = String.format(Locale.ROOT, "lot-%05d", number + 1);
            Path site = folder.resolve(name);
            if (!Files.exists(site.resolve("site.yaml"))) {
                long own = seed + 1_000_003L * number;
                formats.get(number % formats.size())
                        .site(
                                site,
                                "Stack Lane " + (number + 1),
                                MadePlace.of(number / formats.size(), own),
                                MadeHomes.features(own, homes));
            }
            made.add(site);
        }
        return made;
    }
}
