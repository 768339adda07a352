package org.fallrule.report.data;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.measure.Unit;
import org.fallrule.network.Drop;
import org.fallrule.network.PipeNetwork;
import org.fallrule.site.Feature;
import org.fallrule.site.Site;

/** The drops at structures, a row for each pipe that comes in where both inverts are known. */
final class DropRows {
    private DropRows() {}

    static List<Map<String, Object>> of(PipeNetwork network, Site site) {
        return network.drops().stream().map(drop -> row(drop, site)).toList();
    }

    private static Map<String, Object> row(Drop drop, Site site) {
        Feature structure = drop.at().structures().get(0);
        Map<String, Object> row = FindingTree.ordered(
                "id",
                structure.id(),
                "role",
                structure.role().word(),
                "from_pipe",
                drop.in().id(),
                "to_pipe",
                drop.out().id());
        Tables.put(row, "invert_in", drop.in().invertDown(), site.unit(Unit.ELEVATION_FOOT));
        Tables.put(row, "invert_out", drop.out().invertUp(), site.unit(Unit.ELEVATION_FOOT));
        Tables.put(row, "drop", Optional.of(drop.height()), site.unit(Unit.FOOT));
        return row;
    }
}
