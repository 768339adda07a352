package org.fallrule.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Map;

/** Files that belong together: all are written whole beside their places before the first is moved there. */
final class WholeFiles {
    private WholeFiles() {}

    /**
     * Puts files into a folder, in place of those there by the same names.
     *
     * @throws IOException when one cannot be written, with no file changed, or cannot be moved
     */
    static void put(Path folder, Map<String, byte[]> files) throws IOException {
        put(folder, folder, files);
    }

    /** The same for files that are made in another folder on the same disk. */
    static void put(Path folder, Path unfinished, Map<String, byte[]> files) throws IOException {
        try {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                // what stands there may be a link of somebody else's, which is not written through
                Path fresh = part(unfinished, file.getKey());
                Files.deleteIfExists(fresh);
                Files.write(fresh, file.getValue(), StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
            }
            for (String name : files.keySet()) {
                Files.move(part(unfinished, name), folder.resolve(name), StandardCopyOption.REPLACE_EXISTING);
            }
        } finally {
            for (String name : files.keySet()) {
                Files.deleteIfExists(part(unfinished, name));
            }
        }
    }

    private static Path part(Path unfinished, String name) {
        return unfinished.resolve("." + name + ".part");
    }
}
