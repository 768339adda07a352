package org.fallrule.remedy;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fallrule.hydraulics.outlet.ApronByDischarge;
import org.fallrule.measure.Length;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;

/** A stone apron below the outfall, or a longer one. */
final class StoneApron implements Remedy {
    private static final int MOST = 600;

    @Override
    public Set<String> checks() {
        return Set.of("outlet_protection");
    }

    @Override
    public List<Series> series(Situation at) {
        return at.subject(Role.OUTFALL)
                .map(outfall -> List.of(new Series(MOST, steps -> laid(at, outfall, steps))
                        .first(at.stepsShort(at.shown().stationStep()))))
                .orElse(List.of());
    }

    private static Optional<Change> laid(Situation at, Feature outfall, int steps) {
        double step = at.shown().stationStep();
        double now = outfall.get(Attribute.APRON_LENGTH).map(Length::metres).orElse(0.0);
        double length = (Math.floor(now / step + 1e-9) + steps) * step;
        return Optional.of(new Change(
                at.edits()
                        .set(outfall, Attribute.APRON_LENGTH, new Length(length))
                        .site(),
                "stone apron " + wide(at) + at.shown().plan(length) + " long below " + outfall.spoken()));
    }

    /** Its width at the pipe, three inside diameters, which every method for aprons here prints; no rule asks for it. */
    private static String wide(Situation at) {
        return at.last()
                .flatMap(PipeRun::diameter)
                .map(ApronByDischarge::widthAtPipe)
                .map(width -> at.shown().plan(width.metres()) + " wide at the pipe and ")
                .orElse("");
    }
}
