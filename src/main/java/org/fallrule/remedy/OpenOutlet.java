package org.fallrule.remedy;

import java.util.Optional;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.measure.Dimension;
import org.fallrule.network.PipeRun;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;

/** Whether a pipe that ends elsewhere than in the submitted plan ends in the open. */
final class OpenOutlet {
    /** Metres, 6 in; an outfall that lies deeper below the ground is none, unless it pops up. Common practice. */
    private static final double DEEP = 0.1524;

    private OpenOutlet() {}

    /** The first last pipe of a changed plan whose end was moved and that ends at nothing, or deep in the ground. */
    static Optional<Drawback> missing(SiteAnalysis submitted, SiteAnalysis changed) {
        return changed.network().runs().stream()
                .filter(run -> changed.network().leaving(run.down()).isEmpty())
                .filter(run -> isMoved(submitted, run))
                .filter(run -> run.down()
                        .structure(Role.OUTFALL)
                        .filter(outfall -> isOpen(changed, outfall))
                        .isEmpty())
                .<Drawback>map(run -> new Drawback.NoOutlet(run.pipe().spoken()))
                .findFirst();
    }

    private static boolean isMoved(SiteAnalysis submitted, PipeRun run) {
        return submitted.network().runs().stream()
                .filter(each -> each.id().equals(run.id()))
                .noneMatch(each -> each.down().place().distance(run.down().place()) <= Dimension.LENGTH.tolerance());
    }

    private static boolean isOpen(SiteAnalysis changed, Feature outfall) {
        boolean popsUp = outfall.get(Attribute.KIND).orElse("").equals("pop_up");
        return popsUp || Daylight.below(changed, outfall).orElse(0.0) <= DEEP;
    }
}
