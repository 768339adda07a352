package org.fallrule.reader;

import java.util.List;
import org.fallrule.site.Attribute;
import org.fallrule.site.Role;

/** The words that an attribute may hold. */
public final class Vocabulary {
    private static final List<String> MATERIALS = List.of(
            "pvc_sdr35",
            "pvc_sch40",
            "pvc_thin_wall",
            "hdpe_dual_wall",
            "hdpe_single_wall",
            "abs",
            "ductile_iron",
            "concrete",
            "corrugated_metal",
            "clay",
            "copper",
            "steel",
            "polyethylene",
            "unknown");

    private static final List<String> JOINTS =
            List.of("solvent_weld", "glued", "gasket", "fused", "adhesive_wrap", "coupling", "snap", "unknown");

    private static final List<String> TEXTURES = List.of(
            "sand",
            "loamy_sand",
            "sandy_loam",
            "loam",
            "silt_loam",
            "sandy_clay_loam",
            "clay_loam",
            "silty_clay_loam",
            "sandy_clay",
            "silty_clay",
            "clay",
            "unknown");

    private Vocabulary() {}

    /** The words; none when any text will do. */
    public static List<String> of(Role role, Attribute<?> attribute) {
        if (attribute == Attribute.KIND) {
            return kinds(role);
        }
        if (attribute == Attribute.MATERIAL) {
            return MATERIALS;
        }
        if (attribute == Attribute.JOINT) {
            return JOINTS;
        }
        if (attribute == Attribute.WALL) {
            return List.of("single", "double", "solid", "unknown");
        }
        if (attribute == Attribute.ACCESS) {
            return List.of("public", "private");
        }
        if (attribute == Attribute.STATUS) {
            return List.of("proposed", "existing", "as_built", "abandoned");
        }
        if (attribute == Attribute.JOINT_TIGHTNESS) {
            return List.of("watertight", "silt_tight", "soil_tight", "open");
        }
        if (attribute == Attribute.TEXTURE) {
            return TEXTURES;
        }
        if (attribute == Attribute.GROUND_COVER) {
            return List.of("grass", "bare", "mulch", "stone", "pavement");
        }
        return attribute == Attribute.QUALITY ? List.of("A", "B", "C", "D") : List.of();
    }

    private static List<String> kinds(Role role) {
        return switch (role) {
            case INLET -> List.of("downspout", "basin", "trench_drain");
            case OUTFALL -> List.of("daylight", "pop_up", "curb");
            case UTILITY ->
                List.of(
                        "gas",
                        "electric",
                        "communication",
                        "water_main",
                        "water_service",
                        "sanitary",
                        "reclaimed",
                        "irrigation",
                        "storm",
                        "lighting",
                        "propane",
                        "unknown");
            case AS_BUILT -> List.of("invert", "invert_up", "invert_down", "rim");
            default -> List.of();
        };
    }
}
