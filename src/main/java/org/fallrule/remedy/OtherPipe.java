package org.fallrule.remedy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Attribute;
import org.fallrule.site.Attributes;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;

/** Pipe of another material, with other joints, or without holes, for a whole pipe. */
final class OtherPipe implements Remedy {
    /** Materials in the order of what they cost, by the words that they are told in; common practice. */
    private static final Map<String, String> MATERIALS = ordered(
            "pvc_sdr35", "SDR 35 PVC",
            "pvc_sch40", "schedule 40 PVC",
            "hdpe_dual_wall", "dual-wall polyethylene",
            "ductile_iron", "ductile iron");

    /** What a pipe of a material brings with it. */
    private static final Set<Attribute<?>> OF_MATERIAL =
            Set.of(Attribute.OUTSIDE_DIAMETER, Attribute.ROUGHNESS, Attribute.WALL);

    /** Those of them that bear a load by themselves. */
    static final List<String> RIGID = List.of("pvc_sdr35", "pvc_sch40", "ductile_iron");

    /** The word for a material. */
    static String spoken(String material) {
        return MATERIALS.getOrDefault(material, material);
    }

    /** What a pipe says of itself once it is of another material: nothing more that the old one brought with it. */
    static Attributes of(Attributes pipe, String material) {
        return pipe.without(OF_MATERIAL::contains).with(Attribute.MATERIAL, material);
    }

    private static Map<String, String> ordered(String... words) {
        Map<String, String> map = new LinkedHashMap<>();
        for (int i = 0; i < words.length; i += 2) {
            map.put(words[i], words[i + 1]);
        }
        return map;
    }

    @Override
    public Set<String> checks() {
        return Set.of("tight_joints", "attribute", "root_zone", "cover", "capacity", "velocity");
    }

    @Override
    public List<Series> series(Situation at) {
        Optional<Feature> pipe = at.subject(Role.PIPE);
        if (pipe.isEmpty()) {
            return List.of();
        }
        List<Series> series = new ArrayList<>();
        if (at.isOf("tight_joints", "attribute")) {
            series.add(set(at, pipe.get(), Attribute.JOINT_TIGHTNESS, "watertight", "watertight joints on "));
            series.add(set(at, pipe.get(), Attribute.JOINT, "gasket", "gasketed joints on "));
        }
        if (at.isOf("root_zone", "attribute")) {
            series.add(set(at, pipe.get(), Attribute.PERFORATED, false, "pipe without holes for "));
        }
        if (at.isOf("attribute")) {
            series.add(set(at, pipe.get(), Attribute.WALL, "double", "pipe with a double wall for "));
        }
        if (at.isOf("attribute", "cover", "capacity", "velocity")) {
            MATERIALS.forEach((material, words) -> series.add(material(at, pipe.get(), material, words)));
        }
        return List.copyOf(series);
    }

    private static <T> Series set(Situation at, Feature pipe, Attribute<T> attribute, T value, String says) {
        return Series.single(() -> pipe.get(attribute).filter(value::equals).isPresent()
                ? Optional.empty()
                : Optional.of(new Change(at.edits().set(pipe, attribute, value).site(), says + pipe.spoken())));
    }

    private static Series material(Situation at, Feature pipe, String material, String words) {
        return Series.single(() -> {
            if (pipe.get(Attribute.MATERIAL).filter(material::equals).isPresent()) {
                return Optional.empty();
            }
            Edits edits = at.edits().set(pipe, Attribute.MATERIAL, material);
            edits.clear(pipe, Attribute.OUTSIDE_DIAMETER);
            edits.clear(pipe, Attribute.ROUGHNESS);
            edits.clear(pipe, Attribute.WALL);
            String length = at.network()
                    .runOf(pipe)
                    .map(PipeRun::length)
                    .map(metres -> ", " + at.shown().plan(metres.metres()))
                    .orElse("");
            return Optional.of(new Change(edits.site(), words + " for " + pipe.spoken() + length));
        });
    }
}
