package org.fallrule.report.html;

import java.util.List;
import java.util.Optional;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Unit;
import org.fallrule.report.Report;
import org.fallrule.report.StructureFacts;
import org.fallrule.report.map.PlainText;
import org.fallrule.site.Role;
import org.fallrule.site.Site;

/**
 * An inlet, cleanout or outfall as a row of the structures table. What the plan does not say is said to be unknown; what does
 * not apply is empty.
 *
 * @param id its name
 * @param what its kind
 * @param rim its rim
 * @param invert its invert
 * @param ground what drains to it over the ground
 * @param roof what drains to it from a roof
 * @param drops the steps between its pipes
 */
public record StructureRow(
        String id, String what, String rim, String invert, String ground, String roof, List<String> drops) {
    private static final String UNKNOWN = "not given";

    static List<StructureRow> all(Report report) {
        return StructureFacts.all(report.analysis()).stream()
                .map(StructureRow::of)
                .toList();
    }

    private static StructureRow of(StructureFacts facts) {
        boolean hasKind = facts.catchment().isPresent();
        String untold = facts.feature().role() == Role.INLET && !hasKind ? "not known" : "";
        return new StructureRow(
                PlainText.of(facts.feature().id()),
                PlainText.of(facts.what()),
                elevation(facts.rim(), facts.plan()),
                elevation(facts.invert(), facts.plan()),
                facts.drainsGround().orElse(untold),
                facts.drainsRoof().orElse(untold),
                facts.drops().stream().map(facts::spoken).map(PlainText::of).toList());
    }

    private static String elevation(Optional<Elevation> level, Site plan) {
        return level.map(height -> plan.printed(height, Unit.ELEVATION_FOOT)).orElse(UNKNOWN);
    }
}
