package org.fallrule.docket;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.fallrule.reader.ProfileFile;
import org.fallrule.reader.SharedLayers;

/**
 * Stands for everything that a site's report is made from: the program, the options, the rule books, the layers that the site
 * shares with others, the profile of layers that it names, and its own files.
 */
public final class RunDigest {
    private final String ofRun;
    private final Map<Path, String> ofShared = new ConcurrentHashMap<>();

    /**
     * @param program the program's version
     * @param options the options that change a report, the day among them
     * @param rules the folder of rule books
     */
    public RunDigest(String program, String options, Path rules) {
        this.ofRun =
                new InputDigest().add(program).add(options).addFolder(rules).text();
    }

    /**
     * The digest of what the report on a site folder is made from.
     *
     * @throws org.fallrule.document.UnusableInput when one of its files cannot be read
     */
    String of(Path site) {
        Path parent = site.toAbsolutePath().normalize().getParent();
        String shared = parent == null ? "" : ofShared.computeIfAbsent(parent, RunDigest::shared);
        InputDigest digest = new InputDigest().add(ofRun).add(shared);
        ProfileFile.of(site).ifPresent(profile -> digest.addFile(profile, "profile"));
        return (Files.isDirectory(site) ? digest.addFolder(site) : digest).text();
    }

    private static String shared(Path folder) {
        InputDigest digest = new InputDigest();
        SharedLayers.files(folder).forEach(file -> digest.addFile(file, String.valueOf(file.getFileName())));
        return digest.text();
    }
}
