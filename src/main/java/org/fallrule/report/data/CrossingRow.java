package org.fallrule.report.data;

import java.util.Map;
import java.util.Optional;
import org.fallrule.analysis.ExpectedLevel;
import org.fallrule.analysis.UtilityCrossing;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Unit;
import org.fallrule.report.CrossedUtility;
import org.fallrule.report.WhoToCall;
import org.fallrule.site.Attribute;

/** A row of the table of crossings in the findings file. What the plan does not say is left out. */
final class CrossingRow {
    private CrossingRow() {}

    static Map<String, Object> of(CrossedUtility crossed) {
        UtilityCrossing crossing = crossed.crossing();
        Map<String, Object> row = FindingTree.ordered(
                "pipe", crossing.run().id(), "station", length(crossing.station(), crossed.station()));
        row.put("utility", crossing.utility().id());
        crossing.utility().get(Attribute.KIND).ifPresent(kind -> row.put("kind", kind));
        Tables.put(row, "size", crossing.size(), crossed.plan().unit(Unit.INCH));
        crossing.utility().get(Attribute.QUALITY).ifPresent(quality -> row.put("quality", quality));
        Tables.put(
                row,
                "top",
                crossing.utility().get(Attribute.TOP),
                crossed.plan().unit(Unit.ELEVATION_FOOT));
        Tables.put(
                row,
                "depth",
                crossing.utility().get(Attribute.DEPTH),
                crossed.plan().unit(Unit.INCH));
        row.put("depth_relied_on", crossing.top().isPresent() && crossing.isTopRelied());
        crossing.expected().map(ExpectedLevel::cover).ifPresent(cover -> {
            Tables.put(
                    row,
                    "expected_depth_from",
                    Optional.of(cover.from()),
                    crossed.plan().unit(Unit.INCH));
            Tables.put(
                    row,
                    "expected_depth_to",
                    Optional.of(cover.to()),
                    crossed.plan().unit(Unit.INCH));
        });
        crossed.gap().ifPresent(gap -> {
            row.put("drain", gap.isDrainOver() ? "above" : "below");
            row.put("gap", length(gap.clear().metres(), crossed.gapShown().orElseThrow()));
        });
        Tables.put(row, "angle", Optional.of(crossing.angle()), Unit.DEGREE);
        crossed.outcome().ifPresent(outcome -> row.put("outcome", outcome.word()));
        row.put("call", WhoToCall.of(crossing.utility()).words());
        return row;
    }

    private static ShownQuantity length(double metres, String shown) {
        return new ShownQuantity(metres, Dimension.LENGTH, shown);
    }
}
