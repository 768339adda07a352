package org.fallrule.report.html;

import java.util.List;
import java.util.Optional;
import org.fallrule.report.Fact;

/**
 * All that the page of a comparison states, in the words that stand on it.
 *
 * @param text its style
 * @param site the site's name
 * @param before the earlier state
 * @param after the later state
 * @param rules whose rules each is held against
 * @param verdict what a reviewer asks first
 * @param bad whether a binding rule fails now or anything got worse
 * @param counts how many findings have changed in which way, each with its sign
 * @param plans both states on one map
 * @param worse findings that are new or worse
 * @param better findings that are better, and open
 * @param same findings that are as they were, and open
 * @param gone findings that were open and are settled
 * @param settled how many are settled in both states
 * @param asBuilt values as built that a person has to look at
 * @param notMeasured what was not measured of the work, a line for each thing
 * @param toMeasure what would settle that
 * @param within how many values as built lie within their tolerance
 * @param isAsBuilt whether the later state shows work as built
 * @param isPlan whether the later state is a plan
 * @param data what the states say differently, each with its kind
 * @param problems what is wrong with the input, each with its place
 * @param books the rule books
 * @param cautions what every report warns of
 */
public record ComparisonPage(
        PageText text,
        String site,
        String before,
        String after,
        String rules,
        String verdict,
        boolean bad,
        List<Fact> counts,
        Optional<ReportPage.Plans> plans,
        List<ChangeView> worse,
        List<ChangeView> better,
        List<ChangeView> same,
        List<ChangeView> gone,
        long settled,
        List<ChangeView> asBuilt,
        List<String> notMeasured,
        List<String> toMeasure,
        long within,
        boolean isAsBuilt,
        boolean isPlan,
        List<Fact> data,
        List<Fact> problems,
        List<ReportPage.Book> books,
        List<String> cautions) {}
