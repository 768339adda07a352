package org.fallrule.report.map;

import java.util.EnumSet;
import java.util.Set;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** What can be said of looks when they are printed. */
final class Looks {
    private static final Set<Look> SIGNS = EnumSet.of(
            Look.OUTFALL,
            Look.BASIN,
            Look.DOWNSPOUT,
            Look.TRENCH_DRAIN,
            Look.CLEANOUT,
            Look.TREE,
            Look.WELL,
            Look.MEASURED_PLACE,
            Look.BEFORE_PLACE,
            Look.BUILT_PLACE);
    private static final Set<Look> AREAS = EnumSet.of(
            Look.BUILDING,
            Look.PUBLIC_WALK,
            Look.WALK,
            Look.DRIVE,
            Look.STREET,
            Look.WATER_BODY,
            Look.OUTFALL_GROUND,
            Look.LIMIT);

    /** How a look stands in the legend. */
    enum Form {
        SIGN,
        AREA,
        LINE
    }

    private Looks() {}

    static Form formOf(Look look) {
        return SIGNS.contains(look) ? Form.SIGN : AREAS.contains(look) ? Form.AREA : Form.LINE;
    }

    /** The looks of which something lies in the view. */
    static Set<Look> shownIn(Drawing drawing) {
        Set<Look> shown = EnumSet.noneOf(Look.class);
        Envelope view = drawing.view();
        Geometry frame = new GeometryFactory().toGeometry(view);
        drawing.shapes(Shape.Area.class).filter(area -> isSeen(area, frame)).forEach(area -> shown.add(area.look()));
        drawing.shapes(Shape.Line.class)
                .filter(line -> view.intersects(line.path().getEnvelopeInternal()))
                .forEach(line -> shown.add(line.look()));
        drawing.shapes(Shape.Sign.class)
                .filter(sign -> view.intersects(sign.place()))
                .forEach(sign -> shown.add(sign.look()));
        return shown;
    }

    /** Whether an area's inside lies in the view or, where only its edge is drawn, its edge. */
    private static boolean isSeen(Shape.Area area, Geometry frame) {
        boolean onlyEdge = area.look().ink().fill().isNone();
        return frame.intersects(onlyEdge ? area.outline().getBoundary() : area.outline());
    }

    /** The attributes of a path that is an area of this look. */
    static Object[] areaAttributes(Look look, String prefix, String data) {
        return look.ink().hatch() == Ink.Hatch.NONE
                ? new Object[] {"class", look.cssClass(), "d", data}
                : new Object[] {"class", look.cssClass(), "fill", "url(#" + hatchId(look, prefix) + ")", "d", data};
    }

    static String hatchId(Look look, String prefix) {
        return prefix + look.cssClass();
    }
}
