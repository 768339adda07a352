package org.fallrule.analysis;

import java.util.Optional;
import org.fallrule.hydraulics.pipe.NormalDepth;
import org.fallrule.hydraulics.pipe.NormalFlow;
import org.fallrule.hydraulics.pipe.Roughness;
import org.fallrule.hydraulics.pipe.RoundPipe;
import org.fallrule.hydraulics.table.SourcedTable;
import org.fallrule.hydrology.GatheredFlow;
import org.fallrule.measure.Flow;
import org.fallrule.measure.Length;
import org.fallrule.measure.Ratio;
import org.fallrule.measure.Slope;
import org.fallrule.measure.Velocity;
import org.fallrule.method.Answer;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Attribute;

/**
 * The water in one pipe under the design storm. The bore is taken as the nominal diameter, as codes do.
 *
 * @param run the pipe
 * @param pipe its bore and roughness
 * @param roughnessBy who says how rough it is
 * @param slope its slope; below zero when it rises
 * @param flow what comes down it
 */
public record PipeWater(
        PipeRun run, Answer<RoundPipe> pipe, String roughnessBy, Answer<Slope> slope, Answer<GatheredFlow> flow) {
    private static final SourcedTable ROUGHNESS = SourcedTable.roughness();
    private static final String FOR_DESIGN = "design";

    static PipeWater of(PipeRun run, Answer<GatheredFlow> flow) {
        Optional<Ratio> own = run.pipe().get(Attribute.ROUGHNESS);
        Answer<SourcedTable.Entry> byMaterial = run.pipe()
                .get(Attribute.MATERIAL)
                .map(material -> ROUGHNESS.find(material, FOR_DESIGN))
                .orElseGet(() -> Answer.none(
                        "neither material nor roughness of " + run.pipe().spoken() + " is given"));
        Answer<Double> n = own.map(given -> roughness(run, given))
                .orElseGet(() -> byMaterial.map(entry -> entry.value().si()));
        String by = own.map(given -> "given by the plan")
                .or(() -> byMaterial.value().map(entry -> entry.document() + " (" + entry.known() + ")"))
                .orElse("");
        return new PipeWater(run, n.then(found -> bore(run, found)), by, slopeOf(run), flow);
    }

    private static Answer<Double> roughness(PipeRun run, Ratio given) {
        return given.value() > 0 && given.value() < 1
                ? Answer.of(given.value())
                : Answer.none("the roughness of " + run.pipe().spoken() + " lies between 0 and 1, such as 0.012");
    }

    private static Answer<RoundPipe> bore(PipeRun run, double n) {
        return run.diameter()
                .map(bore -> Answer.of(new RoundPipe(bore, new Roughness(n))))
                .orElseGet(() -> Answer.none("the diameter of " + run.pipe().spoken() + " is not given"));
    }

    private static Answer<Slope> slopeOf(PipeRun run) {
        return run.slope()
                .map(Answer::of)
                .orElseGet(() -> Answer.none("the inverts of " + run.pipe().spoken() + " are not given"));
    }

    /** What it carries when it just runs full. */
    public Answer<Flow> capacity() {
        return pipe.then(round -> slope.then(round::capacity));
    }

    /** The velocity when it just runs full; nought when it does not fall. */
    public Answer<Velocity> fullVelocity() {
        return pipe.then(
                round -> slope.then(fall -> fall.ratio() > 0 ? round.fullVelocity(fall) : Answer.of(new Velocity(0))));
    }

    /** How the design flow runs in it. */
    public Answer<NormalFlow> running() {
        return flow.then(gathered ->
                pipe.then(round -> slope.map(fall -> NormalDepth.of(round, fall, gathered.flow()))));
    }

    /** The velocity of the design flow: at its normal depth, or filling the pipe where that is too small for it. */
    public Answer<Velocity> velocity() {
        return running().then(state -> {
            if (state instanceof NormalFlow.Open open) {
                return Answer.of(open.velocity());
            }
            return state instanceof NormalFlow.Dry ? Answer.of(new Velocity(0)) : filled();
        });
    }

    private Answer<Velocity> filled() {
        return flow.then(gathered -> pipe.map(round -> {
            double bore = round.bore().metres();
            return new Velocity(gathered.flow().cubicMetresPerSecond() / (Math.PI / 4 * bore * bore));
        }));
    }

    /** The depth of the design flow; empty where it fills the pipe or nothing flows. */
    public Optional<Length> depth() {
        return running()
                .value()
                .filter(NormalFlow.Open.class::isInstance)
                .map(state -> ((NormalFlow.Open) state).depth());
    }
}
