package org.fallrule.check.pipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.finding.Observation;
import org.fallrule.network.PipeProfile;
import org.fallrule.network.PipeRun;

/** Asks every pipe of the drain that has a long section; of each other pipe it tells what that lacks. */
final class EachProfile {
    private EachProfile() {}

    static List<Observation> observe(SiteAnalysis analysis, BiFunction<PipeRun, PipeProfile, List<Observation>> asked) {
        List<Observation> observations = new ArrayList<>();
        for (PipeRun run : analysis.runsAsked()) {
            Optional<PipeProfile> profile =
                    PipeProfile.of(run).filter(any -> run.slope().isPresent());
            observations.addAll(
                    profile.map(known -> asked.apply(run, known)).orElseGet(() -> List.of(ProfileMissing.of(run))));
        }
        return observations;
    }
}
