package org.fallrule.report.docket;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.finding.Outcome;
import org.fallrule.finding.Weight;
import org.locationtech.jts.geom.Geometry;

/**
 * One plan of a docket.
 *
 * @param path the site folder as the user knows it
 * @param folder the folder of its report within the output folder
 * @param name the name to show
 * @param county the county whose rules were applied; empty for a plan that could not be checked
 * @param verdict one line: does it pass, how much is open; or that it could not be checked
 * @param counts the findings by outcome
 * @param standings how it stands to each rule, in the order of the rules
 * @param lot the site's own lot, else a point of the plan, in WGS 84 longitude and latitude
 * @param causes why it could not be checked; empty for a plan that was
 */
public record DocketEntry(
        String path,
        String folder,
        String name,
        String county,
        String verdict,
        Map<Outcome, Long> counts,
        List<RuleStanding> standings,
        Optional<Geometry> lot,
        List<String> causes) {

    /** A cause is listed this often; a wrong coordinate system makes one for every feature. */
    public static final int MOST_CAUSES = 50;

    public DocketEntry {
        EnumMap<Outcome, Long> sorted = new EnumMap<>(Outcome.class);
        sorted.putAll(counts);
        counts = Collections.unmodifiableMap(sorted);
        standings = List.copyOf(standings);
        causes = List.copyOf(causes);
    }

    /** A plan that could not be checked. */
    public static DocketEntry broken(String path, String folder, String name, List<String> causes) {
        List<String> listed = causes.subList(0, Math.min(causes.size(), MOST_CAUSES));
        return new DocketEntry(
                path,
                folder,
                name,
                "",
                "Could not be checked.",
                Map.of(),
                List.of(),
                Optional.empty(),
                causes.size() > listed.size() ? more(listed, causes.size() - listed.size()) : listed);
    }

    private static List<String> more(List<String> listed, int more) {
        List<String> all = new java.util.ArrayList<>(listed);
        all.add("and " + more + " more");
        return all;
    }

    /** What it needs from the reviewer. */
    public Need need() {
        if (isBroken()) {
            return Need.BROKEN;
        }
        if (standings.stream().anyMatch(RuleStanding::failsPlan)) {
            return Need.BINDING_FAILS;
        }
        if (open() > 0) {
            return Need.OPEN;
        }
        return advice() > 0 ? Need.ADVICE_FAILS : Need.CLEAN;
    }

    public boolean isBroken() {
        return !causes.isEmpty();
    }

    /** The findings of an outcome. */
    public long count(Outcome outcome) {
        return counts.getOrDefault(outcome, 0L);
    }

    /** The findings that are borderline or cannot be told. */
    public long open() {
        return count(Outcome.BORDERLINE) + count(Outcome.CANNOT_TELL);
    }

    /** The findings of binding rules that fail. */
    public long binding() {
        return failing(Weight.MUST);
    }

    /** The findings of advice that is not followed. */
    public long advice() {
        return failing(Weight.SHOULD);
    }

    /** A count of its findings as it is shown: nothing was counted in a plan that could not be checked. */
    public String shown(long count) {
        return isBroken() ? "" : String.valueOf(count);
    }

    private long failing(Weight weight) {
        return standings.stream()
                .filter(each -> each.outcome() == Outcome.FAILS && each.weight() == weight)
                .mapToLong(RuleStanding::findings)
                .sum();
    }
}
