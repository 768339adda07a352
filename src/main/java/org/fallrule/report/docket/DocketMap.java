package org.fallrule.report.docket;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fallrule.report.map.ScaleBar;
import org.fallrule.report.map.Svg;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;

/**
 * Where the plans of a docket lie: each lot in its place, north up, and on it a mark whose form says what the plan needs. Degrees
 * are drawn as the metres that they have in the middle of the map; over a county that is true to some parts in a thousand.
 */
public final class DocketMap {
    /** Metres in a degree of latitude at 45 degrees on WGS 84, about; enough for a scale bar of a round length. */
    private static final double DEGREE = 111_132;

    private static final double WIDTH = 560;
    private static final double HEIGHT = 380;
    private static final double MARGIN = 34;
    private static final double FOOT = 46;
    private static final double LEAST_METRES = 60;
    /** Plans up to this many have their number beside the mark, and lead to their reports. */
    static final int MOST_NUMBERED = 60;

    private record Plan(int number, DocketEntry entry, Geometry px) {}

    private final Svg svg = new Svg();
    private final List<Plan> plans = new ArrayList<>();
    private final List<Envelope> taken = new ArrayList<>();
    private final boolean numbered;
    private final double pxPerMetre;

    private DocketMap(List<DocketEntry> byNeed) {
        Envelope all = new Envelope();
        byNeed.forEach(entry -> entry.lot().ifPresent(lot -> all.expandToInclude(lot.getEnvelopeInternal())));
        double shrink = Math.cos(Math.toRadians(all.isNull() ? 0 : all.centre().y));
        double wide = Math.max(all.getWidth() * shrink * DEGREE, LEAST_METRES);
        double high = Math.max(all.getHeight() * DEGREE, LEAST_METRES);
        pxPerMetre = Math.min((WIDTH - 2 * MARGIN) / wide, (HEIGHT - MARGIN - FOOT) / high);
        if (!all.isNull()) {
            Coordinate middle = all.centre();
            AffineTransformation place = AffineTransformation.translationInstance(-middle.x, -middle.y)
                    .scale(shrink * DEGREE * pxPerMetre, -DEGREE * pxPerMetre)
                    .translate(WIDTH / 2, (HEIGHT + MARGIN - FOOT) / 2);
            for (int i = 0; i < byNeed.size(); i++) {
                DocketEntry entry = byNeed.get(i);
                int number = i + 1;
                entry.lot().ifPresent(lot -> plans.add(new Plan(number, entry, place.transform(lot))));
            }
        }
        numbered = byNeed.size() <= MOST_NUMBERED;
    }

    /**
     * The map.
     *
     * @param byNeed the plans in the order of their numbers, which count from 1
     * @return SVG; nothing when no plan has a place
     */
    public static Optional<String> of(List<DocketEntry> byNeed) {
        DocketMap map = new DocketMap(byNeed);
        return map.plans.isEmpty() ? Optional.empty() : Optional.of(map.drawn());
    }

    private String drawn() {
        String label = "Map of " + plans.size() + (plans.size() == 1 ? " plan" : " plans") + ", north up";
        svg.open(
                "svg",
                "viewBox",
                "0 0 " + (int) WIDTH + " " + (int) HEIGHT,
                "class",
                "docket-map",
                "role",
                "img",
                "aria-label",
                label);
        svg.empty("rect", "class", "sheet-edge", "x", 0.5, "y", 0.5, "width", WIDTH - 1, "height", HEIGHT - 1);
        plans.forEach(plan -> svg.empty("path", "class", "lot-line", "d", Svg.path(plan.px())));
        plans.stream()
                .sorted(Comparator.comparing((Plan plan) -> plan.entry().need()).reversed())
                .forEach(this::mark);
        if (numbered) {
            plans.forEach(this::number);
        }
        furniture();
        return svg.close("svg").toString();
    }

    private void mark(Plan plan) {
        Coordinate at = plan.px().getCentroid().getCoordinate();
        double r = numbered ? 6 : Math.max(1.6, 6 - Math.log10(plans.size()));
        svg.open("g", "class", "mark " + plan.entry().need().word(), "data-n", plan.number());
        svg.leaf(
                "title",
                plan.number() + ": " + plan.entry().name() + ": "
                        + plan.entry().need().spoken());
        switch (plan.entry().need()) {
            case BINDING_FAILS -> svg.empty("path", "d", square(at, r));
            case OPEN -> svg.empty("path", "d", triangle(at, r * 1.25));
            case ADVICE_FAILS -> svg.empty("path", "d", square45(at, r * 1.2));
            default -> svg.empty("circle", "cx", at.x, "cy", at.y, "r", r * 0.8);
        }
        svg.close("g");
    }

    private static String square(Coordinate at, double r) {
        return path(at.x - r, at.y - r, at.x + r, at.y - r, at.x + r, at.y + r, at.x - r, at.y + r);
    }

    private static String triangle(Coordinate at, double r) {
        return path(at.x, at.y - r, at.x + r, at.y + r * 0.8, at.x - r, at.y + r * 0.8);
    }

    private static String square45(Coordinate at, double r) {
        return path(at.x, at.y - r, at.x + r, at.y, at.x, at.y + r, at.x - r, at.y);
    }

    private static String path(double... xy) {
        StringBuilder path = new StringBuilder();
        for (int i = 0; i < xy.length; i += 2) {
            path.append(i == 0 ? 'M' : 'L')
                    .append(Svg.number(xy[i]))
                    .append(' ')
                    .append(Svg.number(xy[i + 1]));
        }
        return path.append('Z').toString();
    }

    /** The number beside the mark, where no other number stands. */
    private void number(Plan plan) {
        Coordinate at = plan.px().getCentroid().getCoordinate();
        String text = String.valueOf(plan.number());
        for (int side : new int[] {1, -1}) {
            double x = at.x + side * 10;
            double wide = 9.0 * text.length();
            Envelope box = new Envelope(x, x + side * wide, at.y - 7, at.y + 7);
            if (taken.stream().noneMatch(box::intersects)) {
                taken.add(box);
                svg.leaf("text", text, "x", x, "y", at.y + 5, "text-anchor", side > 0 ? "start" : "end");
                return;
            }
        }
    }

    private void furniture() {
        double y = HEIGHT - 28;
        for (ScaleBar.GroundUnit unit : ScaleBar.GroundUnit.values()) {
            ScaleBar bar = ScaleBar.within(WIDTH * 0.3, pxPerMetre, unit);
            svg.empty(
                    "path",
                    "class",
                    "bar",
                    "d",
                    "M16 " + Svg.number(y - 4) + "V" + Svg.number(y) + "H" + Svg.number(16 + bar.px()) + "V"
                            + Svg.number(y - 4));
            svg.leaf("text", bar.words().replaceAll("(?<=[0-9])(?=([0-9]{3})+ )", ","), "x", 22 + bar.px(), "y", y + 3);
            y += 18;
        }
        double x = WIDTH - 26;
        svg.empty(
                "path",
                "class",
                "north",
                "d",
                path(x, HEIGHT - 48, x + 7, HEIGHT - 26, x, HEIGHT - 31, x - 7, HEIGHT - 26));
        svg.leaf("text", "N", "x", x, "y", HEIGHT - 9, "text-anchor", "middle");
    }
}
