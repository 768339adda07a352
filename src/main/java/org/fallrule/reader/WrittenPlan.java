package org.fallrule.reader;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.document.Fault;
import org.fallrule.document.Keys;
import org.fallrule.document.Node;
import org.fallrule.document.Place;
import org.fallrule.locality.Storm;
import org.fallrule.measure.Unit;
import org.fallrule.site.Feature;
import org.fallrule.site.Layer;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.fallrule.site.Survey;

/**
 * Reads a small plan that stands as text in a YAML document: features in well-known text (OGC 06-103r4, clause 7) with their
 * attributes, the ground as spots or a plane, and what there is not. Values go through the same reading as those of layer
 * files; what a layer file may leave to be asked about is a fault here.
 */
public final class WrittenPlan {
    private final Unit unit;
    private final List<Fault> faults;

    /**
     * @param unit the unit that coordinates stand in, plan and height
     * @param faults gathers what is wrong, each with its line
     */
    public WrittenPlan(Unit unit, List<Fault> faults) {
        this.unit = unit;
        this.faults = faults;
    }

    /**
     * The plan under the keys {@code features}, {@code empty}, {@code absent}, {@code ground}, {@code survey} and {@code storm}.
     *
     * @param shared features that stand in the plan unless it has one of the same role and id, or says the role is absent
     */
    public Site site(String name, Keys keys, List<Node> shared) {
        SiteFileReader statements = new SiteFileReader(faults);
        Map<Role, Place> absent = statements.absent(keys);
        Survey survey = keys.mapping("survey").map(statements::survey).orElse(Survey.UNKNOWN);
        Map<Role, Map<String, Feature>> features = new EnumMap<>(Role.class);
        WrittenFeatures written = new WrittenFeatures(unit, faults);
        written.of(shared).stream()
                .filter(feature -> !absent.containsKey(feature.role()))
                .forEach(feature -> put(features, feature));
        written.of(keys.list("features")).forEach(feature -> {
            refuseAbsent(feature, absent);
            put(features, feature);
        });
        keys.mapping("ground")
                .map(ground -> new WrittenGround(unit, faults).spots(ground))
                .ifPresent(spots -> spots.forEach(spot -> put(features, spot)));
        Storm storm = keys.mapping("storm").map(statements::storm).orElse(Storm.UNSAID);
        return site(name, survey, storm, layers(features, absent, empty(keys)));
    }

    private static void put(Map<Role, Map<String, Feature>> features, Feature feature) {
        features.computeIfAbsent(feature.role(), role -> new LinkedHashMap<>()).put(feature.id(), feature);
    }

    private void refuseAbsent(Feature feature, Map<Role, Place> absent) {
        if (absent.containsKey(feature.role())) {
            faults.add(new Fault(
                    feature.origin(),
                    feature.role().word() + " is stated absent and given as a feature; keep one of the two"));
        }
    }

    /** The roles that the plan supplies a layer of in which there is nothing. */
    private List<Role> empty(Keys keys) {
        List<Role> empty = new ArrayList<>();
        for (Node.Scalar word : keys.scalars("empty")) {
            RoleWord.read(word, faults).ifPresent(empty::add);
        }
        return empty;
    }

    private static Map<Role, Layer> layers(
            Map<Role, Map<String, Feature>> features, Map<Role, Place> absent, List<Role> empty) {
        Map<Role, Layer> layers = new EnumMap<>(Role.class);
        empty.forEach(role -> layers.put(role, new Layer.Supplied(List.of(), List.of())));
        absent.forEach((role, by) -> layers.put(role, new Layer.StatedAbsent(by)));
        features.forEach((role, byId) -> layers.put(
                role,
                new Layer.Supplied(
                        LotOwnership.settled(role, List.copyOf(byId.values()), new ArrayList<>()), List.of())));
        return layers;
    }

    private static Site site(String name, Survey survey, Storm storm, Map<Role, Layer> layers) {
        return new Site(
                name,
                name,
                Optional.empty(),
                Optional.empty(),
                "local",
                Optional.empty(),
                local -> local,
                survey,
                layers,
                List.of(),
                List.of(),
                storm,
                false);
    }
}
