package org.fallrule.report.data;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.fallrule.document.JsonWriter;
import org.fallrule.finding.Measured;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Limit;
import org.fallrule.measure.Printed;
import org.fallrule.report.Reading;

/** What a finding measured, as members of its object: the value, what is required, how far it is short of that, its accuracy. */
final class MeasuredMembers {
    private final Map<Asked, JsonWriter.Repeated> required = new HashMap<>();

    /** A limit and whether it is printed in metric units too. */
    private record Asked(Limit limit, boolean metric) {}

    void put(Reading reading, JsonWriter json) {
        Measured measured = reading.measured();
        Dimension dimension = measured.value().dimension();
        json.put("measured", part -> {
            part.put("of", measured.of());
            new ShownQuantity(measured.value().si(), dimension, reading.shown()).putInto(part);
        });
        measured.limit()
                .map(limit -> new Asked(limit, measured.metric()))
                .ifPresent(asked -> json.putAll(required.computeIfAbsent(asked, MeasuredMembers::required)));
        reading.shortBy().ifPresent(shown -> json.put("short_by", new ShownQuantity(gap(measured), dimension, shown)));
        if (measured.accuracy() > 0) {
            json.put("accuracy", part -> {
                part.put("value", FindingTree.rounded(measured.accuracy(), dimension));
                part.put("unit", dimension.siSymbol());
            });
        }
    }

    private static double gap(Measured measured) {
        return measured.limit().orElseThrow().shortfall(measured.value());
    }

    private static JsonWriter.Repeated required(Asked asked) {
        Limit limit = asked.limit();
        Dimension dimension = limit.value().quantity().dimension();
        return new JsonWriter.Repeated(FindingTree.ordered(
                "required",
                FindingTree.ordered(
                        limit.bound().name().toLowerCase(Locale.ROOT),
                        FindingTree.rounded(limit.value().quantity().si(), dimension),
                        "unit",
                        dimension.siSymbol(),
                        "shown",
                        Printed.limit(limit.value(), asked.metric()))));
    }
}
