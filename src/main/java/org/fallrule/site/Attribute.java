package org.fallrule.site;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fallrule.measure.Area;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Intensity;
import org.fallrule.measure.Length;
import org.fallrule.measure.Mass;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.Ratio;
import org.fallrule.measure.Time;

/**
 * An attribute that features carry, under its one canonical name.
 *
 * @param <T> the type of its values
 */
public final class Attribute<T> {
    public static final Attribute<String> ID = text(
            "id",
            "the feature's name in the plan",
            EnumSet.allOf(Role.class),
            "tag",
            "pipeid",
            "structid",
            "nodeid",
            "featureid",
            "facilityid",
            "assetid",
            "unitid",
            "pipeno",
            "structno",
            "objectid",
            "fid");

    public static final Attribute<String> KIND = text(
            "kind",
            "what kind of inlet, outfall, building, utility or point as built it is",
            EnumSet.of(Role.INLET, Role.OUTFALL, Role.UTILITY, Role.BUILDING, Role.AS_BUILT),
            "type",
            "subtype",
            "structtype",
            "structuretype",
            "inlettype",
            "utiltype",
            "utilitytype",
            "utility",
            "bldgtype",
            "buildingtype",
            "category");

    public static final Attribute<Boolean> OWN =
            flag("own", "whether the lot is the site's own", EnumSet.of(Role.LOT), "ownlot");

    public static final Attribute<String> ACCESS =
            text("access", "whether the walk is public or private", EnumSet.of(Role.WALK));

    public static final Attribute<String> SURFACE = text(
            "surface",
            "what a walk, drive or street is made of; what covers a drainage area",
            EnumSet.of(Role.WALK, Role.DRIVE, Role.STREET, Role.DRAINAGE_AREA));

    public static final Attribute<Length> WIDTH = length(
            "width",
            "width from edge to edge of a walk, drive or street that is drawn as its centreline",
            EnumSet.of(Role.WALK, Role.DRIVE, Role.STREET),
            "walkwidth",
            "wid");

    public static final Attribute<String> STATUS = text(
            "status",
            "whether it is proposed, existing, as_built or abandoned; an abandoned part of the drain is left out of it",
            EnumSet.of(Role.PIPE, Role.INLET, Role.OUTFALL, Role.CLEANOUT, Role.UTILITY),
            "lifecycle");

    public static final Attribute<Length> DIAMETER = length(
            "diameter",
            "nominal diameter",
            EnumSet.of(Role.PIPE, Role.UTILITY),
            "diam",
            "dia",
            "pipedia",
            "pipesize",
            "size",
            "nomdia");

    public static final Attribute<Length> OUTSIDE_DIAMETER =
            length("outside_diameter", "outside diameter", EnumSet.of(Role.PIPE, Role.UTILITY), "od", "outdia");

    public static final Attribute<String> MATERIAL = text(
            "material",
            "what the pipe is made of",
            EnumSet.of(Role.PIPE, Role.UTILITY),
            "matl",
            "pipematl",
            "pipemat",
            "mat");

    public static final Attribute<String> JOINT = text(
            "joint",
            "how the lengths of pipe are joined: solvent_weld, glued, gasket, fused, adhesive_wrap, coupling or snap",
            EnumSet.of(Role.PIPE),
            "joints",
            "jointtype",
            "jttype");

    public static final Attribute<String> WALL = text(
            "wall",
            "the pipe's wall: single (corrugated inside and out), double (smooth inside) or solid",
            EnumSet.of(Role.PIPE),
            "walltype",
            "pipewall");

    public static final Attribute<Boolean> PERFORATED = flag(
            "perforated",
            "whether the pipe has holes or slots, so that water gets out and roots get in",
            EnumSet.of(Role.PIPE),
            "perf",
            "slotted");

    public static final Attribute<Elevation> INVERT_UP = elevation(
            "invert_up",
            "invert at the upstream end",
            EnumSet.of(Role.PIPE),
            "upinvert",
            "upinv",
            "invup",
            "usinv",
            "usie",
            "ieus",
            "upie",
            "frominv",
            "upelev");

