package org.fallrule.cli;

import picocli.CommandLine.IVersionProvider;

/** The version that the build put into the jar. */
final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
        String version = Version.class.getPackage().getImplementationVersion();
        return new String[] {"fallrule " + (version == null ? "(not packaged)" : version)};
    }
}
