package org.fallrule.report.profile;

import java.util.ArrayList;
import java.util.List;
import org.fallrule.report.map.Hatches;
import org.fallrule.report.map.Look;
import org.fallrule.report.map.MapStyle;
import org.fallrule.report.map.Shape;
import org.fallrule.report.map.Svg;
import org.fallrule.report.map.SvgCanvas;

/** Prints a long section as SVG. Colours come by class from the style sheet of maps. */
public final class SectionSvg {
    private static final double ROW = 15;
    private static final double HEAD = 26;

    private final Svg svg;
    private final Section section;
    private final String prefix;
    private final SectionPainter painter;

    private SectionSvg(Svg svg, Section section, String prefix) {
        this(svg, section, prefix, new SectionPainter(new SvgCanvas(svg, prefix), section));
    }

    private SectionSvg(Svg svg, Section section, String prefix, SectionPainter painter) {
        this.svg = svg;
        this.section = section;
        this.prefix = prefix;
        this.painter = painter;
    }

    /**
     * The SVG for a page that carries the styles.
     *
     * @param prefix letters, digits and hyphens that begin every id in it; another for each drawing of a page
     */
    public static String inline(Section section, String prefix) {
        Svg svg = new Svg();
        new SectionSvg(svg, section, prefix).write(0);
        return svg.toString();
    }

    /** The SVG of one finding's profile for a page that carries the styles; its shapes do not say which feature they are part of. */
    public static String snippet(Section section, String prefix) {
        Svg svg = new Svg();
        SectionPainter painter = new SectionPainter(SvgCanvas.nameless(svg, prefix), section, SectionSnippet.EXPLAINED);
        SectionSvg snippet = new SectionSvg(svg, section, prefix, painter);
        snippet.head("class", "map profile");
        snippet.definitions();
        snippet.painter.draw();
        return svg.close("svg").toString();
    }

    /** Several sections, one below the other, as a file of its own. */
    public static String standalone(List<Section> sections) {
        Svg svg = new Svg();
        List<SectionSvg> all = new ArrayList<>();
        for (Section section : sections) {
            all.add(new SectionSvg(svg, section, "section-" + (all.size() + 1)));
        }
        double width =
                sections.stream().mapToDouble(each -> each.form().width()).max().orElse(0);
        double height =
                all.stream().mapToDouble(each -> each.painter.height() + HEAD).sum();
        String box = "0 0 " + Svg.number(width) + " " + Svg.number(height);
        svg.open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "class",
                "map",
                "viewBox",
                box,
                "width",
                width,
                "height",
                height);
        svg.leaf("title", "Long sections of the drain");
        svg.leaf("style", MapStyle.css() + SectionStyle.css());
        double top = 0;
        for (SectionSvg each : all) {
            String title = each.section.drawing().title();
            svg.leaf("text", title, "class", "m-legend m-strong", "x", 2, "y", top + ROW);
            each.write(top + HEAD);
            top += each.painter.height() + HEAD;
        }
        return svg.close("svg").toString();
    }

    private void write(double y) {
        head("class", "map section", "data-frame", painter.reach(), "y", y);
        painter.draw();
        svg.close("svg");
    }

    private void head(Object... attributes) {
        List<Object> all = new ArrayList<>(List.of("xmlns", "http://www.w3.org/2000/svg"));
        all.addAll(List.of(attributes));
        all.addAll(List.of(
                "viewBox",
                "0 0 " + Svg.number(section.form().width()) + " " + Svg.number(painter.height()),
                "width",
                section.form().width(),
                "height",
                painter.height(),
                "role",
                badges().isEmpty() ? "img" : "group",
                "aria-labelledby",
                prefix + "-title " + prefix + "-desc"));
        svg.open("svg", all.toArray());
        svg.leaf("title", section.drawing().title(), "id", prefix + "-title");
        svg.leaf("desc", section.drawing().description(), "id", prefix + "-desc");
    }

    private void definitions() {
        if (section.drawing().shapes(Shape.Area.class).anyMatch(area -> area.look() == Look.LIMIT)) {
            svg.open("defs");
            Hatches.write(svg, Look.LIMIT, prefix);
            svg.close("defs");
        }
    }

    private List<?> badges() {
        return section.drawing().layer("findings").map(layer -> layer.shapes()).orElse(List.of());
    }
}
