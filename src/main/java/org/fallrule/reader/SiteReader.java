package org.fallrule.reader;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fallrule.document.Fault;
import org.fallrule.document.Node;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.reader.frame.LocalFrame;
import org.fallrule.site.Feature;
import org.fallrule.site.Frame;
import org.fallrule.site.Layer;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/** Reads a site folder into a {@link Site}. */
public final class SiteReader {
    private final Path folder;
    private final Optional<SharedLayers> shared;
    private final Optional<Frame> given;
    private final List<Fault> faults = new ArrayList<>();
    private final List<Fault> problems = new ArrayList<>();
    private final SiteFolder place;
    private final List<Fault> questions;
    private final SiteFile said;

    private SiteReader(Path folder, Optional<SharedLayers> shared, Optional<Frame> given) {
        this.folder = folder;
        this.shared = shared;
        this.given = given;
        place = SiteFolder.open(folder);
        Optional<String> siteYaml = place.siteYaml();
        said = place.siteFile(siteYaml, faults, problems);
        questions = place.questions(siteYaml, said);
        problems.addAll(0, questions);
    }

    /**
     * Reads a site folder, with what it takes from the layers that a {@code sites.yaml} beside it shares.
     *
     * @throws UnusableInput with every fault found, if it cannot be used
     */
    public static Site read(Path folder) {
        return read(folder, new SharedLayersByFolder().around(folder));
    }

    /** Reads a site folder, with what it takes from shared layers that have been read. */
    public static Site read(Path folder, Optional<SharedLayers> shared) {
        return open(folder, shared).site();
    }

    /**
     * Reads what a site folder says of itself, before its layers.
     *
     * @throws UnusableInput if there is no such folder, or its site.yaml is none
     */
    public static SiteReader open(Path folder, Optional<SharedLayers> shared) {
        return new SiteReader(folder, shared, Optional.empty());
    }

    /** The county that site.yaml names, where it does. */
    public Optional<Node.Scalar> county() {
        return said.county();
    }

    /** The firm that site.yaml names, where it does. */
    public Optional<Node.Scalar> house() {
        return said.house();
    }

    /**
     * Reads a site folder into the local frame of another plan, so that both can be laid over each other.
     *
     * @throws UnusableInput with every fault found, if it cannot be used
     */
    public static Site read(Path folder, Frame frame) {
        return new SiteReader(folder, new SharedLayersByFolder().around(folder), Optional.of(frame)).site();
    }

    /**
     * Reads the layers; once.
     *
     * @throws UnusableInput with every fault found, if the plan cannot be used
     */
    public Site site() {
        SiteFile file = shared.map(layers -> layers.completed(said)).orElse(said);
        refuseUnknownSystem(file);
        stopAtFaults();
        List<OpenLayer> open = new ArrayList<>();
        try (LayerFiles files = place.files()) {
            open.addAll(OpenLayer.all(files, file, faults, problems));
        }
        stopAtFaults();
        shared.ifPresent(layers -> open.addAll(layers.near(List.copyOf(open), faults, problems)));
        stopAtFaults();
        LocalFrame frame = frame(open);
        PlanDatum datum = PlanDatum.of(file, open, problems);
        FramedLayers plan = new FramedLayers(open, frame, faults, problems);
        Map<Role, List<Feature>> features = ZeroHeights.unused(plan.features(datum), problems);
        stopAtFaults();
        if (shared.isPresent() && features.containsKey(Role.LOT)) {
            features.put(Role.LOT, LotOfPlan.marked(features, problems));
        }
        new PlanSanity(faults, problems)
                .look(features, (role, there) -> plan.misread(role, features.getOrDefault(role, List.of()), there));
        Map<Role, Layer> rasters =
                new GroundRasters(folder, file, frame, datum, faults, problems).around(features.values());
        stopAtFaults();
        shared.ifPresent(all -> rasters.putAll(all.rasters(features, Map.copyOf(rasters), frame, datum, problems)));
        problems.addAll(plan.asRead(features, rasters).problems());
        Map<Role, Layer> layers = plan.layers(features, file.absent());
        stopAtFaults();
        rasters.forEach((role, raster) -> layers.merge(role, raster, SiteReader::over));
        return site(place.id(), file, open, frame, layers);
    }

    /** A raster, and over it what other files give in its role. */
    private static Layer over(Layer features, Layer raster) {
        return raster instanceof Layer.Raster grid
                ? new Layer.Raster(grid.heights(), grid.file(), features.features())
                : raster;
    }

    /** A system that site.yaml names has to be one, whether or not a layer needs it. */
    private void refuseUnknownSystem(SiteFile file) {
        try {
            file.crs().ifPresent(LayerSystem::of);
        } catch (UnusableInput e) {
            faults.addAll(e.faults());
        }
    }

    private Site site(String id, SiteFile file, List<OpenLayer> open, LocalFrame frame, Map<Role, Layer> layers) {
        return new Site(
                id,
                file.name().orElse(id),
                file.county().map(Node.Scalar::text),
                file.house().map(Node.Scalar::text),
                open.stream().map(layer -> layer.system().name()).distinct().collect(Collectors.joining("; ")),
                file.datum(),
                frame::toLonLat,
                file.survey(),
                layers,
                file.waivers(),
                problems,
                file.storm(),
                file.isMetric());
    }

    /** The local frame: the given one, or with its origin in the middle of the lots, or of everything when there is no lot. */
    private LocalFrame frame(List<OpenLayer> open) {
        Envelope extent = new Envelope();
        boolean lots = open.stream().anyMatch(layer -> layer.is(Role.LOT));
        open.stream()
                .filter(layer -> !lots || layer.is(Role.LOT))
                .forEach(layer -> extent.expandToInclude(layer.extent(faults)));
        stopAtFaults();
        if (extent.isNull()) {
            throw new UnusableInput(
                    Place.of(folder.toString()),
                    lots
                            ? "no lot has geometry; draw the lot, or leave its layer out"
                            : "no layer has a feature with geometry; supply the plan");
        }
        Coordinate origin =
                given.map(frame -> frame.toLonLat(new Coordinate(0, 0))).orElseGet(extent::centre);
        return LocalFrame.at(origin.x, origin.y);
    }

    private void stopAtFaults() {
        if (!faults.isEmpty()) {
            // an answer that is still to come may be all that is wrong
            faults.addAll(questions);
            throw new UnusableInput(faults);
        }
    }
}
