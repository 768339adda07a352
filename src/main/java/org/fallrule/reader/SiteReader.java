package org.fallrule.reader;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.frame.CoordinateSystem;
import org.fallrule.reader.frame.LocalFrame;
import org.fallrule.reader.frame.ToLocal;
import org.fallrule.reader.layer.RawFeature;
import org.fallrule.reader.layer.RawLayer;
import org.fallrule.site.Feature;
import org.fallrule.site.Layer;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/** Reads a site folder into a {@link Site}. */
public final class SiteReader {
    private final Path folder;
    private final List<Fault> faults = new ArrayList<>();
    private final List<Fault> problems = new ArrayList<>();

    private SiteReader(Path folder) {
        this.folder = folder;
    }

    /**
     * Reads a site folder.
     *
     * @throws UnusableInput with every fault found, if it cannot be used
     */
    public static Site read(Path folder) {
        return new SiteReader(folder).site();
    }

    private Site site() {
        refuseUnreadableFolder();
        SiteFile file = siteFile();
        if (file.layers().isEmpty()) {
            faults.add(new Fault(
                    Place.of(folder.toString()),
                    "no layers here; name them under layers in site.yaml, or name files for their roles, such as"
                            + " lot.geojson and pipe.shp"));
        }
        stopAtFaults();
        List<OpenLayer> open = opened(file);
        stopAtFaults();
        LocalFrame frame = frame(open);
        Map<Role, List<Feature>> features = features(file, open, frame);
        stopAtFaults();
        new PlanSanity(faults, problems).look(features);
        stopAtFaults();
        return site(file, open, frame, features);
    }

    private Site site(SiteFile file, List<OpenLayer> open, LocalFrame frame, Map<Role, List<Feature>> features) {
        String id = folder.toAbsolutePath().normalize().getFileName().toString();
        Map<Role, Layer> layers = new EnumMap<>(Role.class);
        file.absent().forEach((role, by) -> layers.put(role, new Layer.StatedAbsent(by)));
        features.forEach((role, all) -> layers.put(
                role,
                new Layer.Supplied(
                        LotOwnership.settled(role, all, problems),
                        open.stream()
                                .filter(layer -> layer.spec.role() == role)
                                .map(layer -> layer.spec.file())
                                .toList())));
        String crs = open.stream()
                .map(layer -> layer.system.name())
                .distinct()
                .reduce((a, b) -> a + "; " + b)
                .orElse("");
        return new Site(
                id,
                file.name().orElse(id),
                file.county(),
                file.house(),
                crs,
                file.datum(),
                frame::toLonLat,
                file.survey(),
                layers,
                file.waivers(),
                problems);
    }

    private void refuseUnreadableFolder() {
        Place place = Place.of(folder.toString());
        if (!Files.exists(folder)) {
            throw new UnusableInput(place, "there is no such folder; name a site folder");
        }
        if (!Files.isDirectory(folder)) {
            throw new UnusableInput(place, "is a file; name the folder that holds the site's layers");
        }
    }

    private SiteFile siteFile() {
        Path file = folder.resolve("site.yaml");
        if (Files.isRegularFile(file)) {
            return new SiteFileReader(faults).read(file, "site.yaml");
        }
        return new SiteFile(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Map.of(),
                org.fallrule.site.Survey.UNKNOWN,
                Map.of(),
                namedForRoles(),
                List.of());
    }

    private List<LayerSpec> namedForRoles() {
        List<LayerSpec> specs = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            List<String> names =
                    files.map(path -> path.getFileName().toString()).sorted().toList();
            for (Role role : Role.values()) {
                LayerFiles.ENDINGS.stream()
                        .map(ending -> role.word() + ending)
                        .filter(names::contains)
                        .findFirst()
                        .ifPresent(name -> specs.add(LayerSpec.plain(role, name, Place.of(name))));
            }
        } catch (IOException e) {
            throw new UnusableInput(Place.of(folder.toString()), "cannot be listed: " + e);
        }
        return specs;
    }

    /** A layer that has been read, and the system its coordinates are in. */
    private record OpenLayer(LayerSpec spec, RawLayer raw, CoordinateSystem system) {}

    private List<OpenLayer> opened(SiteFile file) {
        LayerFiles files = new LayerFiles(folder);
        Map<String, RawLayer> noted = new LinkedHashMap<>();
        List<OpenLayer> open = new ArrayList<>();
        for (LayerSpec spec : file.layers()) {
            try {
                RawLayer raw = files.layer(spec);
                open.add(new OpenLayer(spec, raw, LayerSystem.of(spec, raw, file.crs())));
                noted.putIfAbsent(spec.file(), raw);
            } catch (UnusableInput e) {
                e.faults().stream().filter(fault -> !faults.contains(fault)).forEach(faults::add);
            }
        }
        noted.values().forEach(raw -> problems.addAll(raw.notes()));
        return open;
    }

    /** The local frame, its origin in the middle of the lots, or of everything when there is no lot. */
    private LocalFrame frame(List<OpenLayer> open) {
        Envelope extent = new Envelope();
        boolean lots = open.stream().anyMatch(layer -> layer.spec.role() == Role.LOT);
        for (OpenLayer layer : open) {
            if (!lots || layer.spec.role() == Role.LOT) {
                expand(extent, layer);
            }
        }
        stopAtFaults();
        if (extent.isNull()) {
            throw new UnusableInput(
                    Place.of(folder.toString()), "no layer has a feature with geometry; supply the plan");
        }
        return LocalFrame.at(extent.centre().x, extent.centre().y);
    }

    private void expand(Envelope extent, OpenLayer layer) {
        for (RawFeature feature : layer.raw.features()) {
            Place place = Place.of(layer.spec.file()).feature(feature.label());
            feature.geometry().filter(geometry -> !geometry.isEmpty()).ifPresent(geometry -> {
                try {
                    for (Coordinate corner : geometry.getEnvelope().getCoordinates()) {
                        extent.expandToInclude(layer.system.toLonLat(corner, place));
                    }
                } catch (UnusableInput e) {
                    faults.addAll(e.faults());
                }
            });
        }
    }

    private Map<Role, List<Feature>> features(SiteFile file, List<OpenLayer> open, LocalFrame frame) {
        Map<Role, List<Feature>> features = new EnumMap<>(Role.class);
        for (OpenLayer layer : open) {
            ToLocal toLocal = new ToLocal(layer.system, frame);
            List<Feature> made =
                    new FeatureMaker(layer.spec, layer.raw, toLocal, file.units(), faults, problems).features();
            features.put(layer.spec.role(), made);
        }
        return features;
    }

    private void stopAtFaults() {
        if (!faults.isEmpty()) {
            throw new UnusableInput(faults);
        }
    }
}
