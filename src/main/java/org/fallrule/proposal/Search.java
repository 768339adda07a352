package org.fallrule.proposal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Observation;
import org.fallrule.locality.Laying;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Length;
import org.fallrule.measure.Unit;
import org.fallrule.review.Review;
import org.fallrule.review.Reviewer;
import org.fallrule.rulebook.Rule;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.distance.DistanceOp;

/**
 * Looks for one line that meets some rules: way, grades, sizes, cleanouts, and the review. What the review holds against it at
 * some place is kept out of in the next attempt; what it holds against its size, in the next size.
 */
final class Search {
    private static final int ATTEMPTS = 6;
    /** What is wrong over a longer stretch than this, in metres, is not wrong at a place. */
    private static final double PLACE = 3;

    private final SiteAnalysis analysis;
    private final RuleBook book;
    private final LocalDate today;
    private final List<Rule> asked;
    private final Verdict verdict;
    private final boolean surely;
    private final Laying laying;
    private final Stock stock;
    private final LineRules rules;
    private final LineRules noted;
    private final Ground ground;

    /** @param asked the rules that are to be met, and for sure or not */
    Search(SiteAnalysis analysis, RuleBook book, LocalDate today, List<Rule> asked, Verdict verdict, boolean surely) {
        this.analysis = analysis;
        this.book = book;
        this.today = today;
        this.asked = asked;
        this.verdict = verdict;
        this.surely = surely;
        this.laying = book.locality().laying();
        this.stock = new Stock(laying);
        this.rules = new LineRules(analysis, asked, surely);
        this.noted = new LineRules(analysis, book.rules(), false);
        this.ground = new Ground(analysis);
    }

    /**
     * A line that differs from others.
     *
     * @param taken ground that its outfall is not to stand on
     * @param closed ground that no pipe is to cross
     */
    Optional<Proposal> line(Geometry taken, Geometry closed) {
        Geometry allowed = StandingGround.area(
                        analysis, laying, asked, StandingGround.outfall(analysis, new Coordinate(0, 0), 0), surely)
                .difference(taken);
        if (allowed.isEmpty()) {
            return Optional.empty();
        }
        List<Geometry> blocked = new ArrayList<>(List.of(closed));
        Length size = stock.smallest();
        int wider = 0;
        for (int attempt = 0; attempt < ATTEMPTS; attempt++) {
            Optional<Grades> grades = grades(allowed, size, blocked, wider);
            if (grades.isEmpty()) {
                return Optional.empty();
            }
            Proposal proposal = proposal(grades.get(), Proposal.Course.FOUND);
            List<Finding> against = verdict.against(proposal.review());
            if (against.isEmpty()) {
                return Optional.of(proposal);
            }
            Length widest = grades.get().sizes().values().stream()
                    .max(Comparator.naturalOrder())
                    .orElse(size);
            List<Geometry> places = places(against, proposal.analysis().site());
            if (widest.compareTo(size) > 0) {
                size = widest;
            } else if (!places.isEmpty()) {
                blocked.addAll(places);
            } else {
                wider++;
            }
        }
        return Optional.empty();
    }

    /** A drain of which only the heights and sizes are looked for; nothing where it does not pass in any. */
    Optional<Proposal> along(Drain drain) {
        Sizing sizing = new Sizing(analysis, rules, stock, new Grading(analysis, rules, noted, stock, ground));
        for (int wider = 0; wider < stock.sizes().size(); wider++) {
            Optional<Proposal> proposal = sizing.of(drain, wider)
                    .map(grades -> proposal(grades, Proposal.Course.SUBMITTED))
                    .filter(laid -> verdict.against(laid.review()).isEmpty());
            if (proposal.isPresent()) {
                return proposal;
            }
        }
        return Optional.empty();
    }

