package org.fallrule.rulebook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.document.Fault;
import org.fallrule.document.Place;
import org.fallrule.locality.Locality;
import org.fallrule.locality.Storm;

/**
 * The rules of two counties for a lot that lies in both: every rule that one of them has; of a rule that both have the stricter,
 * and both where neither is the stricter in every case.
 */
public final class StricterBook {
    private final String one;
    private final String other;
    private final Map<String, List<String>> said = new LinkedHashMap<>();

    private StricterBook(String one, String other) {
        this.one = one;
        this.other = other;
    }

    /**
     * The rules of both.
     *
     * @param one the name of the first county, or of several
     * @param rules its rules
     * @param other the name of the other
     * @param others its rules
     * @param where the place to name where the report tells which rules were taken
     */
    public static RuleBook of(String one, RuleBook rules, String other, RuleBook others, Place where) {
        return new StricterBook(one, other).joined(rules, others, where);
    }

    private RuleBook joined(RuleBook rules, RuleBook others, Place where) {
        BothPlaces places = new BothPlaces();
        Locality locality = places.of(rules.locality(), others.locality());
        if (!places.open().isEmpty()) {
            said.put(
                    "the counties differ on these and neither is the stricter, so that what hangs on them cannot be told",
                    places.open());
        }
        Storm storm = rules.locality().storm();
        Storm theirs = others.locality().storm();
        if (!storm.equals(theirs) && !locality.storm().equals(Storm.UNSAID)) {
            say(locality.storm().equals(storm) ? asksMore(one, other) : asksMore(other, one), "storm");
        }
        List<Rule> joined = rules(rules.rules(), others.rules());
        List<Fault> notices = new ArrayList<>(distinct(rules.notices(), others.notices()));
        said.forEach((how, what) -> notices.add(new Fault(where, how + ": " + String.join(", ", what))));
        return new RuleBook(
                distinct(rules.books(), others.books()),
                locality,
                joined,
                notices,
                distinct(rules.checklist(), others.checklist()),
                rules.asBuilt().tighter(others.asBuilt()));
    }

    private List<Rule> rules(List<Rule> rules, List<Rule> others) {
        Map<String, Rule> byId = new LinkedHashMap<>();
        others.forEach(rule -> byId.put(rule.id(), rule));
        List<Rule> joined = new ArrayList<>();
        for (Rule rule : rules) {
            Optional<Rule> same = Optional.ofNullable(byId.remove(rule.id()));
            if (same.isEmpty()) {
                say("asked by " + one + " only", rule.id());
            }
            joined.addAll(same.map(its -> stricter(rule, its)).orElseGet(() -> List.of(rule)));
        }
        byId.values().forEach(rule -> say("asked by " + other + " only", rule.id()));
        joined.addAll(byId.values());
        return joined;
    }

    private List<Rule> stricter(Rule mine, Rule theirs) {
        if (mine.setBy().equals(theirs.setBy())) {
            return List.of(mine);
        }
        boolean holds = isAsStrict(mine, theirs);
        if (holds && isAsStrict(theirs, mine)) {
            return List.of(mine);
        }
        if (holds) {
            say(asksMore(one, other), mine.id());
            return List.of(mine);
        }
        if (isAsStrict(theirs, mine)) {
            say(asksMore(other, one), mine.id());
            return List.of(theirs);
        }
        say("neither county asks more in every case, and the plan is held to both", mine.id());
        return List.of(named(mine, one), named(theirs, other));
    }

    /** Whether a rule never asks less than another: what a firm's book is held to. */
    private static boolean isAsStrict(Rule rule, Rule than) {
        List<Fault> looser = new ArrayList<>();
        new HouseGuard(looser).compare(than, rule);
        return looser.isEmpty();
    }

    private static Rule named(Rule rule, String county) {
        return new Rule(
                rule.id(),
                rule.title() + " (" + county + ")",
                rule.check(),
                rule.weight(),
                rule.terms(),
                rule.basis(),
                rule.setBy());
    }

    private static String asksMore(String county, String than) {
        return county + " asks more than " + than + ", and its word is taken on";
    }

    private void say(String how, String what) {
        said.computeIfAbsent(how, each -> new ArrayList<>()).add(what);
    }

    private static <T> List<T> distinct(List<T> some, List<T> more) {
        return Stream.concat(some.stream(), more.stream()).distinct().toList();
    }
}