    public static final Attribute<Elevation> INVERT_DOWN = elevation(
            "invert_down",
            "invert at the downstream end",
            EnumSet.of(Role.PIPE),
            "dninvert",
            "dninv",
            "invdn",
            "dsinv",
            "dsie",
            "ieds",
            "iedn",
            "dnie",
            "toinv",
            "downelev");

    public static final Attribute<Length> DEPTH_UP = length(
            "depth_up",
            "finished ground to the invert at the upstream end; counts where no invert is given there",
            EnumSet.of(Role.PIPE),
            "updepth",
            "usdepth");

    public static final Attribute<Length> DEPTH_DOWN = length(
            "depth_down",
            "finished ground to the invert at the downstream end; counts where no invert is given there",
            EnumSet.of(Role.PIPE),
            "dndepth",
            "downdepth",
            "dsdepth");

    public static final Attribute<Elevation> INVERT = elevation(
            "invert",
            "invert of the outgoing pipe, or at an outfall",
            EnumSet.of(Role.INLET, Role.OUTFALL),
            "inv",
            "invelev",
            "ie",
            "flowline");

    public static final Attribute<Elevation> RIM = elevation(
            "rim",
            "top of the grate or lid",
            EnumSet.of(Role.INLET, Role.CLEANOUT),
            "rimelev",
            "rimel",
            "grate",
            "grateel",
            "topelev",
            "tog");

    public static final Attribute<Length> SUMP = length(
            "sump",
            "depth of the sump below the outgoing invert; 0 where none holds water",
            EnumSet.of(Role.INLET),
            "sumpdepth");

    public static final Attribute<Length> GRATE_OPENING = length(
            "grate_opening",
            "the widest ball that an opening of the grate lets through: the width of a slot, the diameter of a hole",
            EnumSet.of(Role.INLET),
            "grateslot",
            "slotwidth",
            "openingwidth");

    public static final Attribute<Length> GRATE_LENGTH =
            length("grate_length", "length of the grate", EnumSet.of(Role.INLET), "gratelen");

    public static final Attribute<Length> GRATE_WIDTH =
            length("grate_width", "width of the grate", EnumSet.of(Role.INLET), "gratewid");

    public static final Attribute<Area> GRATE_OPEN_AREA = quantity(
            "grate_open_area",
            Area.class,
            Dimension.AREA,
            "clear area of all openings of the grate together, as its maker states it",
            EnumSet.of(Role.INLET),
            "openarea",
            "gratearea");

    public static final Attribute<Length> BOX_LENGTH =
            length("box_length", "inside length of the basin in plan", EnumSet.of(Role.INLET), "boxlen");

    public static final Attribute<Length> BOX_WIDTH =
            length("box_width", "inside width of the basin in plan", EnumSet.of(Role.INLET), "boxwid");

    public static final Attribute<Area> WEEP_HOLE_AREA = quantity(
            "weep_hole_area",
            Area.class,
            Dimension.AREA,
            "area of all weep holes in the bottom of the basin together; 0 where there are none",
            EnumSet.of(Role.INLET),
            "weeparea",
            "weepholes");

    public static final Attribute<Mass> WEIGHT = quantity(
            "weight",
            Mass.class,
            Dimension.MASS,
            "what holds the empty basin down: itself and its grate as weighed in air, and of concrete and soil on or around it what they weigh under water where they stand in it",
            EnumSet.of(Role.INLET),
            "emptyweight");

    public static final Attribute<Elevation> TAILWATER = elevation(
            "tailwater",
            "level of the water that stands outside of the outfall when the drain runs",
            EnumSet.of(Role.OUTFALL),
            "tw",
            "twelev");

    public static final Attribute<String> GROUND_COVER = text(
            "ground_cover",
            "what covers the ground below the outfall: grass, bare, mulch, stone or pavement",
            EnumSet.of(Role.OUTFALL),
            "groundcover");

