package org.fallrule.report.html;

import java.util.Optional;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Printed;
import org.fallrule.measure.Unit;
import org.fallrule.network.PipeRun;
import org.fallrule.report.SheetUnits;
import org.fallrule.report.map.PlainText;
import org.fallrule.site.Attribute;
import org.fallrule.site.Site;

/**
 * A pipe as a row of the pipes table. What the plan does not say is said to be unknown.
 *
 * @param id the pipe's name
 * @param size nominal diameter
 * @param material what it is made of
 * @param length plan length
 * @param slope slope in percent
 * @param invertUp invert at the upstream end
 * @param invertDown invert at the downstream end
 */
public record PipeRow(
        String id, String size, String material, String length, String slope, String invertUp, String invertDown) {
    private static final String UNKNOWN = "not given";

    static PipeRow of(PipeRun run, Site site) {
        return new PipeRow(
                PlainText.of(run.id()),
                run.diameter().map(SheetUnits.of(site)::size).orElse(UNKNOWN),
                run.pipe()
                        .get(Attribute.MATERIAL)
                        .map(material -> PlainText.of(material.replace('_', ' ')))
                        .orElse(UNKNOWN),
                site.printed(run.length(), Unit.FOOT),
                run.slope().map(slope -> Printed.of(slope, Unit.PERCENT)).orElse(UNKNOWN),
                elevation(run.invertUp(), site),
                elevation(run.invertDown(), site));
    }

    private static String elevation(Optional<Elevation> invert, Site site) {
        return invert.map(height -> site.printed(height, Unit.ELEVATION_FOOT)).orElse(UNKNOWN);
    }
}
