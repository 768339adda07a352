package org.fallrule.docket;

import java.nio.file.Path;

/**
 * A site folder that is to be checked.
 *
 * @param path where it lies
 * @param shown the same as the user knows it, with slashes
 * @param folder the name of its report's folder, which no other site of the run has
 */
public record Submittal(Path path, String shown, String folder) {
    /** The name of the site folder itself. */
    public String name() {
        return nameOf(path);
    }

    static String nameOf(Path path) {
        Path name = path.toAbsolutePath().normalize().getFileName();
        return name == null ? "site" : name.toString();
    }
}
