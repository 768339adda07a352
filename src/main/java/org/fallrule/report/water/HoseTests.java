package org.fallrule.report.water;

import java.util.ArrayList;
import java.util.List;
import org.fallrule.analysis.BasinSump;
import org.fallrule.analysis.PipeWater;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.hydraulics.basin.DrainDown;
import org.fallrule.hydraulics.basin.HoseTest;
import org.fallrule.measure.Flow;
import org.fallrule.measure.Time;
import org.fallrule.measure.Unit;
import org.fallrule.method.Answer;
import org.fallrule.network.PipeRun;
import org.fallrule.report.water.ResultTable.Cell;
import org.fallrule.report.water.ResultTable.Column;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;

/**
 * A test in the field that needs nothing but a garden hose: when its water should come at the outfall, and when the basin should be
 * empty after. What a hose gives is common practice, without a source: about 5 to 10 gallons a minute.
 */
final class HoseTests {
    private static final List<Integer> GALLONS_PER_MINUTE = List.of(5, 10);
    private static final String RATES = "colorado";

    private final SiteAnalysis analysis;

    private HoseTests(SiteAnalysis analysis) {
        this.analysis = analysis;
    }

    static ResultTable of(SiteAnalysis analysis) {
        HoseTests tests = new HoseTests(analysis);
        List<List<Cell>> rows = new ArrayList<>();
        for (Feature inlet : analysis.site().features(Role.INLET)) {
            if (!inlet.get(Attribute.KIND).orElse("downspout").equals("downspout")) {
                GALLONS_PER_MINUTE.forEach(gallons -> rows.add(tests.row(inlet, gallons)));
            }
        }
        return new ResultTable(
                "hose_test",
                "Field test with a garden hose",
                List.of(
                        Column.words("basin", "basin"),
                        Column.of("hose", "hose", analysis.site().unit(Unit.GALLON_PER_MINUTE)),
                        Column.of("runs_after", "runs after", analysis.site().unit(Unit.MINUTE)),
                        Column.of("empty_after", "empty", analysis.site().unit(Unit.HOUR)),
                        Column.words("remark", "remark")),
                rows);
    }

    private List<Cell> row(Feature inlet, int gallons) {
        Flow hose = new Flow(gallons * Unit.GALLON_PER_MINUTE.toSi());
        Answer<HoseTest.Sump> sump = BasinSump.of(analysis, inlet, RATES);
        Answer<HoseTest> test = sump.then(known -> way(inlet).then(pipes -> HoseTest.of(hose, known, pipes)));
        Answer<Time> empties = sump.then(known -> known.drainDown() instanceof DrainDown.Empties drained
                ? Answer.of(drained.time())
                : Answer.none(((DrainDown.HoldsWater) known.drainDown()).why()));
        return List.of(
                new Cell.Words(inlet.id()),
                new Cell.Value(hose),
                Cell.of(test.map(HoseTest::untilItRuns).value()),
                Cell.of(empties.value()),
                Cell.why(test, empties));
    }

    private Answer<List<HoseTest.Stretch>> way(Feature inlet) {
        List<PipeRun> runs = analysis.network()
                .junctionOf(inlet)
                .map(analysis.network()::downstreamOf)
                .orElse(List.of());
        if (runs.isEmpty()) {
            return Answer.none("no pipe leads from it");
        }
        List<HoseTest.Stretch> way = new ArrayList<>();
        for (PipeRun run : runs) {
            PipeWater water = analysis.water().in(run);
            Answer<HoseTest.Stretch> stretch = water.pipe()
                    .then(pipe -> water.slope().map(slope -> new HoseTest.Stretch(pipe, slope, run.length())));
            if (stretch.value().isEmpty()) {
                return Answer.none(stretch.why());
            }
            way.add(stretch.value().get());
        }
        return Answer.of(way);
    }
}