    public static final Attribute<Length> APRON_LENGTH = length(
            "apron_length",
            "length of the stone apron below the outfall, along the flow; 0 where there is none",
            EnumSet.of(Role.OUTFALL),
            "apronlen");

    public static final Attribute<Length> STONE_SIZE =
            length("stone_size", "median size of the apron's stone", EnumSet.of(Role.OUTFALL), "d50");

    public static final Attribute<Ratio> ROUGHNESS = quantity(
            "roughness",
            Ratio.class,
            Dimension.RATIO,
            "Manning's n of the pipe; counts before that of its material",
            EnumSet.of(Role.PIPE),
            "manningsn",
            "manningn");

    public static final Attribute<String> DRAINS_TO = text(
            "drains_to",
            "the id of the inlet that the area drains to; else the one inlet that stands in it",
            EnumSet.of(Role.DRAINAGE_AREA),
            "drainsto",
            "toinlet");

    public static final Attribute<Ratio> RUNOFF_COEFFICIENT = quantity(
            "runoff_coefficient",
            Ratio.class,
            Dimension.RATIO,
            "runoff coefficient of the whole area; counts before those of its surfaces",
            EnumSet.of(Role.DRAINAGE_AREA),
            "runoffcoef",
            "runoffc",
            "cvalue");

    public static final Attribute<Time> CONCENTRATION_TIME = quantity(
            "concentration_time",
            Time.class,
            Dimension.TIME,
            "time that the farthest water of the area takes to its inlet",
            EnumSet.of(Role.DRAINAGE_AREA),
            "tc",
            "timeofconc");

    public static final Attribute<String> TEXTURE = text(
            "texture",
            "the soil's texture: sand, loamy_sand, sandy_loam, loam, silt_loam, clay_loam, clay and those between",
            EnumSet.of(Role.SOIL),
            "soiltexture",
            "texturecl");

    public static final Attribute<Intensity> INFILTRATION = quantity(
            "infiltration",
            Intensity.class,
            Dimension.INTENSITY,
            "rate at which the wet soil takes water, as tested on the spot",
            EnumSet.of(Role.SOIL),
            "infiltrationrate",
            "infilrate");

    public static final Attribute<Length> GROUNDWATER_DEPTH = length(
            "groundwater_depth",
            "from the ground down to the highest level that ground water is expected at; 0 where the ground saturates",
            EnumSet.of(Role.SOIL),
            "watertable",
            "gwdepth");

    public static final Attribute<Boolean> HOLDS_WATER = flag(
            "holds_water",
            "whether water stands in the pipe, as in a trap; else it is taken to drain freely",
            EnumSet.of(Role.PIPE));

    public static final Attribute<Length> DEPTH = length(
            "depth",
            "from the ground as it is down to the top of the utility",
            EnumSet.of(Role.UTILITY),
            "cover",
            "burydepth");

    public static final Attribute<Elevation> TOP =
            elevation("top", "elevation of the top of the utility", EnumSet.of(Role.UTILITY), "topelev", "topel");

    public static final Attribute<String> LINE = text(
            "line",
            "the line that a mark surveyed as a point belongs to",
            EnumSet.of(Role.UTILITY),
            "linename",
            "lineid");

    public static final Attribute<String> SEQUENCE = text(
            "sequence",
            "the place of a mark surveyed as a point along its line: 1, 2, 3",
            EnumSet.of(Role.UTILITY),
            "seq",
            "ptorder");

    public static final Attribute<String> QUALITY = text(
            "quality", "quality level A, B, C or D after ASCE 38-22", EnumSet.of(Role.UTILITY), "ql", "qualitylevel");

    public static final Attribute<Length> HORIZONTAL_ACCURACY = length(
            "horizontal_accuracy",
            "half-width of the interval in plan that its true position lies in",
            EnumSet.allOf(Role.class),
            "acch",
            "haccuracy",
            "accuracyh");

    public static final Attribute<Length> VERTICAL_ACCURACY = length(
            "vertical_accuracy",
            "half-width of the interval in height that its true level lies in",
            EnumSet.allOf(Role.class),
            "accv",
            "vaccuracy",
            "accuracyv");

