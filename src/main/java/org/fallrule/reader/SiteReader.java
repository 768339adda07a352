package org.fallrule.reader;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.measure.Unit;
import org.fallrule.reader.frame.LocalFrame;
import org.fallrule.reader.frame.ToLocal;
import org.fallrule.reader.trap.PlanAsRead;
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
        questions = place.questions();
        problems.addAll(questions);
        said = place.siteFile(faults, problems);
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

    /** The county that site.yaml names. */
    public Optional<String> county() {
        return said.county();
    }

    /** The firm that site.yaml names. */
    public Optional<String> house() {
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
        List<OpenLayer> open = new ArrayList<>(OpenLayer.all(folder, file, faults, problems));
        stopAtFaults();
        shared.ifPresent(layers -> open.addAll(layers.near(List.copyOf(open), faults, problems)));
        stopAtFaults();
        LocalFrame frame = frame(open);
        PlanDatum datum = PlanDatum.of(file, open, problems);
        Map<Role, List<Feature>> features = ZeroHeights.unused(features(open, frame, datum), problems);
        stopAtFaults();
        if (shared.isPresent() && features.containsKey(Role.LOT)) {
            features.put(Role.LOT, LotOfPlan.marked(features, problems));
        }
        new PlanSanity(faults, problems)
                .look(
                        features,
                        (role, there) -> open.stream()
                                .filter(layer -> layer.is(role))
                                .findFirst()
                                .flatMap(layer -> Misread.cause(
                                        layer.system(), frame, features.getOrDefault(role, List.of()), there))
                                .orElse(""));
        Map<Role, Layer> rasters =
                new GroundRasters(folder, file, frame, datum, faults, problems).around(features.values());
        stopAtFaults();
        shared.ifPresent(all -> rasters.putAll(all.rasters(features, Map.copyOf(rasters), frame, datum, problems)));
        problems.addAll(asRead(open, features, frame, rasters).problems());
        Map<Role, Layer> layers = layers(file, open, features);
        stopAtFaults();
        layers.putAll(rasters);
        return site(place.id(), file, open, frame, layers);
    }

    private static PlanAsRead asRead(
            List<OpenLayer> open, Map<Role, List<Feature>> features, LocalFrame frame, Map<Role, Layer> rasters) {
        return new PlanAsRead(
                frame,
                open.stream()
                        .map(layer -> new PlanAsRead.LayerAsRead(
                                layer.spec().role(),
                                layer.spec().source(),
                                layer.system(),
                                features.getOrDefault(layer.spec().role(), List.of())))
                        .toList(),
                rasters);
    }

    /** A system that site.yaml names has to be one, whether or not a layer needs it. */
    private void refuseUnknownSystem(SiteFile file) {
        try {
            file.crs().ifPresent(LayerSystem::of);
        } catch (UnusableInput e) {
            faults.addAll(e.faults());
        }
    }

    /** The features of a role as the plan means them: marks joined, each line once, doubtful depths asked about. */
    private List<Feature> drawn(Role role, List<Feature> all) {
        List<Feature> owned = LotOwnership.settled(role, all, problems);
        List<Feature> joined = MarkedPoints.joined(role, owned, faults);
        RepeatedFeatures.tell(role, joined, problems);
        return RepeatedLines.once(role, PlausibleDepths.asked(role, joined, problems), problems);
    }

    private Map<Role, Layer> layers(SiteFile file, List<OpenLayer> open, Map<Role, List<Feature>> features) {
        Map<Role, Layer> layers = new EnumMap<>(Role.class);
        features.forEach((role, all) -> layers.put(
                role,
                new Layer.Supplied(
                        drawn(role, all),
                        open.stream()
                                .filter(layer -> layer.is(role))
                                .map(layer -> layer.spec().source())
                                .toList())));
        file.absent().forEach((role, by) -> absent(role, by, layers));
        return layers;
    }

    /** A shared layer that shows something near the plan outweighs the plan's word that there is none. */
    private void absent(Role role, Place by, Map<Role, Layer> layers) {
        Layer found = layers.getOrDefault(role, new Layer.NotSupplied());
        if (found.features().isEmpty()) {
            layers.put(role, new Layer.StatedAbsent(by));
        } else {
            problems.add(new Fault(
                    by,
                    "states that there is no " + role.spoken() + ", but "
                            + found.features().get(0).origin() + " lies near; it is held against the rules"));
        }
    }

    private Site site(String id, SiteFile file, List<OpenLayer> open, LocalFrame frame, Map<Role, Layer> layers) {
        return new Site(
                id,
                file.name().orElse(id),
                file.county(),
                file.house(),
                open.stream().map(layer -> layer.system().name()).distinct().collect(Collectors.joining("; ")),
                file.datum(),
                frame::toLonLat,
                file.survey(),
                layers,
                file.waivers(),
                problems,
                file.storm(),
                file.units().get("elevation") == Unit.ELEVATION_METRE);
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

    private Map<Role, List<Feature>> features(List<OpenLayer> open, LocalFrame frame, PlanDatum datum) {
        Map<Role, List<Feature>> features = new EnumMap<>(Role.class);
        for (OpenLayer layer : open) {
            ToLocal toLocal = new ToLocal(layer.system(), frame);
            List<Feature> read = new FeatureMaker(
                            layer.spec(), layer.raw(), toLocal::local, layer.units(), faults, problems)
                    .features();
            List<Feature> made = LotLines.joined(
                    layer.spec().role(), read, place -> layer.shown(frame.toLonLat(place)), faults, problems);
            boolean foreign = WithoutHeights.isNeededFor(made)
                    && datum.isForeign(layer.spec(), layer.system().heightDatum());
            features.computeIfAbsent(layer.spec().role(), any -> new ArrayList<>())
                    .addAll(foreign ? made.stream().map(WithoutHeights::of).toList() : made);
        }
        return features;
    }

    private void stopAtFaults() {
        if (!faults.isEmpty()) {
            // an answer that is still to come may be all that is wrong
            faults.addAll(questions);
            throw new UnusableInput(faults);
        }
    }
}
