package org.fallrule.reader;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.document.Yaml;
import org.fallrule.site.Role;

/** The folder of a site: its site.yaml and the files that are named for roles. */
final class SiteFolder {
    private static final String SITE_FILE = "site.yaml";

    private final Path folder;
    private final List<String> names;

    private SiteFolder(Path folder, List<String> names) {
        this.folder = folder;
        this.names = names;
    }

    /** Lists a folder. */
    static SiteFolder open(Path folder) {
        if (!Files.isDirectory(folder)) {
            throw new UnusableInput(
                    Place.of(folder.toString()),
                    Files.exists(folder)
                            ? "is a file; name the folder that holds the site's layers"
                            : "there is no such folder; name a site folder");
        }
        return new SiteFolder(folder, SiteFolders.names(folder));
    }

    /** Its layers' files. */
    LayerFiles files() {
        return new LayerFiles(folder, names);
    }

    /** The name of the folder itself, which is the site's id. */
    String id() {
        Path name = folder.toAbsolutePath().normalize().getFileName();
        return name == null ? "site" : name.toString();
    }

    /**
     * What the site is said to be: site.yaml, and where that names no layers, the files that are named for roles.
     *
     * @param siteYaml the text of site.yaml
     */
    SiteFile siteFile(Optional<String> siteYaml, List<Fault> faults, List<Fault> problems) {
        tellOtherSpelling(faults, problems);
        SiteFile written = siteYaml.map(text -> new SiteFileReader(faults).read(text, folder, SITE_FILE))
                .orElseGet(SiteFile::silent);
        if (!written.layers().isEmpty()) {
            tellUnread(written, problems);
            return written;
        }
        List<LayerSpec> specs = namedForRoles(faults);
        if (specs.isEmpty() && faults.isEmpty()) {
            faults.add(new Fault(
                    Place.of(folder.toString()),
                    "no layers here; name them under layers in site.yaml, or name files for their roles, such as"
                            + " lot.geojson and pipe.shp; \"fallrule begin\" writes site.yaml from files of any name"));
        }
        SiteFileReader.refuseAbsent(specs, written.absent(), faults);
        return written.with(specs);
    }

    /** What site.yaml and the profile that it names ask and nobody has answered. */
    List<Fault> questions(Optional<String> siteYaml, SiteFile said) {
        List<Fault> open = new ArrayList<>(
                siteYaml.map(text -> OpenQuestions.in(text, SITE_FILE)).orElse(List.of()));
        said.profile().ifPresent(named -> open.addAll(ProfileFile.questions(folder, named)));
        return open;
    }

    /** The text of site.yaml, where there is one. */
    Optional<String> siteYaml() {
        Path file = folder.resolve(SITE_FILE);
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        LayerFiles.refuseLinkOut(file, folder, Place.of(SITE_FILE));
        return Optional.of(Yaml.text(file, SITE_FILE));
    }

    /** A site.yml would be taken as read by whoever put it there, beside a site.yaml too. */
    private void tellOtherSpelling(List<Fault> faults, List<Fault> problems) {
        boolean isThere = names.contains(SITE_FILE);
        names.stream()
                .filter(name -> !name.equals(SITE_FILE))
                .filter(name -> Set.of(SITE_FILE, "site.yml").contains(name.toLowerCase(Locale.ROOT)))
                .map(name -> new Fault(
                        Place.of(name),
                        isThere
                                ? "is not read, since " + SITE_FILE + " is; take it away, or put what it says in there"
                                : "is not read; rename it to " + SITE_FILE))
                .forEach(isThere ? problems::add : faults::add);
    }

    private List<LayerSpec> namedForRoles(List<Fault> faults) {
        List<LayerSpec> specs = new ArrayList<>();
        for (Role role : Role.values()) {
            List<String> found = namedFor(role, Set.of());
            if (found.size() > 1) {
                faults.add(new Fault(
                        Place.of(found.get(0)),
                        "and " + String.join(", ", found.subList(1, found.size())) + " are all named for the role "
                                + role.word() + "; say in site.yaml which one it is, such as layers: {" + role.word()
                                + ": " + found.get(0) + "}"));
            }
            found.stream().limit(1).forEach(name -> specs.add(LayerSpec.plain(role, name, Place.of(name))));
        }
        return specs;
    }

    /** The files that are named for a role and are none of some others, which are in small letters. */
    private List<String> namedFor(Role role, Set<String> others) {
        return names.stream()
                .filter(name -> SiteFolders.isNamedFor(role, name))
                .filter(name -> !others.contains(name.toLowerCase(Locale.ROOT)))
                .filter(name -> Files.isRegularFile(folder.resolve(name)))
                .toList();
    }

    /** A file that is named for a role but not under layers would be taken as checked by whoever put it there. */
    private void tellUnread(SiteFile written, List<Fault> problems) {
        Set<String> read = new HashSet<>();
        written.layers()
                .forEach(layer ->
                        read.add(layer.file().replaceFirst("^(\\./)+", "").toLowerCase(Locale.ROOT)));
        for (Role role : Role.values()) {
            namedFor(role, read)
                    .forEach(name -> problems.add(new Fault(
                            Place.of(name), "is not named under layers in site.yaml and is not read; name it there")));
        }
    }
}
