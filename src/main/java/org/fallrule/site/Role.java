package org.fallrule.site;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a layer stands for in the plan. */
public enum Role {
    LOT(Form.AREA, "lots: the site's own and its neighbours'"),
    BUILDING(Form.AREA, "building footprints"),
    WALK(Form.AREA, "walks, public and private"),
    DRIVE(Form.AREA, "driveways and parking"),
    STREET(Form.AREA, "streets"),
    PIPE(Form.LINE, "drain pipes"),
    INLET(Form.POINT, "downspouts, basins and trench drains"),
    OUTFALL(Form.POINT, "where a pipe ends in daylight, a pop-up or a curb"),
    CLEANOUT(Form.POINT, "cleanouts"),
    UTILITY(Form.LINE, "other people's pipes and wires"),
    TREE(Form.POINT, "trees"),
    EASEMENT(Form.AREA, "easements"),
    SEPTIC(Form.ANY, "septic tanks and fields"),
    WELL(Form.POINT, "wells"),
    WATER_BODY(Form.ANY, "streams, ponds and wetlands"),
    FLOOD_ZONE(Form.AREA, "flood zones"),
    DRAINAGE_AREA(Form.AREA, "areas that drain to an inlet"),
    SOIL(Form.AREA, "soils"),
    SPOT(Form.POINT, "spot elevations of the ground"),
    CONTOUR(Form.LINE, "contours"),
    BREAKLINE(Form.LINE, "breaklines of the ground"),
    GROUND(Form.ANY, "the ground as it is: a raster, or points, lines and triangles with Z"),
    PROPOSED_GROUND(
            Form.ANY,
            "the ground as it will be: a raster, or points, lines and triangles with Z, which lie over it where both are given"),
    AS_BUILT(Form.POINT, "points of the drain measured after construction: inverts and rims");

    private static final List<Role> OF_DRAIN = List.of(PIPE, INLET, OUTFALL, CLEANOUT);

    private final Form form;
    private final String meaning;
    private final String word = name().toLowerCase(Locale.ROOT);

    Role(Form form, String meaning) {
        this.form = form;
        this.meaning = meaning;
    }

    /** The form of geometry that the role wants. */
    public Form form() {
        return form;
    }

    public String meaning() {
        return meaning;
    }

    /** The role's name in site.yaml and rule books: {@code water_body}. */
    public String word() {
        return word;
    }

    /** The role's name in a sentence: {@code water body}. */
    public String spoken() {
        return word().replace('_', ' ');
    }

    /** The parts of the drain that the plan proposes. */
    public static List<Role> ofDrain() {
        return OF_DRAIN;
    }

    /** Whether it is a part of the drain that the plan proposes. */
    public boolean isOfDrain() {
        return OF_DRAIN.contains(this);
    }

    public static Optional<Role> named(String word) {
        return Arrays.stream(values()).filter(role -> role.word().equals(word)).findFirst();
    }

    public static List<String> words() {
        return Arrays.stream(values()).map(Role::word).toList();
    }

    /** The forms of geometry. */
    public enum Form {
        POINT("points"),
        LINE("lines"),
        AREA("polygons"),
        ANY("points, lines or polygons");

        private final String spoken;

        Form(String spoken) {
            this.spoken = spoken;
        }

        public String spoken() {
            return spoken;
        }
    }
}
