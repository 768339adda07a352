package org.fallrule.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.Terms;
import org.fallrule.finding.Finding;
import org.fallrule.measure.Bound;
import org.fallrule.measure.Dimension;
import org.fallrule.measure.Limit;
import org.fallrule.network.Junction;
import org.fallrule.network.PipeNetwork;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;

/**
 * A finding that is not met, in its plan.
 *
 * @param analysis the plan
 * @param finding the finding
 * @param terms what its rule tells its check
 */
record Situation(SiteAnalysis analysis, Finding finding, Terms terms) {

    Shown shown() {
        return new Shown(analysis.site().metric());
    }

    /** Of a step: less than that is no step more. */
    private static final double ROUNDING = 1e-3;

    PipeNetwork network() {
        return analysis.network();
    }

    Edits edits() {
        return new Edits(analysis.site(), network());
    }

    boolean isOf(String... checks) {
        return List.of(checks).contains(finding.check());
    }

    /** What was measured, in the check's words. */
    String measured() {
        return finding.observation().measured().map(measured -> measured.of()).orElse("");
    }

    /** Whether more of it is asked; so it is also where nothing was measured. */
    boolean asksMore() {
        return finding.observation()
                .measured()
                .flatMap(measured -> measured.limit())
                .map(Limit::bound)
                .map(Bound.AT_LEAST::equals)
                .orElse(true);
    }

    /**
     * How many steps of a length it takes at least to make up what is missed; of a slope, at one end of its pipe. One where what
     * was measured is neither or is not known, for then nothing says.
     */
    int stepsShort(double step) {
        return finding.observation()
                .measured()
                .flatMap(measured -> measured.limit()
                        .map(limit -> (limit.shortfall(measured.value()) + measured.accuracy())
                                * metres(measured.value().dimension())))
                .map(missed -> (int) Math.ceil(missed / step - ROUNDING))
                .filter(steps -> steps > 1)
                .orElse(1);
    }

    private double metres(Dimension dimension) {
        return switch (dimension) {
            case LENGTH -> 1;
            case SLOPE -> run().map(run -> run.length().metres()).orElse(0.0);
            default -> 0;
        };
    }

    /** The feature that it is about, where the plan proposes it: what is there already is not changed. */
    Optional<Feature> subject(Role role) {
        return finding.observation()
                .subject()
                .filter(subject -> subject.role() == role)
                .filter(Feature::isDesigned);
    }

    /** The pipe that it is about; of an inlet the pipe that leaves it, of an outfall the one pipe that ends there. */
    Optional<PipeRun> run() {
        Optional<PipeRun> pipe = subject(Role.PIPE).flatMap(network()::runOf);
        Optional<PipeRun> leaving =
                subject(Role.INLET).flatMap(network()::junctionOf).flatMap(network()::leaving);
        return pipe.or(() -> leaving)
                .or(() -> subject(Role.CLEANOUT).flatMap(network()::junctionOf).flatMap(network()::leaving))
                .or(this::last)
                .filter(run -> run.pipe().isDesigned());
    }

    /** The pipe that ends at the outfall that it is about, where it is the only one. */
    Optional<PipeRun> last() {
        return subject(Role.OUTFALL)
                .flatMap(network()::junctionOf)
                .map(network()::into)
                .filter(into -> into.size() == 1)
                .map(into -> into.get(0))
                .filter(run -> run.pipe().isDesigned());
    }

    /** As {@link #last}; of a pipe that is joined to what it must not be that pipe, where no other goes on from it. */
    Optional<PipeRun> lastOrJoined() {
        return last().or(() -> subject(Role.PIPE)
                .filter(pipe -> isOf("not_joined"))
                .flatMap(network()::runOf)
                .filter(run -> network().leaving(run.down()).isEmpty()));
    }

    /** A pipe and those that its water runs on through. */
    List<PipeRun> down(PipeRun run) {
        Junction end = run.down();
        List<PipeRun> path = new ArrayList<>(List.of(run));
        if (!end.isOutfall()) {
            path.addAll(network().downstreamOf(end));
        }
        return path.stream().distinct().toList();
    }

    /** The first number from one on that makes an id which no structure of a role has: {@code 3} for {@code CO-3}. */
    int free(Role role, String before, int from) {
        List<String> taken =
                analysis.site().features(role).stream().map(Feature::id).toList();
        int number = from;
        while (taken.contains(before + number)) {
            number++;
        }
        return number;
    }
}
