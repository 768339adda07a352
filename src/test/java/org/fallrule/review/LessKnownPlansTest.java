package org.fallrule.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.finding.Finding;
import org.fallrule.finding.Outcome;
import org.fallrule.reader.SiteReader;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.rulebook.RuleLibrary;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Layer;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What is not known is never a pass, whatever the check: a layer that is not supplied, or an attribute that no feature of a layer
 * has any more, turns nothing that failed or could not be told into what meets, and leaves no rule that failed without anything to say.
 */
class LessKnownPlansTest {
    private static final LocalDate DAY = LocalDate.of(2026, 6, 1);

    private record Plan(Site site, RuleBook book) {
        static Plan of(String sample) {
            Site site = SiteReader.read(Path.of("sample-sites").resolve(sample));
            return new Plan(
                    site,
                    new RuleLibrary(Path.of("rules"), "rules")
                            .load(site.county().orElseThrow(), site.house(), DAY));
        }

        /** The outcomes by rule and, within it, by feature and other feature. */
        Map<String, Map<String, List<Outcome>>> outcomes(Site changed) {
            Map<String, Map<String, List<Outcome>>> outcomes = new TreeMap<>();
            for (Finding finding : Reviewer.review(SiteAnalysis.of(changed, book.locality()), book, DAY)
                    .findings()) {
                String about = finding.observation()
                                .subject()
                                .map(Feature::spoken)
                                .orElse("the plan")
                        + " "
                        + finding.observation().other().map(Feature::spoken).orElse("");
                outcomes.computeIfAbsent(finding.rule(), rule -> new TreeMap<>())
                        .computeIfAbsent(about, each -> new ArrayList<>())
                        .add(finding.outcome());
            }
            return outcomes;
        }
    }

    private static boolean isOpen(List<Outcome> outcomes) {
        return outcomes.contains(Outcome.FAILS)
                || outcomes.contains(Outcome.BORDERLINE)
                || outcomes.contains(Outcome.CANNOT_TELL);
    }

    private static List<String> passedForWantOf(String what, Plan plan, Site less) {
        Map<String, Map<String, List<Outcome>>> before = plan.outcomes(plan.site());
        Map<String, Map<String, List<Outcome>>> after = plan.outcomes(less);
        List<String> passed = new ArrayList<>();
        before.forEach((rule, all) -> {
            Map<String, List<Outcome>> now = after.getOrDefault(rule, Map.of());
            all.forEach((about, outcomes) -> {
                List<Outcome> then = now.getOrDefault(about, List.of());
                if (isOpen(outcomes) && then.contains(Outcome.MEETS) && !isOpen(then)) {
                    passed.add("without " + what + ": " + rule + " " + about + " " + outcomes + " became " + then);
                }
            });
            if (all.values().stream().anyMatch(LessKnownPlansTest::isOpen)
                    && now.values().stream().noneMatch(LessKnownPlansTest::isOpen)) {
                passed.add("without " + what + ": " + rule + " " + all + " became " + now);
            }
        });
        return passed;
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"harrow-14", "quillfeather-8", "thistledown-3", "maple-court-2", "plumb-line-1"})
    void aLayerThatIsNotSuppliedPassesNothing(String sample) {
        Plan plan = Plan.of(sample);
        List<String> passed = new ArrayList<>();
        for (Role role : plan.site().layers().keySet()) {
            Map<Role, Layer> layers = new EnumMap<>(plan.site().layers());
            layers.remove(role);
            passed.addAll(passedForWantOf(
                    "the layer " + role.word(), plan, plan.site().with(layers)));
        }

        assertThat(passed).isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"harrow-14", "quillfeather-8"})
    void anAttributeThatNoFeatureHasPassesNothing(String sample) {
        Plan plan = Plan.of(sample);
        List<String> passed = new ArrayList<>();
        plan.site().layers().forEach((role, layer) -> {
            for (Attribute<?> attribute : Attribute.of(role)) {
                if (attribute != Attribute.ID
                        && layer.features().stream()
                                .anyMatch(each -> each.attributes().has(attribute))) {
                    passed.addAll(passedForWantOf(
                            role.word() + " " + attribute.name(),
                            plan,
                            plan.site().without(role, attribute)));
                }
            }
        });

        assertThat(passed).isEmpty();
    }
}
