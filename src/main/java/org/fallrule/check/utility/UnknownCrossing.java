package org.fallrule.check.utility;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fallrule.analysis.ExpectedLevel;
import org.fallrule.analysis.UtilityCrossing;
import org.fallrule.check.Limits;
import org.fallrule.check.Parameter;
import org.fallrule.check.Terms;
import org.fallrule.finding.Missing;
import org.fallrule.finding.Observation;
import org.fallrule.finding.Outcome;
import org.fallrule.measure.Length;
import org.fallrule.measure.Unit;
import org.fallrule.network.PipeProfile;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;

/** A crossing of which a height is not known: what is missing, what would settle it, and what may be expected. */
final class UnknownCrossing {
    /** Stands for a height that nothing reaches, where a rule lets the drain lie on one side alone. */
    private static final Length NEVER = new Length(1e6);

    private static final Length NOTHING = new Length(0);

    private final PipeAndUtility pair;
    private final UtilityCrossing crossing;
    private final Terms terms;

    UnknownCrossing(PipeAndUtility pair, UtilityCrossing crossing, Terms terms) {
        this.pair = pair;
        this.crossing = crossing;
        this.terms = terms;
    }

    /** Nothing where no limit is asked either way. */
    Optional<Observation> observe() {
        List<Limits.Answer> answers = Stream.of(
                        Separation.OVER, Separation.UNDER, Separation.ACROSS, Separation.UTILITY_OVER)
                .flatMap(each -> answer(each).stream())
                .toList();
        if (answers.stream().allMatch(answer -> answer instanceof Limits.Answer.NotAsked)) {
            return Optional.empty();
        }
        Observation seen = Observation.plain(Outcome.CANNOT_TELL, pair.run().pipe());
        for (Missing missing : missing()) {
            seen = seen.lacking(missing);
        }
        return Optional.of(expecting(asStated(seen)));
    }

    private Optional<Limits.Answer> answer(Parameter<Limits> parameter) {
        return terms.find(parameter).map(limits -> limits.of(pair.attributes()));
    }

    private List<Missing> missing() {
        List<Missing> missing = new ArrayList<>();
        if (PipeProfile.of(pair.run()).isEmpty()) {
            String names = namesOfMissing();
            missing.add(new Missing(names + " of " + pair.run().pipe().spoken(), "give " + names));
        }
        Feature utility = pair.utility();
        String where = "at station " + pair.analysis().station(crossing.station()) + " of "
                + pair.run().pipe().spoken();
        if (!crossing.isTopRelied()) {
            missing.add(new Missing(
                    "depth of " + utility.spoken() + " at quality A",
                    "dig a test hole " + where + " (ASCE 38-22 quality level A)"));
        } else if (crossing.top().isEmpty() && utility.get(Attribute.DEPTH).isPresent()) {
            missing.add(new Missing("ground above " + utility.spoken(), "take spot elevations around the crossing"));
        } else if (crossing.top().isEmpty()) {
            missing.add(new Missing("depth of " + utility.spoken(), "dig a test hole " + where));
        }
        return missing;
    }

    /** {@code invert_up, invert_down and diameter}. */
    private String namesOfMissing() {
        List<String> names = new ArrayList<>();
        pair.run().invertUp().ifPresentOrElse(known -> {}, () -> names.add(Attribute.INVERT_UP.name()));
        pair.run().invertDown().ifPresentOrElse(known -> {}, () -> names.add(Attribute.INVERT_DOWN.name()));
        pair.run().size().ifPresentOrElse(known -> {}, () -> names.add(Attribute.DIAMETER.name()));
        String last = names.remove(names.size() - 1);
        return names.isEmpty() ? last : String.join(", ", names) + " and " + last;
    }

    /** What the plan says, though it is not to be relied on. */
    private Observation asStated(Observation seen) {
        return crossing.isTopRelied()
                ? seen
                : crossing.gap(pair.sizeIfUnknown())
                        .map(gap -> seen.noting("by the depth on the plan, which is not to be relied on, "
                                + pair.analysis().site().printed(gap.clear(), Unit.INCH) + " between them"))
                        .orElse(seen);
    }

    private Observation expecting(Observation seen) {
        Optional<ExpectedLevel> expected = crossing.expected();
        if (expected.isEmpty() || (crossing.isTopRelied() && crossing.top().isPresent())) {
            return seen;
        }
        String band = pair.utility().spoken() + " is expected, not known, "
                + pair.analysis().site().printed(expected.get().cover().from(), Unit.INCH) + " to "
                + pair.analysis().site().printed(expected.get().cover().to(), Unit.INCH) + " deep ("
                + expected.get().basis() + "; "
                + expected.get().statedAt().fileAndLine() + "): ";
        return seen.noting(band
                + crossing.likelihood(pair.sizeIfUnknown(), asked(Separation.OVER), asked(Separation.UNDER))
                        .spoken());
    }

    private Length asked(Parameter<Limits> side) {
        if (side.equals(Separation.OVER) && answer(Separation.UTILITY_OVER).isPresent()) {
            return NEVER;
        }
        Optional<Limits.Answer> own = answer(side).or(() -> answer(Separation.ACROSS));
        return own.or(() -> answer(Separation.UTILITY_OVER))
                .filter(answer -> answer instanceof Limits.Answer.Asked)
                .map(answer -> new Length(((Limits.Answer.Asked) answer)
                        .limit()
                        .value()
                        .quantity()
                        .si()))
                .orElse(NOTHING);
    }
}