    public static final Attribute<Boolean> ENCASED = flag(
            "encased",
            "whether it lies in a casing or in concrete; not, where the plan says nothing",
            EnumSet.of(Role.PIPE, Role.UTILITY),
            "encasement",
            "casing");

    public static final Attribute<String> JOINT_TIGHTNESS = text(
            "joint_tightness",
            "how tight the pipe's joints are: watertight, silt_tight, soil_tight or open",
            EnumSet.of(Role.PIPE, Role.UTILITY),
            "tightness");

    public static final Attribute<Length> LAYING_LENGTH = length(
            "laying_length",
            "length of one piece of pipe, from joint to joint",
            EnumSet.of(Role.PIPE, Role.UTILITY),
            "laylength",
            "jointspacing");

    public static final Attribute<Boolean> PRIVATE = flag(
            "private",
            "whether it belongs to the lot, so that one-call does not mark it",
            EnumSet.of(Role.UTILITY),
            "isprivate",
            "privateline");

    public static final Attribute<Length> TRUNK_DIAMETER = length(
            "trunk_diameter",
            "diameter of the trunk at breast height, 4.5 ft above the ground",
            EnumSet.of(Role.TREE),
            "dbh",
            "trunk",
            "trunkdia",
            "dia",
            "diam",
            "diameter");

    public static final Attribute<Length> CANOPY_RADIUS = length(
            "canopy_radius",
            "from the trunk to the edge of the crown, the dripline",
            EnumSet.of(Role.TREE),
            "driplineradius",
            "dripradius",
            "crownradius");

    public static final Attribute<Length> ROOT_RADIUS = length(
            "root_radius",
            "radius of the root zone to be protected, where an arborist has set one",
            EnumSet.of(Role.TREE),
            "rootzone",
            "rootzoneradius",
            "protectionradius");

    public static final Attribute<Elevation> FOOTING_BOTTOM = elevation(
            "footing_bottom",
            "elevation of the bottom of the building's footing",
            EnumSet.of(Role.BUILDING),
            "botfooting",
            "bottomoffooting");

    public static final Attribute<Length> FOOTING_DEPTH = length(
            "footing_depth",
            "depth of the footing's bottom below the ground as it is at the building's edge",
            EnumSet.of(Role.BUILDING),
            "ftgdepth");

    public static final Attribute<Elevation> ELEVATION = elevation(
            "elevation",
            "elevation of the ground, or of a point as built",
            EnumSet.of(Role.SPOT, Role.CONTOUR, Role.GROUND, Role.PROPOSED_GROUND, Role.AS_BUILT),
            "elev",
            "z",
            "contour",
            "contourele");

    public static final Attribute<String> MEASURED_ON = text(
            "measured_on",
            "the pipe, inlet, cleanout or outfall that a point as built was measured on",
            EnumSet.of(Role.AS_BUILT),
            "structure",
            "struct",
            "pipe",
            "of");

    public static final Attribute<String> ABOVE = text(
            "above",
            "what lies above that stretch of pipe: lawn, walk, drive or street; worked out, not read",
            EnumSet.noneOf(Role.class));

    public static final Attribute<String> STANDS_IN = text(
            "stands_in",
            "what an inlet, cleanout or outfall stands in: lawn, walk, drive or street; worked out, not read",
            EnumSet.noneOf(Role.class));

    public static final Attribute<Length> TO_OUTFALL = length(
            "to_outfall",
            "length of pipe still to run to a daylight outfall; worked out, not read",
            EnumSet.noneOf(Role.class));

