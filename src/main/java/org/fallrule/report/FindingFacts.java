package org.fallrule.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.finding.Basis;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Measured;
import org.fallrule.finding.Weight;
import org.fallrule.measure.Bound;

/** The facts of a finding in the order in which a report lists them. */
public final class FindingFacts {
    private final List<Fact> facts = new ArrayList<>();

    private FindingFacts() {}

    public static List<Fact> of(Finding finding) {
        FindingFacts list = new FindingFacts();
        finding.observation().measured().ifPresent(list::addMeasured);
        list.add("weight", meaning(finding.weight()));
        list.add("basis", basis(finding.basis()));
        list.add("set by", finding.setBy().fileAndLine());
        return List.copyOf(list.facts);
    }

    private void addMeasured(Measured measured) {
        add("measured", Sentence.shown(measured) + " (" + measured.of() + ")");
        add("required", Sentence.asked(measured));
        boolean most =
                measured.limit().map(limit -> limit.bound() == Bound.AT_MOST).orElse(false);
        add(most ? "over by" : "short by", Sentence.shortBy(measured));
        if (measured.limit().isPresent()) {
            add("accuracy", Sentence.accuracy(measured).orElse("taken as exact"));
        }
    }

    private static String meaning(Weight weight) {
        return switch (weight) {
            case MUST -> "must: failing it fails the plan";
            case SHOULD -> "should: advice";
            case NOTE -> "note: for whoever builds it";
        };
    }

    private static String basis(Basis basis) {
        return basis.note().map(note -> basis.spoken() + ". " + note).orElseGet(basis::spoken);
    }

    private void add(String name, Optional<String> value) {
        value.ifPresent(text -> add(name, text));
    }

    private void add(String name, String value) {
        facts.add(new Fact(name, value));
    }
}