    /** The plan as it was submitted; nothing where it does not pass, or what it takes cannot be told. */
    Optional<Proposal> asSubmitted() {
        Review review = Reviewer.review(analysis, book, today);
        if (!verdict.against(review).isEmpty() || !Quantities.canBeTold(analysis)) {
            return Optional.empty();
        }
        Quantities quantities = Quantities.of(analysis, stock, noted, laying);
        return Optional.of(new Proposal(
                analysis,
                review,
                quantities,
                Quantities.apron(analysis),
                quantities.cost(laying),
                Proposal.Course.AS_SUBMITTED));
    }

    private Optional<Grades> grades(Geometry allowed, Length size, List<Geometry> blocked, int wider) {
        Grading grading = new Grading(analysis, rules, noted, stock, ground);
        Field field = new Field(analysis, asked, rules, noted, ground, stock, laying, size, surely, blocked);
        Sizing sizing = new Sizing(analysis, rules, stock, grading);
        double room = laying.metres(Laying.Measure.GRID) / 2;
        return new Routing(analysis, field, laying, grading, stock)
                .to(allowed).stream()
                        .flatMap(drain -> Stream.of(drain, EasedBends.of(drain, field, room))
                                .distinct())
                        .flatMap(drain -> sizing.of(drain, wider).stream())
                        .min(Comparator.comparingDouble(this::cost));
    }

    private double cost(Grades grades) {
        ProposedSite proposed = new ProposedSite(analysis, stock, grades);
        SiteAnalysis drained = analysis.with(proposed.with(List.of(), Optional.empty()));
        return Quantities.of(drained, stock, noted, laying).cost(laying);
    }

    private Proposal proposal(Grades grades, Proposal.Course course) {
        List<Coordinate> cleanouts = Cleanouts.of(grades.drain(), noted, stock.pipe(stock.smallest()));
        ProposedSite proposed = new ProposedSite(analysis, stock, grades);
        SiteAnalysis drained = analysis.with(proposed.with(cleanouts, Optional.of(new Length(Unit.FOOT.toSi()))));
        Optional<Length> apron = apron(drained);
        SiteAnalysis ready = analysis.with(proposed.with(cleanouts, apron));
        Review review = Reviewer.review(ready, book, today);
        Quantities quantities = Quantities.of(ready, stock, noted, laying);
        return new Proposal(ready, review, quantities, apron.orElse(new Length(0)), quantities.cost(laying), course);
    }

    /** The stone that the rules on outlets ask for where a foot of it is shown; none where the bare ground holds. */
    private Optional<Length> apron(SiteAnalysis drained) {
        return book.rules().stream()
                .filter(rule -> new RuleKeys(rule).isOf("outlet_protection"))
                .flatMap(rule -> rule.check().needs(rule.terms()).isEmpty()
                                || drained.water().storm().value().isEmpty()
                        ? Stream.<Observation>of()
                        : rule.check().observe(drained, rule.terms()).stream())
                .flatMap(seen -> seen.measured().stream())
                .filter(measured -> measured.value().dimension() == Dimension.LENGTH)
                .flatMap(measured -> measured.limit().stream())
                .map(limit -> Math.ceil(limit.value().quantity().si() / Unit.FOOT.toSi() - 1e-9))
                .max(Double::compare)
                .map(feet -> Length.feet(feet));
    }

    /** Around where on the line something is wrong; nothing for what is wrong with the line as a whole. */
    private List<Geometry> places(List<Finding> against, Site site) {
        List<Geometry> pipes =
                site.features(Role.PIPE).stream().map(pipe -> pipe.geometry()).toList();
        Geometry drain = site.features(Role.PIPE).get(0).geometry().getFactory().buildGeometry(pipes);
        List<Geometry> places = new ArrayList<>();
        for (Finding finding : against) {
            finding.observation()
                    .where()
                    .filter(where -> !where.isEmpty() && where.getLength() < PLACE)
                    .map(where -> DistanceOp.nearestPoints(drain, where)[0])
                    .ifPresent(at ->
                            places.add(drain.getFactory().createPoint(at).buffer(laying.metres(Laying.Measure.GRID))));
        }
        return places;
    }
}
