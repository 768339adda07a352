package org.fallrule.cli;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine.IVersionProvider;

/** The version that the build put into the jar. */
final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
        return new String[] {"fallrule " + number()};
    }

    private static String number() {
        String version = Version.class.getPackage().getImplementationVersion();
        return version == null ? "(not packaged)" : version;
    }

    /** What tells one build from another: the version, with the size and time of the jar, as far as there is one. */
    static String build() {
        try {
            Path jar = Path.of(Version.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
            return number() + " "
                    + (Files.isRegularFile(jar) ? Files.size(jar) + " " + Files.getLastModifiedTime(jar) : "");
        } catch (IOException | URISyntaxException e) {
            return number();
        }
    }
}
