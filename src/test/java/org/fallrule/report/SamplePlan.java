package org.fallrule.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.review.Reviewer;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.site.Attribute;
import org.fallrule.site.Attributes;
import org.fallrule.site.Feature;
import org.fallrule.site.Layer;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.fallrule.site.Survey;
import org.fallrule.site.Waiver;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

/** An invented lot with a drain from the yard to the street, drawn in feet, and the report on it. */
public final class SamplePlan {
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 15);
    private static final Attributes NONE = Attributes.none();

    private final UnaryOperator<String> naming;
    private final Map<Role, List<Feature>> features = new EnumMap<>(Role.class);

    private SamplePlan(UnaryOperator<String> naming) {
        this.naming = naming;
        surfaces();
        drain();
        utilities();
        ground();
    }

    /** The report on the plan. */
    public static Report report() {
        return report(UnaryOperator.identity());
    }

    /** The report on the plan with every feature's id, and the site's name, changed. */
    public static Report report(UnaryOperator<String> naming) {
        return report(new SamplePlan(naming).site());
    }

    /** The report on the plan with one feature more, given as WKT in feet. */
    public static Report reportWith(Role role, String wktInFeet) {
        SamplePlan plan = new SamplePlan(UnaryOperator.identity());
        plan.add(role, "X-1", wktInFeet, NONE);
        return report(plan.site());
    }

    /** The plan with so many branches more, each a basin and a pipe to the main line. */
    public static Site withBranches(int count) {
        SamplePlan plan = new SamplePlan(UnaryOperator.identity());
        Attributes sewer = NONE.with(Attribute.DIAMETER, Length.inches(4)).with(Attribute.MATERIAL, "pvc_sdr35");
        for (int i = 1; i <= count; i++) {
            double y = 24 + 22.0 * i / (count + 1);
            plan.add(Role.INLET, "IN-B" + i, "POINT(30 " + y + ")", NONE.with(Attribute.KIND, "basin"));
            String axis = "LINESTRING(30 " + y + ", " + (11 + (y - 24) * 4.6 / 22) + " " + y + ")";
            plan.add(Role.PIPE, "P-B" + i, axis, inverts(sewer, 101.6, 101.4));
        }
        return plan.site();
    }

    private static Report report(Site site) {
        SiteAnalysis analysis = SiteAnalysis.of(site);
        RuleBook book = SampleRules.load();
        return new Report(analysis, "larkmoor", book, Reviewer.review(analysis, book, TODAY));
    }

    /** A report on a plan that holds nothing. */
    public static Report emptyReport() {
        return report(site(Map.of(), List.of(), UnaryOperator.identity()));
    }

    private Site site() {
        Map<Role, Layer> layers = new EnumMap<>(Role.class);
        features.forEach((role, list) -> layers.put(role, new Layer.Supplied(list, List.of(role.word() + ".geojson"))));
        layers.putIfAbsent(Role.SEPTIC, new Layer.StatedAbsent(new Place("site.yaml", 7, 1, "", "")));
        Fault problem = new Fault(
                Place.of("marks.shp").feature("feature 14").field("depth"),
                "\"2'6\" is not a number; give inches, e.g. 30");
        return site(layers, List.of(problem), naming);
    }

    private static Site site(Map<Role, Layer> layers, List<Fault> problems, UnaryOperator<String> naming) {
        Survey survey = new Survey(
                Optional.of(LocalDate.of(2026, 5, 4)),
                Optional.of("total_station"),
                Optional.of(Length.feet(0.1)),
                Optional.of(Length.feet(0.05)));
        Waiver waiver = new Waiver(
                "pipe-building-setback",
                Optional.of(naming.apply("P-3")),
                "the county engineer",
                LocalDate.of(2026, 6, 1),
                "the footing stands on rock there",
                Optional.empty(),
                new Place("site.yaml", 18, 5, "", ""));
        return new Site(
                "quillfeather-8",
                naming.apply("Quillfeather Lane 8"),
                Optional.of("larkmoor"),
                Optional.of("stonebrook"),
                "EPSG:2264",
                Optional.of("NAVD88"),
                local -> new Coordinate(-79.1 + local.x / 90_000, 35.9 + local.y / 111_000),
                survey,
                layers,
                List.of(waiver),
                problems);
    }

    private void surfaces() {
        add(Role.LOT, "L-8", "POLYGON((0 0, 78 0, 82 128, 2 131, 0 0))", NONE.with(Attribute.OWN, true));
        add(Role.LOT, "L-6", "POLYGON((-82 0, 0 0, 2 131, -80 133, -82 0))", NONE.with(Attribute.OWN, false));
        add(Role.LOT, "L-10", "POLYGON((78 0, 160 0, 163 125, 82 128, 78 0))", NONE.with(Attribute.OWN, false));
        add(
                Role.LOT,
                "L-7",
                "POLYGON((-80 133, 2 131, 82 128, 163 125, 165 240, -80 245, -80 133))",
                NONE.with(Attribute.OWN, false));
        add(Role.BUILDING, "B-1", "POLYGON((18 46, 60 46, 60 74, 46 74, 46 88, 18 88, 18 46))", NONE);
        add(Role.BUILDING, "B-2", "POLYGON((100 44, 140 44, 140 82, 100 82, 100 44))", NONE);
        add(Role.BUILDING, "B-3", "POLYGON((62 104, 72 104, 72 114, 62 114, 62 104))", NONE);
        add(Role.STREET, "Quillfeather Lane", "POLYGON((-90 -42, 175 -42, 175 -12, -90 -12, -90 -42))", NONE);
        add(
                Role.WALK,
                "W-1",
                "POLYGON((-90 -8, 175 -8, 175 -3, -90 -3, -90 -8))",
                NONE.with(Attribute.ACCESS, "public"));
        add(Role.WALK, "W-2", "POLYGON((34 -3, 38 -3, 38 46, 34 46, 34 -3))", NONE.with(Attribute.ACCESS, "private"));
        add(Role.DRIVE, "D-1", "POLYGON((47 -12, 60 -12, 59 46, 47 46, 47 -12))", NONE);
        add(Role.TREE, "T-1", "POINT(68 20)", NONE);
        add(Role.TREE, "T-2", "POINT(26 112)", NONE);
    }

    private void drain() {
        Attributes sewer = NONE.with(Attribute.DIAMETER, Length.inches(4)).with(Attribute.MATERIAL, "pvc_sdr35");
        add(Role.INLET, "IN-1", "POINT(30 102)", NONE.with(Attribute.KIND, "basin"));
        add(Role.INLET, "DS-1", "POINT(17.5 66)", NONE.with(Attribute.KIND, "downspout"));
        add(Role.INLET, "IN-2", "POINT(12 70)", NONE.with(Attribute.KIND, "basin"));
        add(Role.OUTFALL, "OF-1", "POINT(22 0.5)", NONE.with(Attribute.KIND, "daylight"));
        add(Role.CLEANOUT, "CO-1", "POINT(11 24)", NONE);
        add(Role.PIPE, "P-1", "LINESTRING(30 102, 15.6 94, 12 70)", inverts(sewer, 102.1, 101.5));
        add(Role.PIPE, "P-2", "LINESTRING(17.5 66, 12 70)", inverts(sewer, 101.9, 101.5));
        add(Role.PIPE, "P-3", "LINESTRING(12 70, 15.6 58, 15.6 46, 11 24)", inverts(sewer, 101.5, 101.15));
        add(Role.PIPE, "P-4", "LINESTRING(11 24, 22 0.5)", sewer.with(Attribute.INVERT_UP, Elevation.feet(101.1)));
    }

    private static Attributes inverts(Attributes pipe, double up, double down) {
        return pipe.with(Attribute.INVERT_UP, Elevation.feet(up)).with(Attribute.INVERT_DOWN, Elevation.feet(down));
    }

    private void utilities() {
        utility("G-1", "gas", "LINESTRING(5 -42, 5 52, 18 52)", 24);
        utility("W-SVC", "water_service", "LINESTRING(41 -30, 41 46)", 36);
        utility("W-MAIN", "water_main", "LINESTRING(-90 -30, 175 -30)", 42);
        utility("E-1", "electric", "LINESTRING(72 -42, 72 62, 60 62)", 30);
        utility("C-1", "communication", "LINESTRING(75 -42, 75 66, 60 66)", 18);
        utility("S-1", "sanitary", "LINESTRING(44 -22, 44 46)", 60);
        utility("I-1", "irrigation", "LINESTRING(3 10, 33 10, 33 40, 16 40)", 8);
        add(Role.UTILITY, "G-2", "LINESTRING(-90 -36, 175 -36)", NONE.with(Attribute.KIND, "gas"));
    }

    private void utility(String id, String kind, String wkt, double inches) {
        add(Role.UTILITY, id, wkt, NONE.with(Attribute.KIND, kind).with(Attribute.DEPTH, Length.inches(inches)));
    }

    private void ground() {
        for (int x = -10; x <= 90; x += 20) {
            for (int y = -15; y <= 135; y += 25) {
                double height = 101.2 + 0.022 * (y + 15) - 0.006 * x;
                add(Role.SPOT, "S" + x + "/" + y, "POINT Z(" + x + " " + y + " " + height + ")", NONE);
            }
        }
    }

    private void add(Role role, String id, String wktInFeet, Attributes attributes) {
        Feature feature = new Feature(
                role,
                naming.apply(id),
                metres(wktInFeet),
                attributes,
                Place.of(role.word() + ".geojson").feature(id));
        features.computeIfAbsent(role, any -> new ArrayList<>()).add(feature);
    }

    private static Geometry metres(String wktInFeet) {
        try {
            Geometry feet = new WKTReader(new GeometryFactory()).read(wktInFeet);
            Geometry metres = AffineTransformation.scaleInstance(0.3048, 0.3048).transform(feet);
            for (int i = 0; i < metres.getCoordinates().length; i++) {
                metres.getCoordinates()[i].setZ(feet.getCoordinates()[i].getZ() * 0.3048);
            }
            return metres;
        } catch (ParseException e) {
            throw new IllegalArgumentException(wktInFeet, e);
        }
    }
}
