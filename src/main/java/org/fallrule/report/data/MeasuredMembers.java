package org.fallrule.report.data;

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
    private final SharedMembers<Limit> customary = SharedMembers.ofSame(limit -> required(limit, false));
    private final SharedMembers<Limit> metric = SharedMembers.ofSame(limit -> required(limit, true));

    void put(Reading reading, JsonWriter json) {
        Measured measured = reading.measured();
        Dimension dimension = measured.value().dimension();
        json.putPart("measured", part -> {
            part.put("of", measured.of());
            new ShownQuantity(measured.value().si(), dimension, reading.shown()).putInto(part);
        });
        SharedMembers<Limit> required = measured.metric() ? metric : customary;
        measured.limit().map(required::of).ifPresent(json::putAll);
        reading.shortBy()
                .ifPresent(shown -> json.putPart("short_by", new ShownQuantity(gap(measured), dimension, shown)));
        if (measured.accuracy() > 0) {
            json.putPart("accuracy", part -> {
                part.put("value", FindingTree.rounded(measured.accuracy(), dimension));
                part.put("unit", dimension.siSymbol());
            });
        }
    }

    private static double gap(Measured measured) {
        return measured.limit().orElseThrow().shortfall(measured.value());
    }

    private static Map<String, Object> required(Limit limit, boolean metric) {
        Dimension dimension = limit.value().quantity().dimension();
        return FindingTree.ordered(
                "required",
                FindingTree.ordered(
                        limit.bound().name().toLowerCase(Locale.ROOT),
                        FindingTree.rounded(limit.value().quantity().si(), dimension),
                        "unit",
                        dimension.siSymbol(),
                        "shown",
                        Printed.limit(limit.value(), metric)));
    }
}
