package org.fallrule.rulebook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.document.Fault;
import org.fallrule.document.Node;
import org.fallrule.document.Place;

/** Lays rule books over each other, key by key, and makes the rules that come out. */
final class Layering {
    private final List<Fault> faults;
    private final RuleCompiler compiler;
    private final Map<String, LayeredRule> rules = new LinkedHashMap<>();

    Layering(List<Fault> faults) {
        this.faults = faults;
        this.compiler = new RuleCompiler(Checks.all(), faults);
    }

    RuleBook layered(List<BookFile> books) {
        Climate climate = Climate.UNSAID;
        List<RuleBook.Source> sources = new ArrayList<>();
        for (BookFile book : books) {
            climate = climate.overlaid(book.climate());
            sources.add(new RuleBook.Source(book.file(), book.title(), book.sha256()));
            book.rules().forEach((id, rule) -> lay(book, id, rule));
        }
        List<Rule> compiled = new ArrayList<>();
        rules.values().forEach(rule -> compiler.compile(rule).ifPresent(compiled::add));
        return new RuleBook(sources, climate, compiled);
    }

    private void lay(BookFile book, String id, Node.Mapping rule) {
        Place place = book.rulePlaces().getOrDefault(id, rule.place());
        Optional<LayeredRule> under = Optional.ofNullable(rules.get(id));
        boolean guarded = book.layer() == BookFile.Layer.HOUSE
                && rule.get("loosen_because").isEmpty();
        if (LayeredRule.isDropped(id, rule, rule.get("drop").isPresent() ? faults : new ArrayList<>())) {
            if (guarded) {
                new HouseGuard(faults).dropped(id, place);
            }
            rules.remove(id);
            return;
        }
        LayeredRule laid = under.map(below -> below.overlaid(rule, place, faults))
                .orElseGet(() -> new LayeredRule(id, rule, place));
        rules.put(id, laid);
        if (guarded && under.isPresent()) {
            guard(under.get(), laid);
        }
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
