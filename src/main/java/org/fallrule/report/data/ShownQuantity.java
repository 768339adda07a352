package org.fallrule.report.data;

import org.fallrule.document.JsonWriter;
import org.fallrule.measure.Dimension;

/**
 * A quantity as files give it: the SI value beside the text shown.
 *
 * @param si the value in the SI unit
 * @param dimension what it measures
 * @param shown the value as printed
 */
public record ShownQuantity(double si, Dimension dimension, String shown) implements JsonWriter.Part {

    @Override
    public void putInto(JsonWriter json) {
        json.put("value", FindingTree.rounded(si, dimension));
        json.put("unit", dimension.siSymbol());
        json.put("shown", shown);
    }
}
