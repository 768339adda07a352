package org.fallrule.report.map;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;

/**
 * Where the metres of the local frame come to lie on a sheet whose units are screen pixels, y down.
 *
 * @param view the part of the plan that is shown
 * @param pxPerMetre pixels to a metre, the same in x and y
 */
public record Viewport(Envelope view, double pxPerMetre) {

    public static Viewport of(Envelope view, double width) {
        return new Viewport(view, width / view.getWidth());
    }

    public double width() {
        return view.getWidth() * pxPerMetre;
    }

    public double height() {
        return view.getHeight() * pxPerMetre;
    }

    public Coordinate px(Coordinate local) {
        return new Coordinate((local.x - view.getMinX()) * pxPerMetre, (view.getMaxY() - local.y) * pxPerMetre);
    }

    public Geometry px(Geometry local) {
        AffineTransformation toSheet = new AffineTransformation(
                pxPerMetre, 0, -view.getMinX() * pxPerMetre, 0, -pxPerMetre, view.getMaxY() * pxPerMetre);
        return toSheet.transform(local);
    }

    /** The sheet as far as the map goes. */
    public Envelope sheet() {
        return new Envelope(0, width(), 0, height());
    }
}