    private static final List<Attribute<?>> ALL = List.of(
            ID,
            KIND,
            OWN,
            ACCESS,
            SURFACE,
            WIDTH,
            STATUS,
            DIAMETER,
            OUTSIDE_DIAMETER,
            MATERIAL,
            JOINT,
            WALL,
            PERFORATED,
            INVERT_UP,
            INVERT_DOWN,
            DEPTH_UP,
            DEPTH_DOWN,
            INVERT,
            RIM,
            SUMP,
            GRATE_OPENING,
            GRATE_LENGTH,
            GRATE_WIDTH,
            GRATE_OPEN_AREA,
            BOX_LENGTH,
            BOX_WIDTH,
            WEEP_HOLE_AREA,
            WEIGHT,
            TAILWATER,
            GROUND_COVER,
            APRON_LENGTH,
            STONE_SIZE,
            ROUGHNESS,
            DRAINS_TO,
            RUNOFF_COEFFICIENT,
            CONCENTRATION_TIME,
            TEXTURE,
            INFILTRATION,
            GROUNDWATER_DEPTH,
            HOLDS_WATER,
            DEPTH,
            TOP,
            LINE,
            SEQUENCE,
            QUALITY,
            HORIZONTAL_ACCURACY,
            VERTICAL_ACCURACY,
            ENCASED,
            JOINT_TIGHTNESS,
            LAYING_LENGTH,
            PRIVATE,
            TRUNK_DIAMETER,
            CANOPY_RADIUS,
            ROOT_RADIUS,
            FOOTING_BOTTOM,
            FOOTING_DEPTH,
            ELEVATION,
            MEASURED_ON,
            ABOVE,
            STANDS_IN,
            TO_OUTFALL);

    private final String name;
    private final Class<T> type;
    private final Optional<Dimension> dimension;
    private final String meaning;
    private final Set<Role> roles;
    private final List<String> columns;

    private Attribute(
            String name,
            Class<T> type,
            Optional<Dimension> dimension,
            String meaning,
            Set<Role> roles,
            String... columns) {
        this.name = name;
        this.type = type;
        this.dimension = dimension;
        this.meaning = meaning;
        this.roles = Set.copyOf(roles);
        this.columns = List.of(columns);
    }

    private static Attribute<String> text(String name, String meaning, Set<Role> roles, String... columns) {
        return new Attribute<>(name, String.class, Optional.empty(), meaning, roles, columns);
    }

    private static Attribute<Boolean> flag(String name, String meaning, Set<Role> roles, String... columns) {
        return new Attribute<>(name, Boolean.class, Optional.empty(), meaning, roles, columns);
    }

    private static <T extends Quantity> Attribute<T> quantity(
            String name, Class<T> type, Dimension dimension, String meaning, Set<Role> roles, String... columns) {
        return new Attribute<>(name, type, Optional.of(dimension), meaning, roles, columns);
    }

    private static Attribute<Length> length(String name, String meaning, Set<Role> roles, String... columns) {
        return new Attribute<>(name, Length.class, Optional.of(Dimension.LENGTH), meaning, roles, columns);
    }

    private static Attribute<Elevation> elevation(String name, String meaning, Set<Role> roles, String... columns) {
        return new Attribute<>(name, Elevation.class, Optional.of(Dimension.ELEVATION), meaning, roles, columns);
    }

    public static List<Attribute<?>> all() {
        return ALL;
    }

    public static Optional<Attribute<?>> named(String name) {
        return ALL.stream()
                .<Attribute<?>>map(attribute -> attribute)
                .filter(attribute -> attribute.name.equals(name))
                .findFirst();
    }

    /** The attributes that features of a role may carry. */
    public static List<Attribute<?>> of(Role role) {
        return ALL.stream().filter(attribute -> attribute.roles.contains(role)).toList();
    }

    public String name() {
        return name;
    }

    /** The name in a sentence: {@code outside diameter}. */
    public String spoken() {
        return name.replace('_', ' ');
    }

    public Class<T> type() {
        return type;
    }

    /** What it measures; empty for words and flags. */
    public Optional<Dimension> dimension() {
        return dimension;
    }

    public String meaning() {
        return meaning;
    }

    /** Column names, lower case without {@code _}, space and {@code -}, that are known to hold it, likeliest first. */
    public List<String> columns() {
        return columns;
    }

    @Override
    public String toString() {
        return name;
    }
}
