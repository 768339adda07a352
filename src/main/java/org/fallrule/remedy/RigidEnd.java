package org.fallrule.remedy;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Attribute;

/** Rigid pipe for the last stretch before the outfall, where the ground comes down to the pipe. */
final class RigidEnd implements Remedy {
    private static final int MOST = 600;

    @Override
    public Set<String> checks() {
        return Set.of("cover");
    }

    @Override
    public List<Series> series(Situation at) {
        return at.run()
                .filter(run -> run.down().isOutfall() && run.fall().isPresent())
                .map(run -> OtherPipe.RIGID.stream()
                        .filter(material -> !run.pipe()
                                .get(Attribute.MATERIAL)
                                .filter(OtherPipe.RIGID::contains)
                                .isPresent())
                        .map(material -> Series.within(
                                MOST,
                                run.length().metres() - EarlierEnd.SHORTEST,
                                at.shown().stationStep(),
                                steps -> laid(at, run, steps * at.shown().stationStep(), material)))
                        .toList())
                .orElse(List.of());
    }

    private static Optional<Change> laid(Situation at, PipeRun run, double last, String material) {
        double station = run.length().metres() - last;
        Parting parting = new Parting(at, run, station);
        Edits edits = parting.made(parting.invert(), kept -> OtherPipe.of(kept, material));
        return Optional.of(new Change(
                edits.site(),
                "rigid pipe, " + OtherPipe.spoken(material) + ", for the last "
                        + at.shown().plan(last) + " of " + run.pipe().spoken()));
    }
}
