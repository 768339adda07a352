package org.fallrule.rulebook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fallrule.document.Fault;
import org.fallrule.document.Keys;
import org.fallrule.document.Nearest;
import org.fallrule.document.Node;
import org.fallrule.document.Place;
import org.fallrule.locality.Locality;

/** Lays rule books over each other, key by key, and makes the rules that come out. */
final class Layering {
    private final LocalDate day;
    private final List<Fault> faults;
    private final Checks checks = Checks.all();
    private final RuleCompiler compiler;
    private final Map<String, LayeredRule> rules = new LinkedHashMap<>();
    private final Map<String, Place> dropped = new LinkedHashMap<>();
    private final Map<String, RuleHistory> histories = new LinkedHashMap<>();
    private final List<Fault> notices = new ArrayList<>();

    /** @param day the day on which the rules apply */
    Layering(LocalDate day, List<Fault> faults) {
        this.day = day;
        this.faults = faults;
        this.compiler = new RuleCompiler(checks, faults);
    }

    LayeredBook layered(List<BookFile> books) {
        Locality locality = Locality.UNSAID;
        AsBuiltTolerances asBuilt = AsBuiltTolerances.UNSAID;
        ChecklistLayering checklist = new ChecklistLayering(faults);
        List<LayeredBook.Page> pages = new ArrayList<>();
        for (BookFile book : books) {
            RuleBook.Source source = new RuleBook.Source(book.file(), book.title(), book.sha256());
            pages.add(new LayeredBook.Page(source, book.layer().word(), book.inForce(), book.place()));
            if (book.inForce().on(day)) {
                if (book.layer() == BookFile.Layer.HOUSE) {
                    new HouseGuard(faults)
                            .compare(locality.markAccuracy(), book.locality().markAccuracy());
                    new HouseGuard(faults).compare(asBuilt, book.asBuilt());
                }
                asBuilt = asBuilt.overlaid(book.asBuilt());
                locality = locality.overlaid(book.locality());
                checklist.lay(book);
            } else {
                notice(book.inForce(), "the book " + book.title());
            }
            book.rules().forEach((id, rule) -> lay(book, id, rule));
        }
        List<Rule> compiled = new ArrayList<>();
        rules.values().forEach(rule -> compiler.compile(rule).ifPresent(compiled::add));
        List<RuleBook.Source> sources =
                pages.stream().map(LayeredBook.Page::source).toList();
        return new LayeredBook(
                new RuleBook(sources, locality, compiled, notices, checklist.items(), asBuilt),
                day,
                List.copyOf(histories.values()),
                pages);
    }

    private void notice(InForce inForce, String what) {
        notices.add(new Fault(inForce.statedAt(), what + " is " + inForce.spoken() + " and is not applied on " + day));
    }

    private void lay(BookFile book, String id, Node.Mapping rule) {
        Place place = book.rulePlaces().getOrDefault(id, rule.place());
        InForce inForce = InForce.read(new Keys(rule, faults), faults);
        if (!inForce.on(day) || !book.inForce().on(day)) {
            setAside(book, id, rule, place, inForce.on(day) ? book.inForce() : inForce);
            return;
        }
        Optional<LayeredRule> under = Optional.ofNullable(rules.get(id));
        boolean guarded =
                under.isPresent() && book.layer() == BookFile.Layer.HOUSE && !LayeredRule.saysWhyLoosened(rule);
        if (LayeredRule.isDropped(id, rule, faults)) {
            record(book, id, rule, place, RuleHistory.Fate.DROPS, inForce);
            drop(id, place, guarded);
            return;
        }
        if (under.isEmpty() && rule.get("check").isEmpty()) {
            refuseUnknown(id, place, "give check, weight, title and basis if the rule is new");
            return;
        }
        record(book, id, rule, place, RuleHistory.Fate.LAID, inForce);
        LayeredRule laid = under.map(below -> below.overlaid(rule, place, faults))
                .orElseGet(() -> new LayeredRule(id, rule, place));
        rules.put(id, laid);
        if (guarded) {
            guard(under.orElseThrow(), laid);
        }
    }

    private void setAside(BookFile book, String id, Node.Mapping rule, Place place, InForce inForce) {
        if (book.inForce().on(day)) {
            boolean changes = rules.containsKey(id);
            notice(inForce, "what this book says of the rule " + id + (changes ? ", which stays as it was," : ""));
        }
        record(book, id, rule, place, RuleHistory.Fate.NOT_IN_FORCE, inForce);
    }

    private void record(
            BookFile book, String id, Node.Mapping rule, Place place, RuleHistory.Fate fate, InForce inForce) {
        RuleHistory.Entry entry = new RuleHistory.Entry(book.file(), place, rule, fate, inForce);
        histories.merge(id, new RuleHistory(id, List.of(entry)), (known, fresh) -> known.and(entry));
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
        RuleCompiler quiet = new RuleCompiler(checks, new ArrayList<>());
        Optional<Rule> before = quiet.compile(county);
        Optional<Rule> after = quiet.compile(house);
        if (before.isPresent() && after.isPresent()) {
            new HouseGuard(faults).compare(before.get(), after.get());
        }
    }
}
