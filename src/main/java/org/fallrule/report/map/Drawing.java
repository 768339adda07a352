package org.fallrule.report.map;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;

/**
 * A map before it is printed.
 *
 * @param title what it shows, in a few words
 * @param description what a reader who cannot see it must know
 * @param view the part of the plan that is shown, in metres of the local frame; neither side is zero
 * @param unit the unit of its scale bar
 * @param layers the lowest first
 */
public record Drawing(
        String title, String description, Envelope view, ScaleBar.GroundUnit unit, List<DrawingLayer> layers) {
    public Drawing {
        view = view.copy();
        layers = List.copyOf(layers);
        if (!(view.getWidth() > 0 && view.getHeight() > 0)) {
            throw new IllegalArgumentException("a drawing must show an area, found " + view);
        }
    }

    public Optional<DrawingLayer> layer(String name) {
        return layers.stream().filter(layer -> layer.name().equals(name)).findFirst();
    }

    /** Every shape of one kind, the lowest first. */
    public <T extends Shape> Stream<T> shapes(Class<T> kind) {
        return layers.stream()
                .flatMap(layer -> layer.shapes().stream())
                .filter(kind::isInstance)
                .map(kind::cast);
    }
}
