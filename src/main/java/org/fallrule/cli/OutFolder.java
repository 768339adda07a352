package org.fallrule.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.fallrule.docket.Stack;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;

/** What is asked of the folder that a command writes to, before anything is worked out that is to go there. */
final class OutFolder {
    private OutFolder() {}

    /**
     * Refuses a folder that lies inside of a site, where what is written would be taken for its layers.
     *
     * @param what what is to be written: {@code reports}
     */
    static void refuseInside(Path folder, Path site, String what) {
        if (Stack.real(folder).startsWith(Stack.real(site))) {
            throw new UnusableInput(
                    Place.of(folder.toString()), "lies inside of the site " + site + "; write " + what + " elsewhere");
        }
    }

    /**
     * Makes the folder, with those above it, and tries to write there.
     *
     * @throws UnusableInput when it cannot be written to
     */
    static void ready(Path folder) {
        try {
            Files.createDirectories(folder);
            Files.delete(Files.createTempFile(folder, ".fallrule", ".probe"));
        } catch (IOException e) {
            throw unwritable(folder, e);
        }
    }

    static UnusableInput unwritable(Path folder, IOException cause) {
        return new UnusableInput(
                Place.of(folder.toString()), "cannot be written to (" + cause + "); name another folder with --out");
    }
}
