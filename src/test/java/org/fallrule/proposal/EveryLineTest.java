package org.fallrule.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.PlanInFeet;
import org.fallrule.locality.Laying;
import org.fallrule.review.Reviewer;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** On small lots every line that turns by no more than 45 degrees at a time is laid and reviewed; the search finds none cheaper. */
class EveryLineTest {
    private static final double GRID = 8;
    private static final int LONGEST = 8;

    static Stream<Arguments> lots() {
        return Stream.of(
                Arguments.of("open", SmallLots.falling(14), true),
                Arguments.of("shed in the way", SmallLots.withShed(SmallLots.falling(14)), true),
                Arguments.of("gas to cross", SmallLots.withGas(SmallLots.falling(14)), true),
                Arguments.of("too flat to come to daylight", SmallLots.falling(2), false),
                Arguments.of(
                        "walk where an outfall would stand",
                        SmallLots.falling(14)
                                .with(Role.WALK, "W2", "POLYGON ((0 5, 48 5, 48 33, 0 33, 0 5))", "access = public"),
                        false));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("lots")
    void noLineIsCheaperThanTheOneProposedAndNoneIsMissed(String lot, PlanInFeet plan, boolean exists) {
        RuleBook book = SmallLots.book(GRID);
        SiteAnalysis analysis = SmallLots.analysis(plan, book);

        Proposals found = Proposer.of(analysis, book, SmallLots.TODAY, Set.of());
        Optional<Double> best = cheapest(analysis, book);

        assertThat(best.isPresent()).as("a line exists on " + lot).isEqualTo(exists);
        assertThat(!found.proposals().isEmpty()).isEqualTo(exists);
        if (exists) {
            double cost = found.proposals().get(0).cost();
            assertThat(cost).isLessThanOrEqualTo(best.orElseThrow() * 1.05);
            assertThat(cost).isGreaterThanOrEqualTo(best.orElseThrow() * 0.9999);
        }
    }

    /** The cost of the cheapest line that passes a review, of all that there are. */
    private static Optional<Double> cheapest(SiteAnalysis analysis, RuleBook book) {
        Laying laying = book.locality().laying();
        Stock stock = new Stock(laying);
        LineRules rules = new LineRules(analysis, book.rules(), false);
        Sizing sizing =
                new Sizing(analysis, rules, stock, new Grading(analysis, rules, rules, stock, new Ground(analysis)));
        Feature inlet = analysis.site().features(Role.INLET).get(0);
        List<Laid> laid = new ArrayList<>();
        for (List<Coordinate> way : ways(analysis, laying, inlet)) {
            Drain drain = Drain.of(inlet, LineSearch.straightened(way));
            sizing.of(drain, 0).ifPresent(grades -> laid.add(laid(analysis, laying, stock, rules, grades)));
        }
        return laid.stream()
                .sorted(Comparator.comparingDouble(Laid::cost))
                .filter(each ->
                        !Reviewer.review(each.analysis(), book, SmallLots.TODAY).failsPlan())
                .map(Laid::cost)
                .findFirst();
    }

    private record Laid(SiteAnalysis analysis, double cost) {}

    private static Laid laid(SiteAnalysis analysis, Laying laying, Stock stock, LineRules rules, Grades grades) {
        List<Coordinate> cleanouts = Cleanouts.of(grades.drain(), rules, stock.pipe(stock.smallest()));
        SiteAnalysis with = analysis.with(new ProposedSite(analysis, stock, grades).with(cleanouts, Optional.empty()));
        return new Laid(with, Quantities.of(with, stock, rules, laying).cost(laying));
    }

    private static List<List<Coordinate>> ways(SiteAnalysis analysis, Laying laying, Feature inlet) {
        Geometry lot = analysis.site().ownLot().orElseThrow().geometry();
        Lattice lattice = new Lattice(
                inlet.geometry().getCoordinate(),
                Lattice.turned(analysis.site(), lot),
                laying.metres(Laying.Measure.GRID),
                lot);
        List<List<Coordinate>> ways = new ArrayList<>();
        extend(lattice, buildings(analysis), List.of(lattice.start()), 8, ways);
        return ways;
    }

    /** No line is proposed under a building, though no rule of these says so. */
    private static Geometry buildings(SiteAnalysis analysis) {
        return new GeometryFactory()
                .buildGeometry(analysis.site().features(Role.BUILDING).stream()
                        .map(Feature::geometry)
                        .toList());
    }

    private static void extend(
            Lattice lattice, Geometry house, List<Integer> way, int from, List<List<Coordinate>> ways) {
        if (way.size() > 1) {
            List<Coordinate> places = way.stream().map(lattice::place).toList();
            if (Axis.line(places).intersects(house)) {
                return;
            }
            ways.add(places);
        }
        if (way.size() == LONGEST) {
            return;
        }
        for (int direction = 0; direction < 8; direction++) {
            int next = lattice.next(way.get(way.size() - 1), direction);
            if (next >= 0 && !way.contains(next) && LineSearch.mayTurn(from, direction)) {
                List<Integer> longer = new ArrayList<>(way);
                longer.add(next);
                extend(lattice, house, longer, direction, ways);
            }
        }
    }
}
