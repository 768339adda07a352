package org.fallrule.reader;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.document.Fault;
import org.fallrule.document.Keys;
import org.fallrule.document.Node;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.document.Yaml;
import org.fallrule.locality.Storm;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Length;
import org.fallrule.measure.Unit;
import org.fallrule.measure.UnreadableQuantity;
import org.fallrule.measure.Written;
import org.fallrule.site.Role;
import org.fallrule.site.Survey;

/**
 * What a sites.yaml says: the layers that the sites beside it share, and what holds for each site that says nothing else.
 *
 * @param folder the folder that it stands in
 * @param near how far around a site's own features shared ones are taken
 * @param says the shared layers under {@code layers}, with the systems, units and datum of those that do not say; the county, the
 *     firm and the roles stated absent of sites that do not say
 */
record SharedFile(Path folder, Length near, SiteFile says) {
    static final String NAME = "sites.yaml";

    /** How a site's report shows the file and those beside it. */
    static final String UP = "../";

    /** Wider than any limit of the shipped books. */
    static final Length USUALLY_NEAR = Length.feet(300);

    /** The file in a folder, if one is there; what is wrong with it is added to the faults. */
    static Optional<SharedFile> in(Path folder, List<Fault> faults) {
        Path file = folder.resolve(NAME);
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        LayerFiles.refuseLinkOut(file, folder, Place.of(UP + NAME));
        return Optional.of(read(folder, file, faults));
    }

    private static SharedFile read(Path folder, Path file, List<Fault> faults) {
        Keys keys = new Keys(Yaml.read(file, UP + NAME), faults);
        Length near = keys.scalar("near").map(said -> length(said, faults)).orElse(USUALLY_NEAR);
        Optional<Node.Scalar> county = keys.scalar("county");
        Optional<Node.Scalar> house = keys.scalar("house");
        Optional<Node.Scalar> crs = keys.scalar("crs");
        Optional<Node.Scalar> datum = keys.scalar("datum");
        LayerSpecReader specs = new LayerSpecReader(faults);
        Map<String, Unit> units = new UnitsReader(faults).units(keys);
        Map<Role, Place> absent = new SiteFileReader(faults).absent(keys);
        List<LayerSpec> layers = keys.mapping("shared").map(specs::layers).orElse(List.of()).stream()
                .map(spec -> spec.withDatum(spec.datum().or(() -> datum)))
                .toList();
        keys.refuseOthers(NAME);
        SiteFileReader.refuseAbsent(layers, absent, faults);
        crs.ifPresent(named -> refuseUnknown(named, faults));
        SiteFile says = new SiteFile(
                Optional.empty(),
                county,
                house,
                crs,
                datum.map(Node.Scalar::text),
                units,
                Survey.UNKNOWN,
                absent,
                layers,
                List.of(),
                Storm.UNSAID,
                Optional.empty());
        return new SharedFile(folder, near, says);
    }

    private static void refuseUnknown(Node.Scalar crs, List<Fault> faults) {
        try {
            LayerSystem.of(crs);
        } catch (UnusableInput e) {
            faults.addAll(e.faults());
        }
    }

    private static Length length(Node.Scalar said, List<Fault> faults) {
        try {
            Length length = new Length(
                    Written.parse(said.text(), Dimension.LENGTH).quantity().si());
            if (length.metres() >= 0) {
                return length;
            }
            faults.add(
                    new Fault(said.place(), "near: " + said.kind() + " is negative; give a distance, such as 300 ft"));
        } catch (UnreadableQuantity e) {
            faults.add(new Fault(said.place(), "near: " + e.says()));
        }
        return USUALLY_NEAR;
    }

    /** The file and every file that a layer is read from. */
    List<Path> files() {
        List<Path> files = new ArrayList<>(List.of(folder.resolve(NAME)));
        for (LayerSpec spec : says.layers()) {
            Path file = new LayerFiles(folder).path(spec);
            LayerFiles.companions(file)
                    .filter(Files::isRegularFile)
                    .filter(beside -> !Files.isSymbolicLink(beside) || beside.equals(file))
                    .sorted()
                    .forEach(files::add);
        }
        return files;
    }
}
