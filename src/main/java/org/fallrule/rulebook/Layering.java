package org.fallrule.rulebook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.document.Fault;
import org.fallrule.document.Nearest;
import org.fallrule.document.Node;
import org.fallrule.document.Place;
import org.fallrule.locality.Locality;

/** Lays rule books over each other, key by key, and makes the rules that come out. */
final class Layering {
    private final List<Fault> faults;
    private final RuleCompiler compiler;
    private final Map<String, LayeredRule> rules = new LinkedHashMap<>();
    private final Map<String, Place> dropped = new LinkedHashMap<>();

    Layering(List<Fault> faults) {
        this.faults = faults;
        this.compiler = new RuleCompiler(Checks.all(), faults);
    }

    RuleBook layered(List<BookFile> books) {
        Locality locality = Locality.UNSAID;
        List<RuleBook.Source> sources = new ArrayList<>();
        for (BookFile book : books) {
            locality = locality.overlaid(book.locality());
            sources.add(new RuleBook.Source(book.file(), book.title(), book.sha256()));
            book.rules().forEach((id, rule) -> lay(book, id, rule));
        }
        List<Rule> compiled = new ArrayList<>();
        rules.values().forEach(rule -> compiler.compile(rule).ifPresent(compiled::add));
        return new RuleBook(sources, locality, compiled);
    }

    private void lay(BookFile book, String id, Node.Mapping rule) {
        Place place = book.rulePlaces().getOrDefault(id, rule.place());
        Optional<LayeredRule> under = Optional.ofNullable(rules.get(id));
        boolean guarded =
                under.isPresent() && book.layer() == BookFile.Layer.HOUSE && !LayeredRule.saysWhyLoosened(rule);
        if (LayeredRule.isDropped(id, rule, faults)) {
            drop(id, place, guarded);
            return;
        }
        if (under.isEmpty() && rule.get("check").isEmpty()) {
            refuseUnknown(id, place, "give check, weight, title and basis if the rule is new");
            return;
        }
        LayeredRule laid = under.map(below -> below.overlaid(rule, place, faults))
                .orElseGet(() -> new LayeredRule(id, rule, place));
        rules.put(id, laid);
        if (guarded) {
            guard(under.orElseThrow(), laid);
        }
    }

    /** To drop again what is dropped already does no harm: one house book serves in counties with and without the rule. */
    private void drop(String id, Place place, boolean guarded) {
        if (guarded) {
            new HouseGuard(faults).dropped(id, place);
        }
        if (rules.remove(id) != null) {
            dropped.put(id, place);
        } else if (!dropped.containsKey(id)) {
            refuseUnknown(id, place, "drop a rule by the id that it has");
        }
    }

    private void refuseUnknown(String id, Place place, String advice) {
        String why = dropped.containsKey(id)
                ? "was dropped in " + dropped.get(id).fileAndLine() + "."
                : "is in none of the books below" + Nearest.hint(id, rules.keySet());
        faults.add(new Fault(place, "rule " + id + " " + why + " To mend it, " + advice));
    }

    private void guard(LayeredRule county, LayeredRule house) {
        RuleCompiler quiet = new RuleCompiler(Checks.all(), new ArrayList<>());
        Optional<Rule> before = quiet.compile(county);
        Optional<Rule> after = quiet.compile(house);
        if (before.isPresent() && after.isPresent()) {
            new HouseGuard(faults).compare(before.get(), after.get());
        }
    }
}
