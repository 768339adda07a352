package org.fallrule.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.finding.Finding;

/** Finds the least change that passes a finding. */
final class LeastChange {
    /** Kinds of change, those first that disturb a plan least. */
    static final List<Remedy> KINDS = List.of(
            new StoneApron(),
            new OtherBasin(),
            new MoreCleanouts(),
            new LowerInlet(),
            new StraightPipe(),
            new EarlierEnd(),
            new OtherInverts(),
            new EvenGrade(),
            new BrokenGrade(),
            new RigidEnd(),
            new OtherPipe(),
            new LargerPipe(),
            new OutfallAside(),
            new PipeAside(),
            new JunctionAside(),
            new OutfallElsewhere(),
            new CurbOutlet(),
            new RaisedGround());

    private final Trial trial;

    LeastChange(Trial trial) {
        this.trial = trial;
    }

    /** A change that passes the finding's own rule. */
    record Candidate(Series series, Series.Least least) {}

    /** The changes of one kind that pass the finding's own rule, the least first, and no more of them than so many. */
    List<Candidate> candidates(Remedy kind, Finding finding, int most) {
        return candidates(kind, finding, most, change -> trial.turns(finding, change));
    }

    private List<Candidate> candidates(Remedy kind, Finding finding, int most, Predicate<Change> does) {
        List<Candidate> least = new ArrayList<>();
        if (!kind.checks().contains(finding.check())) {
            return least;
        }
        for (Series series : kind.series(trial.situation(finding))) {
            int below = least.size() < most
                    ? Integer.MAX_VALUE
                    : least.get(most - 1).least().steps();
            series.least(does, below).ifPresent(found -> least.add(new Candidate(series, found)));
            least.sort(Comparator.comparingInt(candidate -> candidate.least().steps()));
        }
        return least.subList(0, Math.min(most, least.size()));
    }

    /**
     * The search for a finding's change as far as it goes without the plan's other findings.
     *
     * @param kind the number of the first kind of change that passes the finding's own rule; beyond all where none does
     * @param candidates such changes
     */
    record Begun(Finding finding, int kind, List<Candidate> candidates) {}

    Begun begun(Finding finding) {
        for (int kind = 0; kind < KINDS.size(); kind++) {
            List<Candidate> candidates = candidates(kind, finding);
            if (!candidates.isEmpty()) {
                return new Begun(finding, kind, candidates);
            }
        }
        return new Begun(finding, KINDS.size(), List.of());
    }

    private List<Candidate> candidates(int kind, Finding finding) {
        return candidates(KINDS.get(kind), finding, KINDS.get(kind).mostProofs());
    }

    /** The change that is offered, or why none is: what a change makes worse is held against all findings of the plan. */
    Remedied proved(Begun begun) {
        Finding finding = begun.finding();
        List<TradeOff> tradeOffs = new ArrayList<>();
        for (int kind = begun.kind(); kind < KINDS.size(); kind++) {
            for (Candidate candidate : kind == begun.kind() ? begun.candidates() : candidates(kind, finding)) {
                Change change = candidate.least().change();
                SiteAnalysis changed = trial.submitted().with(change.site());
                Optional<Drawback> drawback = outlet(finding, changed).or(() -> trial.drawback(changed));
                if (drawback.isEmpty()) {
                    return Remedied.proved(finding, change);
                }
                tradeOffs.add(new TradeOff(change, drawback.get()));
            }
        }
        if (tradeOffs.isEmpty() && finding.check().equals("cover")) {
            tradeOffs.addAll(buried(finding));
        }
        return tradeOffs.stream()
                .min(Comparator.comparingInt(TradeOff::badness))
                .map(least -> Remedied.unproved(finding, Remedied.Kind.TRADE_OFF, least.says(trial.submitted())))
                .orElseGet(() -> Remedied.unproved(finding, Remedied.Kind.NONE, NoRemedy.says(finding)));
    }

    /** What is led away from a sewer that it must not drain into has to come out somewhere else. */
    private Optional<Drawback> outlet(Finding finding, SiteAnalysis changed) {
        return finding.check().equals("not_joined") ? OpenOutlet.missing(trial.submitted(), changed) : Optional.empty();
    }

    /** Where a pipe comes out of the ground its cover is often to be had only by an outfall in the ground: that is then told. */
    private List<TradeOff> buried(Finding finding) {
        return candidates(new OtherInverts(), finding, 1, change -> trial.turnsEvenBuried(finding, change)).stream()
                .map(candidate -> candidate.least().change())
                .flatMap(change -> trial
                        .drawback(trial.submitted().with(change.site()))
                        .map(drawback -> new TradeOff(change, drawback))
                        .stream())
                .toList();
    }
}
