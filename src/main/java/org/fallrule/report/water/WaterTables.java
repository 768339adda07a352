package org.fallrule.report.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.analysis.DrainWater;
import org.fallrule.analysis.InletRunoff;
import org.fallrule.analysis.PipeWater;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.hydraulics.gradeline.NodeLevel;
import org.fallrule.hydraulics.gradeline.PipeGrade;
import org.fallrule.hydrology.CompositeRunoff;
import org.fallrule.hydrology.GatheredFlow;
import org.fallrule.measure.Ratio;
import org.fallrule.measure.Unit;
import org.fallrule.method.Answer;
import org.fallrule.network.Junction;
import org.fallrule.network.PipeRun;
import org.fallrule.report.water.ResultTable.Cell;
import org.fallrule.report.water.ResultTable.Column;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;

/** The design storm in the drain as tables: what comes to each inlet, what flows in each pipe, how high it stands, how it leaves. */
public final class WaterTables {
    private final SiteAnalysis analysis;
    private final DrainWater water;

    private WaterTables(SiteAnalysis analysis) {
        this.analysis = analysis;
        this.water = analysis.water();
    }

    /** The tables; each may have no rows. */
    public static List<ResultTable> of(SiteAnalysis analysis) {
        WaterTables tables = new WaterTables(analysis);
        return List.of(tables.runoff(), tables.flows(), tables.levels(), tables.outflows(), HoseTests.of(analysis));
    }

    private ResultTable runoff() {
        List<List<Cell>> rows = new ArrayList<>();
        for (Feature inlet : analysis.site().features(Role.INLET)) {
            Answer<InletRunoff> runoff = water.runoff(inlet);
            Optional<InletRunoff> known = runoff.value();
            rows.add(List.of(
                    new Cell.Words(inlet.id()),
                    Cell.of(known.map(own -> own.runoff().area())),
                    Cell.of(known.map(own -> own.runoff().coefficient())),
                    Cell.of(known.map(InletRunoff::overland)),
                    Cell.of(water.inflow(inlet).value()),
                    known.filter(InletRunoff::isCut).isPresent()
                            ? new Cell.Words("more may come from beyond the ground given")
                            : Cell.why(runoff)));
        }
        return new ResultTable(
                "runoff",
                "What runs off to each inlet",
                List.of(
                        Column.words("inlet", "inlet"),
                        Column.of("area", "area", analysis.site().unit(Unit.SQUARE_FOOT)),
                        Column.of("runoff_coefficient", "C", analysis.site().unit(Unit.ONE)),
                        Column.of(
                                "overland_time", "over ground", analysis.site().unit(Unit.MINUTE)),
                        Column.of("flow", "flow", analysis.site().unit(Unit.CUBIC_FOOT_PER_SECOND)),
                        Column.words("remark", "remark")),
                rows);
    }

    private ResultTable flows() {
        return new ResultTable(
                "flows",
                "The design flow in each pipe",
                List.of(
                        Column.words("pipe", "pipe"),
                        Column.of("area", "area", analysis.site().unit(Unit.SQUARE_FOOT)),
                        Column.of("runoff_coefficient", "C", analysis.site().unit(Unit.ONE)),
                        Column.of("time", "time", analysis.site().unit(Unit.MINUTE)),
                        Column.of("intensity", "rain", analysis.site().unit(Unit.INCH_PER_HOUR)),
                        Column.of("flow", "flow", analysis.site().unit(Unit.CUBIC_FOOT_PER_SECOND)),
                        Column.of("capacity", "carries", analysis.site().unit(Unit.CUBIC_FOOT_PER_SECOND)),
                        Column.of("size", "size", analysis.site().unit(Unit.INCH)),
                        Column.of("slope", "slope", analysis.site().unit(Unit.PERCENT)),
                        Column.of("share_of_capacity", "share", analysis.site().unit(Unit.ONE)),
                        Column.of("depth", "depth", analysis.site().unit(Unit.INCH)),
                        Column.of("velocity", "velocity", analysis.site().unit(Unit.FOOT_PER_SECOND)),
                        Column.of(
                                "grade_line_up",
                                "grade line up",
                                analysis.site().unit(Unit.ELEVATION_FOOT)),
                        Column.of(
                                "grade_line_down",
                                "grade line down",
                                analysis.site().unit(Unit.ELEVATION_FOOT)),
                        Column.words("remark", "remark")),
                analysis.network().runs().stream().map(this::flow).toList());
    }

