package org.fallrule.hydraulics.table;

import java.util.List;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Length;

/**
 * A class of stone for an apron; HEC-14, table 10.1.
 *
 * @param number of the class, from 1
 * @param size median size of its stones
 * @param lengthInDiameters length of the apron in diameters of the pipe
 * @param depthInStones depth of the layer in stones of the median size
 */
public record RiprapClass(int number, Length size, double lengthInDiameters, double depthInStones) {

    /** The classes, from the smallest stone up. */
    public static List<RiprapClass> all() {
        return DataFile.shipped("riprap-classes").rows("rows").stream()
                .map(row -> new RiprapClass(
                        Integer.parseInt(row.text("class")),
                        new Length(row.quantity("size", Dimension.LENGTH).si()),
                        row.quantity("length", Dimension.RATIO).si(),
                        row.quantity("depth", Dimension.RATIO).si()))
                .toList();
    }
}
