package org.fallrule.report.data;

import java.util.List;
import java.util.Map;
import org.fallrule.proposal.StandingGround;
import org.fallrule.report.Report;
import org.fallrule.report.StandingWords;
import org.fallrule.rulebook.Rule;
import org.fallrule.site.Role;

/** Where an outfall and a basin may stand, as trees of names and values. */
final class StandingTree {
    private final Report report;
    private final GeoShape shapes;

    StandingTree(Report report) {
        this.report = report;
        this.shapes = new GeoShape(report.site().frame());
    }

    List<Map<String, Object>> rows() {
        return report.outlook().standing().stream().map(this::row).toList();
    }

    private Map<String, Object> row(StandingGround ground) {
        return FindingTree.ordered(
                "what",
                word(ground),
                "square_metres",
                Math.round(ground.size().squareMetres() * 100) / 100.0,
                "pieces",
                ground.pieces().size(),
                "advised_square_metres",
                Math.round(ground.advised().getArea() * 100) / 100.0,
                "barred_by",
                ground.barring().stream().map(Rule::id).toList(),
                "says",
                StandingWords.of(ground, report.site()));
    }

    private static String word(StandingGround ground) {
        return ground.role() == Role.OUTFALL ? "outfall" : "basin";
    }

    /** The areas as features, for a map. */
    List<Map<String, Object>> features() {
        return report.outlook().standing().stream()
                .filter(ground -> !ground.area().isEmpty())
                .map(ground -> FindingTree.ordered(
                        "type",
                        "Feature",
                        "geometry",
                        shapes.of(ground.area()),
                        "properties",
                        FindingTree.ordered(
                                "outcome",
                                "may_stand",
                                "subject",
                                word(ground),
                                "says",
                                StandingWords.of(ground, report.site()))))
                .toList();
    }
}