    private List<Cell> flow(PipeRun run) {
        PipeWater in = water.in(run);
        Optional<GatheredFlow> flow = in.flow().value();
        Optional<PipeGrade> grade = water.grade(run).value();
        Optional<Ratio> share = in.capacity()
                .value()
                .flatMap(most -> flow.map(found -> new Ratio(found.flow().si() / most.si())));
        return List.of(
                new Cell.Words(run.id()),
                Cell.of(flow.map(GatheredFlow::runoff).map(CompositeRunoff::area)),
                Cell.of(flow.map(GatheredFlow::runoff).map(CompositeRunoff::coefficient)),
                Cell.of(flow.map(GatheredFlow::duration)),
                Cell.of(flow.map(GatheredFlow::intensity)),
                Cell.of(flow.map(GatheredFlow::flow)),
                Cell.of(in.capacity().value()),
                Cell.of(run.diameter()),
                Cell.of(in.slope().value()),
                Cell.of(share),
                Cell.of(in.depth()),
                Cell.of(in.velocity().value()),
                Cell.of(grade.map(PipeGrade::up)),
                Cell.of(grade.map(PipeGrade::down)),
                Cell.why(in.flow(), in.capacity()));
    }

    private ResultTable levels() {
        List<List<Cell>> rows = Stream.of(Role.INLET, Role.CLEANOUT)
                .flatMap(role -> analysis.site().features(role).stream())
                .map(structure -> level(
                        structure,
                        analysis.network()
                                .junctionOf(structure)
                                .map(water::level)
                                .orElseGet(() -> Answer.none("no pipe leads there"))))
                .toList();
        return new ResultTable(
                "levels",
                "How high the design flow stands",
                List.of(
                        Column.words("structure", "structure"),
                        Column.of("rim", "rim", analysis.site().unit(Unit.ELEVATION_FOOT)),
                        Column.of("grade_line", "grade line", analysis.site().unit(Unit.ELEVATION_FOOT)),
                        Column.of("freeboard", "freeboard", analysis.site().unit(Unit.FOOT)),
                        Column.words("remark", "remark")),
                rows);
    }

    private static List<Cell> level(Feature structure, Answer<NodeLevel> level) {
        Optional<NodeLevel> known = level.value();
        return List.of(
                new Cell.Words(structure.id()),
                Cell.of(structure.get(Attribute.RIM)),
                Cell.of(known.flatMap(node -> node.level().value())),
                Cell.of(known.flatMap(node -> node.freeboard().value())),
                remark(level));
    }

    private ResultTable outflows() {
        List<List<Cell>> rows = new ArrayList<>();
        for (Feature outfall : analysis.site().features(Role.OUTFALL)) {
            Optional<Junction> junction = analysis.network().junctionOf(outfall);
            Optional<PipeRun> last = junction.flatMap(
                    end -> analysis.network().into(end).stream().findFirst());
            Answer<GatheredFlow> flow = junction.map(water::flowAt).orElseGet(() -> Answer.none("no pipe leads there"));
            rows.add(List.of(
                    new Cell.Words(outfall.id()),
                    Cell.of(flow.value().map(GatheredFlow::flow)),
                    Cell.of(last.flatMap(run -> water.grade(run).value()).map(PipeGrade::velocityDown)),
                    Cell.of(outfall.get(Attribute.TAILWATER)),
                    Cell.of(outfall.get(Attribute.APRON_LENGTH)),
                    Cell.why(flow)));
        }
        return new ResultTable(
                "outflows",
                "What leaves each outfall",
                List.of(
                        Column.words("outfall", "outfall"),
                        Column.of("flow", "flow", analysis.site().unit(Unit.CUBIC_FOOT_PER_SECOND)),
                        Column.of("velocity", "velocity", analysis.site().unit(Unit.FOOT_PER_SECOND)),
                        Column.of("tailwater", "tailwater", analysis.site().unit(Unit.ELEVATION_FOOT)),
                        Column.of("apron_length", "apron", analysis.site().unit(Unit.FOOT)),
                        Column.words("remark", "remark")),
                rows);
    }

    private static Cell remark(Answer<NodeLevel> level) {
        Optional<NodeLevel> known = level.value();
        if (known.filter(NodeLevel::overflows).isPresent()) {
            return new Cell.Words("water comes out of the rim");
        }
        if (known.filter(NodeLevel::surcharged).isPresent()) {
            return new Cell.Words("water stands above the pipe's mouth");
        }
        return Cell.why(level, level.then(NodeLevel::level));
    }
}
