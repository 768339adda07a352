package org.fallrule.proposal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.document.Place;
import org.fallrule.document.UnusableInput;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Weight;
import org.fallrule.locality.Laying;
import org.fallrule.review.Review;
import org.fallrule.review.Reviewer;
import org.fallrule.rulebook.Rule;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.site.Layer;
import org.fallrule.site.Role;
import org.fallrule.site.Site;

/**
 * Looks for lines from every inlet of a plan to a legal outfall. First one that meets every rule and all advice for sure, then one
 * that meets every binding rule for sure, then one that meets them as far as the survey tells. Each is proved by the review
 * before it is offered.
 */
public final class Proposer {
    /** More proposals than this are no help. */
    private static final int MOST = 3;

    /** The checks that say where an outfall may stand and what fall it takes to reach it. */
    private static final List<String> PLACE =
            List.of("clearance", "within", "outside", "flow_path", "fall_available", "cover");

    private final SiteAnalysis analysis;
    private final RuleBook book;
    private final LocalDate today;
    private final Set<String> setAside;
    private final Laying laying;
    private final Review without;
    private final Set<String> always;

    private Proposer(SiteAnalysis analysis, RuleBook book, LocalDate today, Set<String> setAside) {
        this.analysis = analysis;
        this.book = book;
        this.today = today;
        this.setAside = Set.copyOf(setAside);
        this.laying = book.locality().laying();
        this.without = Reviewer.review(analysis.with(undrained(analysis.site())), book, today);
        this.always = without.findings().stream()
                .filter(Finding::failsPlan)
                .map(Finding::rule)
                .filter(id -> !setAside.contains(id))
                .collect(Collectors.toSet());
    }

    /**
     * Looks for lines.
     *
     * @param setAside ids of rules that are not to count
     * @throws UnusableInput if the plan or the rule book lacks what a line hangs on
     */
    public static Proposals of(SiteAnalysis analysis, RuleBook book, LocalDate today, Set<String> setAside) {
        refuse(analysis, book);
        return new Proposer(analysis, book, today, setAside).proposals();
    }

    private static void refuse(SiteAnalysis analysis, RuleBook book) {
        Place site = Place.of(analysis.site().id());
        List<String> lacking = book.locality().laying().lacking();
        if (!lacking.isEmpty()) {
            throw new UnusableInput(
                    site, "no rule book says " + String.join(", ", lacking) + "; a line is laid by these");
        }
        if (analysis.site().ownLot().isEmpty()) {
            throw new UnusableInput(
                    site, "does not say which lot is its own; supply the lot layer, one lot with own = true");
        }
        if (analysis.ground().isEmpty()) {
            throw new UnusableInput(site, "has no ground; supply a spot layer: spot elevations all over the lot");
        }
        if (analysis.site().features(Role.INLET).isEmpty()) {
            throw new UnusableInput(site, "has no inlet to lead the water from; supply the inlet layer");
        }
    }

    private static Site undrained(Site site) {
        Map<Role, Layer> layers = new EnumMap<>(Role.class);
        layers.putAll(site.layers());
        Stream.of(Role.PIPE, Role.OUTFALL, Role.CLEANOUT).forEach(layers::remove);
        return ProposedSite.withLayers(site, layers);
    }

    private Proposals proposals() {
        List<Proposal> found = new ArrayList<>();
        Optional<Proposal> next = first(Difference.NONE, Set.of()).or(this::submitted);
        while (next.isPresent()) {
            found.add(next.get());
            boolean goesOn = found.size() < MOST && next.get().course() == Proposal.Course.FOUND;
            next = goesOn ? another(found) : Optional.empty();
        }
        if (!always.isEmpty() || found.isEmpty()) {
            return new Proposals(List.of(), hindrances(!found.isEmpty()), !found.isEmpty());
        }
        found.sort(Comparator.comparingDouble(Proposal::cost));
        return new Proposals(found, List.of(), true);
    }

