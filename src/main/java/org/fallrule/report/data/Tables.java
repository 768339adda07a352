package org.fallrule.report.data;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.analysis.InletCatchments;
import org.fallrule.measure.Printed;
import org.fallrule.measure.Quantity;
import org.fallrule.measure.Unit;
import org.fallrule.network.Junction;
import org.fallrule.network.OutsideDiameter;
import org.fallrule.network.PipeRun;
import org.fallrule.report.CrossedUtility;
import org.fallrule.report.Report;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;

/** The tables of a report: pipes, inlets, outfalls, drops at structures, crossings, and the water. */
public final class Tables {
    private final Report report;

    public Tables(Report report) {
        this.report = report;
    }

    /** For each table its rows, each by column: a text, a number, a flag, or a {@link ShownQuantity}. */
    public Map<String, Object> tree() {
        Map<String, Object> tree = FindingTree.ordered(
                "pipes",
                report.analysis().network().runs().stream().map(this::pipe).toList(),
                "inlets",
                inlets(),
                "outfalls",
                structures(Role.OUTFALL),
                "drops",
                DropRows.of(report.analysis().network(), report.site()),
                "crossings",
                CrossedUtility.of(report).stream().map(CrossingRow::of).toList());
        tree.putAll(WaterTree.of(report.analysis()));
        return tree;
    }

    private Map<String, Object> pipe(PipeRun run) {
        Map<String, Object> row = FindingTree.ordered("id", run.id());
        structure(run.up()).ifPresent(id -> row.put("from", id));
        structure(run.down()).ifPresent(id -> row.put("to", id));
        put(row, "diameter", run.diameter(), report.site().unit(Unit.INCH));
        put(
                row,
                "outside_diameter",
                run.size().map(OutsideDiameter::value),
                report.site().unit(Unit.INCH));
        run.pipe().get(Attribute.MATERIAL).ifPresent(material -> row.put("material", material));
        put(row, "length", Optional.of(run.length()), report.site().unit(Unit.FOOT));
        put(row, "slope", run.slope(), Unit.PERCENT);
        put(row, "invert_up", run.invertUp(), report.site().unit(Unit.ELEVATION_FOOT));
        put(row, "invert_down", run.invertDown(), report.site().unit(Unit.ELEVATION_FOOT));
        return row;
    }

    private static Optional<String> structure(Junction junction) {
        return junction.structures().stream().findFirst().map(Feature::id);
    }

    private List<Map<String, Object>> inlets() {
        Map<Feature, InletCatchments.Catchment> catchments = InletCatchments.of(report.analysis());
        List<Map<String, Object>> rows = new ArrayList<>();
        for (Feature inlet : report.site().features(Role.INLET)) {
            Map<String, Object> row = structure(inlet);
            Optional.ofNullable(catchments.get(inlet)).ifPresent(catchment -> {
                put(row, "drains_ground", catchment.overGround(), report.site().unit(Unit.SQUARE_FOOT));
                put(row, "drains_roof", catchment.ofRoof(), report.site().unit(Unit.SQUARE_FOOT));
                if (catchment.isCut()) {
                    row.put("drains_beyond_the_ground_given", true);
                }
            });
            rows.add(row);
        }
        return rows;
    }

    private List<Map<String, Object>> structures(Role role) {
        return report.site().features(role).stream().map(this::structure).toList();
    }

    private Map<String, Object> structure(Feature feature) {
        Map<String, Object> row = FindingTree.ordered("id", feature.id());
        feature.get(Attribute.KIND).ifPresent(kind -> row.put("kind", kind));
        put(row, "rim", feature.get(Attribute.RIM), report.site().unit(Unit.ELEVATION_FOOT));
        put(row, "invert", feature.get(Attribute.INVERT), report.site().unit(Unit.ELEVATION_FOOT));
        return row;
    }

    static void put(Map<String, Object> row, String name, Optional<? extends Quantity> quantity, Unit unit) {
        quantity.ifPresent(
                value -> row.put(name, new ShownQuantity(value.si(), value.dimension(), Printed.of(value, unit))));
    }
}
