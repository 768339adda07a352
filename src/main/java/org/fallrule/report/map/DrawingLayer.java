package org.fallrule.report.map;

import java.util.List;

/**
 * Shapes that belong together.
 *
 * @param name a word for them: a role's word, {@code limit}, {@code measured}, {@code findings}
 * @param shapes the shapes, the lowest first
 */
public record DrawingLayer(String name, List<Shape> shapes) {
    public DrawingLayer {
        shapes = List.copyOf(shapes);
    }
}
