package org.fallrule.reader;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.reader.frame.LocalFrame;
import org.fallrule.reader.frame.ToLocal;
import org.fallrule.reader.trap.PlanAsRead;
import org.fallrule.site.Feature;
import org.fallrule.site.Layer;
import org.fallrule.site.Role;
import org.locationtech.jts.geom.Envelope;

/** The layers of features of a plan, brought into its local frame and read as the plan means them. */
final class FramedLayers {
    private final List<OpenLayer> open;
    private final LocalFrame frame;
    private final List<Fault> faults;
    private final List<Fault> problems;

    FramedLayers(List<OpenLayer> open, LocalFrame frame, List<Fault> faults, List<Fault> problems) {
        this.open = open;
        this.frame = frame;
        this.faults = faults;
        this.problems = problems;
    }

    /** The features by role, those on another datum than the plan's without their heights. */
    Map<Role, List<Feature>> features(PlanDatum datum) {
        Map<Role, List<Feature>> features = new EnumMap<>(Role.class);
        for (OpenLayer layer : open) {
            List<Feature> made = made(layer);
            boolean foreign = WithoutHeights.isNeededFor(made)
                    && datum.isForeign(layer.spec(), layer.system().heightDatum());
            features.computeIfAbsent(layer.spec().role(), any -> new ArrayList<>())
                    .addAll(foreign ? made.stream().map(WithoutHeights::of).toList() : made);
        }
        return features;
    }

    private List<Feature> made(OpenLayer layer) {
        ToLocal toLocal = new ToLocal(layer.system(), frame);
        List<Feature> read =
                new FeatureMaker(layer.spec(), layer.raw(), toLocal::local, layer.units(), faults, problems).features();
        return LotLines.joined(
                layer.spec().role(), read, place -> layer.shown(frame.toLonLat(place)), faults, problems);
    }

    /** Why the features of a role may lie elsewhere than at a box: a sentence that begins with a blank, or nothing. */
    String misread(Role role, List<Feature> features, Envelope there) {
        return open.stream()
                .filter(layer -> layer.is(role))
                .findFirst()
                .flatMap(layer -> Misread.cause(layer.system(), frame, features, there))
                .orElse("");
    }

    PlanAsRead asRead(Map<Role, List<Feature>> features, Map<Role, Layer> rasters) {
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

    /** What the plan says of each role, its features as they are meant. */
    Map<Role, Layer> layers(Map<Role, List<Feature>> features, Map<Role, Place> absent) {
        Map<Role, Layer> layers = new EnumMap<>(Role.class);
        features.forEach((role, all) -> layers.put(role, new Layer.Supplied(meant(role, all), sources(role))));
        absent.forEach((role, by) -> absent(role, by, layers));
        return layers;
    }

    /** Marks joined, each line once, doubtful depths asked about. */
    private List<Feature> meant(Role role, List<Feature> all) {
        List<Feature> owned = LotOwnership.settled(role, all, problems);
        List<Feature> joined = MarkedPoints.joined(role, owned, faults);
        RepeatedFeatures.tell(role, joined, problems);
        AbandonedParts.tell(joined, problems);
        return RepeatedLines.once(role, PlausibleDepths.asked(role, joined, problems), problems);
    }

    private List<String> sources(Role role) {
        return open.stream()
                .filter(layer -> layer.is(role))
                .map(layer -> layer.spec().source())
                .toList();
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
}
