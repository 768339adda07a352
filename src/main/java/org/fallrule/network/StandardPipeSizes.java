package org.fallrule.network;

import java.util.Map;
import java.util.Optional;
import org.fallrule.measure.Length;
import org.fallrule.measure.Unit;

/**
 * Outside diameters that product standards fix for a nominal size, in inches. From memory, to be checked against the paper
 * copies: ASTM D3034 table 1 (PVC sewer pipe, SDR 35), ASTM D1785 table 1 (Schedule 40 plastic pipe, also D2665 and ABS
 * F628), ASTM D2729 table 1 (thin-wall PVC). Corrugated pipe is left out: its outside diameter differs by maker.
 */
final class StandardPipeSizes {
    private static final Map<Integer, Double> SEWER = Map.of(4, 4.215, 6, 6.275, 8, 8.400, 10, 10.500, 12, 12.500);
    private static final Map<Integer, Double> IRON_PIPE_SIZE =
            Map.of(1, 1.315, 2, 2.375, 3, 3.500, 4, 4.500, 6, 6.625, 8, 8.625, 10, 10.750, 12, 12.750);
    private static final Map<Integer, Double> THIN_WALL = Map.of(3, 3.250, 4, 4.215, 6, 6.275);

    private static final Map<String, Map<Integer, Double>> BY_MATERIAL =
            Map.of("pvc_sdr35", SEWER, "pvc_sch40", IRON_PIPE_SIZE, "abs", IRON_PIPE_SIZE, "pvc_thin_wall", THIN_WALL);

    private StandardPipeSizes() {}

    static Optional<Length> outside(String material, Length nominal) {
        int inches = (int) Math.round(nominal.in(Unit.INCH));
        boolean whole = Math.abs(nominal.in(Unit.INCH) - inches) < 0.1;
        Double found = BY_MATERIAL.getOrDefault(material, Map.of()).get(inches);
        return whole && found != null ? Optional.of(Length.inches(found)) : Optional.empty();
    }
}
