package org.fallrule.report.html;

import java.util.List;
import java.util.Optional;

/**
 * What the page over many sites shows.
 *
 * @param text its style and script
 * @param title how many plans
 * @param day the day that they were held against the rules
 * @param needs how many plans need what
 * @param first the plans that need most, as many as are written out
 * @param all how many plans there are
 * @param counties the counties, for choosing
 * @param failing the rules that fail in the most plans
 * @param heat the rules that are open in a plan
 * @param heads over the plans of the heat table; none when there are too many and outcomes are counted instead
 * @param settled how many rules are open in no plan
 * @param map where they lie
 * @param placeless how many have no place on the map
 * @param notices what else to know
 * @param cautions what every report warns of
 * @param data every plan, for choosing: JSON in which nothing ends a script element
 */
public record DocketPage(
        PageText text,
        String title,
        String day,
        List<NeedCount> needs,
        List<SiteRow> first,
        int all,
        List<String> counties,
        List<FailingRow> failing,
        List<HeatRow> heat,
        List<HeatHead> heads,
        int settled,
        Optional<String> map,
        long placeless,
        List<String> notices,
        List<String> cautions,
        String data) {

    /** How many plans need something. */
    public record NeedCount(NeedSign need, long plans) {}

    /**
     * A plan's row.
     *
     * @param number its number on this page
     * @param address where its report lies; empty when there is none
     * @param says the rules that it does not meet or leaves open, or why it could not be checked
     */
    public record SiteRow(
            int number,
            String name,
            String path,
            String address,
            NeedSign need,
            String binding,
            String open,
            String advice,
            String county,
            List<String> says) {}

    /** A rule that fails, in how many of how many plans, and the tenth part of its share for its tint. */
    public record FailingRow(String rule, String title, String weight, long plans, long all, long percent, int tint) {}

    /** The head of a plan's column. */
    public record HeatHead(int number, String name) {}

    /** A rule over the plans: a cell for each plan, or for each outcome when there are many. */
    public record HeatRow(String rule, String title, String weight, List<HeatCell> cells) {}

    /** A cell: a class, what is seen, and what is heard. */
    public record HeatCell(String look, String seen, String heard) {}
}