    /** The submitted line, in heights and sizes of its own or as it is: it may pass where no line of the grid does. */
    private Optional<Proposal> submitted() {
        Optional<Drain> drain = SubmittedDrain.of(analysis.site(), analysis.network());
        Aim any = new Aim(false, false);
        return drain.flatMap(line -> aims().flatMap(aim -> search(aim, Set.of()).along(line).stream())
                        .findFirst())
                .or(() -> drain.flatMap(line -> search(any, Set.of()).asSubmitted()));
    }

    /** One more line: its outfall well apart from those of the others, or past the house on another side. */
    private Optional<Proposal> another(List<Proposal> found) {
        double apart = laying.metres(Laying.Measure.APART);
        Difference outfall = Difference.ofOutfall(found, apart);
        return first(outfall, Set.of())
                .or(() ->
                        first(Difference.ofSide(found, analysis.site(), laying.metres(Laying.Measure.GRID)), Set.of()));
    }

    private Optional<Proposal> first(Difference difference, Set<String> leftOut) {
        return aims().flatMap(aim -> search(aim, leftOut).line(difference.taken(), difference.closed()).stream())
                .filter(difference::isHeldBy)
                .findFirst();
    }

    /** What a search is to meet: advice too or not, for sure or as far as the survey tells. */
    private record Aim(boolean advice, boolean surely) {}

    private static Stream<Aim> aims() {
        return Stream.of(new Aim(true, true), new Aim(false, true), new Aim(false, false));
    }

    private Search search(Aim aim, Set<String> leftOut) {
        Set<String> uncounted = new HashSet<>(setAside);
        uncounted.addAll(leftOut);
        List<Rule> asked = book.rules().stream()
                .filter(rule -> !uncounted.contains(rule.id()))
                .filter(rule -> rule.weight() == Weight.MUST || (aim.advice() && rule.weight() == Weight.SHOULD))
                .toList();
        uncounted.addAll(always);
        return new Search(analysis, book, today, asked, new Verdict(uncounted, without, aim.advice()), aim.surely());
    }

    private List<Hindrance> hindrances(boolean lineExists) {
        List<Hindrance> hindrances = new ArrayList<>();
        List<Rule> binding = book.rules().stream()
                .filter(rule -> rule.weight() == Weight.MUST && !setAside.contains(rule.id()))
                .toList();
        binding.stream()
                .filter(rule -> always.contains(rule.id()))
                .forEach(rule -> hindrances.add(Hindrance.of(rule, Hindrance.How.WHATEVER_THE_LINE)));
        if (lineExists) {
            return hindrances;
        }
        List<Rule> others =
                binding.stream().filter(rule -> !always.contains(rule.id())).toList();
        List<Hindrance> alone = others.stream()
                .filter(rule -> isLineWithout(Set.of(rule.id())))
                .map(rule -> Hindrance.of(rule, Hindrance.How.UNLOCKS))
                .toList();
        hindrances.addAll(alone.isEmpty() ? pairs(others) : alone);
        return hindrances;
    }

    private boolean isLineWithout(Set<String> leftOut) {
        return search(new Aim(false, false), leftOut)
                .line(Difference.NONE.taken(), Difference.NONE.closed())
                .isPresent();
    }

    /** Where no rule stands in the way alone: of the rules on where an outfall stands and on fall, every two that do together. */
    private List<Hindrance> pairs(List<Rule> rules) {
        List<Rule> ofPlace = rules.stream()
                .filter(rule -> PLACE.contains(rule.check().name()))
                .toList();
        List<Hindrance> pairs = new ArrayList<>();
        for (int i = 0; i < ofPlace.size(); i++) {
            for (Rule other : ofPlace.subList(i + 1, ofPlace.size())) {
                if (isLineWithout(Set.of(ofPlace.get(i).id(), other.id()))) {
                    pairs.add(Hindrance.of(ofPlace.get(i), other));
                }
            }
        }
        return pairs;
    }
}
