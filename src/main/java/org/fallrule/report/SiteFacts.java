package org.fallrule.report;

import java.util.List;
import java.util.Optional;
import org.fallrule.measure.Length;
import org.fallrule.measure.Unit;
import org.fallrule.site.Site;
import org.fallrule.site.Survey;

/** The facts about a plan in the order in which a report lists them. */
public final class SiteFacts {
    private static final String UNSAID = "not given";

    private SiteFacts() {}

    public static List<Fact> of(Report report) {
        Survey survey = report.site().survey();
        return List.of(
                new Fact("site", report.site().id()),
                new Fact("county", report.county()),
                new Fact("coordinates", report.site().crs()),
                new Fact("heights", report.site().datum().orElse(UNSAID)),
                new Fact("surveyed", survey.date().map(Object::toString).orElse(UNSAID)),
                new Fact("by", survey.source().map(how -> how.replace('_', ' ')).orElse(UNSAID)),
                new Fact("accuracy in plan", accuracy(survey.horizontalAccuracy(), report.site())),
                new Fact("accuracy in height", accuracy(survey.verticalAccuracy(), report.site())));
    }

    private static String accuracy(Optional<Length> accuracy, Site site) {
        return accuracy.map(length -> "±" + site.printed(length, Unit.FOOT)).orElse(UNSAID + ", taken as exact");
    }
}
