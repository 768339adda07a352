package org.fallrule.remedy;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.fallrule.analysis.SiteAnalysis;
import org.fallrule.check.Check;
import org.fallrule.finding.Finding;
import org.fallrule.measure.Area;
import org.fallrule.measure.Elevation;
import org.fallrule.measure.Length;
import org.fallrule.measure.Mass;
import org.fallrule.network.PipeRun;
import org.fallrule.reader.SiteReader;
import org.fallrule.review.Reviewer;
import org.fallrule.rulebook.RuleBook;
import org.fallrule.rulebook.RuleLibrary;
import org.fallrule.site.Attribute;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.fallrule.site.Site;
import org.fallrule.terrain.GroundSurface;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;

/** Rules that are not looked at again, as a change does not touch what they look at, find the same: held against the whole book. */
class TouchedTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 1);

    /** Another value for each detail. */
    private static final Map<Attribute<?>, Object> OTHER_DETAILS = Map.of(
            Attribute.APRON_LENGTH, new Length(0.77),
            Attribute.SUMP, new Length(0.33),
            Attribute.WEEP_HOLE_AREA, new Area(0.0007),
            Attribute.WEIGHT, new Mass(500),
            Attribute.GRATE_OPEN_AREA, new Area(0.001),
            Attribute.GRATE_OPENING, new Length(0.2),
            Attribute.PERFORATED, true,
            Attribute.JOINT, "bell",
            Attribute.JOINT_TIGHTNESS, "open",
            Attribute.WALL, "single");

    @ParameterizedTest
    @ValueSource(strings = {"harrow-14", "maple-court-2", "plumb-line-1", "quillfeather-8", "thistledown-3"})
    void rulesThatHeightsDoNotMatterToFindTheSame(String sample) {
        rulesUntouchedFindTheSame(sample, TouchedTest::lowered);
    }

    @ParameterizedTest
    @ValueSource(strings = {"harrow-14", "maple-court-2", "plumb-line-1", "quillfeather-8", "thistledown-3"})
    void rulesThatADetailDoesNotMatterToFindTheSame(String sample) {
        OTHER_DETAILS.forEach(
                (detail, value) -> rulesUntouchedFindTheSame(sample, analysis -> set(analysis, detail, value)));
        assertThat(OTHER_DETAILS.keySet()).isEqualTo(Check.DETAILS);
    }

    @ParameterizedTest
    @ValueSource(strings = {"harrow-14", "maple-court-2", "plumb-line-1", "quillfeather-8"})
    void rulesThatTheGroundDoesNotMatterToFindTheSame(String sample) {
        rulesUntouchedFindTheSame(sample, TouchedTest::raised);
    }

    /** The plan with the ground 1 ft higher in a wide triangle in its middle. */
    private static Site raised(SiteAnalysis analysis) {
        GroundSurface ground = analysis.ground().orElseThrow();
        Coordinate middle =
                analysis.site().features(Role.PIPE).get(0).geometry().getCoordinate();
        Coordinate[] ring = {
            new Coordinate(middle.x - 6, middle.y - 6),
            new Coordinate(middle.x + 6, middle.y - 6),
            new Coordinate(middle.x, middle.y + 8),
            new Coordinate(middle.x - 6, middle.y - 6)
        };
        for (Coordinate corner : ring) {
            corner.setZ(ground.elevationAt(corner)
                            .or(() -> ground.elevationAt(middle))
                            .orElseThrow()
                            .metres()
                    + 0.3);
        }
        return RaisedGround.graded(analysis.site(), List.of(Edits.GEOMETRY.createPolygon(ring)));
    }

    private static void rulesUntouchedFindTheSame(String sample, Function<SiteAnalysis, Site> change) {
        Site site = SiteReader.read(Path.of("sample-sites", sample));
        RuleBook whole =
                new RuleLibrary(Path.of("rules"), "rules").load(site.county().orElse("larkmoor"), site.house());
        SiteAnalysis analysis = SiteAnalysis.of(site, whole.locality());
        Site changed = change.apply(analysis);
        Touched touched = Touched.between(site, changed);
        RuleBook book = whole.only(rule -> !touched.mayTouch(rule));

        assertThat(touched.isPlan()).isFalse();
        assertThat(touched.isGround() || !touched.attributes().isEmpty()).isTrue();
        assertThat(book.rules()).isNotEmpty();
        assertThat(told(analysis.with(changed), book)).isEqualTo(told(analysis, book));
    }

    @Test
    void theRuleThatADetailIsForIsTouched() {
        Site site = SiteReader.read(Path.of("sample-sites", "harrow-14"));
        SiteAnalysis analysis = SiteAnalysis.of(site);
        Touched touched = Touched.between(site, set(analysis, Attribute.WEIGHT, new Mass(500)));
        RuleBook book = new RuleLibrary(Path.of("rules"), "rules").load("larkmoor", Optional.empty());

        assertThat(book.rules().stream()
                        .filter(touched::mayTouch)
                        .map(rule -> rule.check().name()))
                .contains("flotation")
                .doesNotContain("cover", "slope");
    }

    @ParameterizedTest
    @ValueSource(strings = {"harrow-14"})
    void whatMovesInPlanIsNoChangeOfHeightsAlone(String sample) {
        Site site = SiteReader.read(Path.of("sample-sites", sample));
        SiteAnalysis analysis = SiteAnalysis.of(site);
        Feature outfall = site.features(Role.OUTFALL).get(0);
        Edits moved = new Edits(site, analysis.network())
                .move(analysis.network().junctionOf(outfall).orElseThrow(), 0.1, 0);
        Edits wider = new Edits(site, analysis.network())
                .set(site.features(Role.PIPE).get(0), Attribute.DIAMETER, new Length(0.3));

        assertThat(Touched.between(site, moved.site()).isPlan()).isTrue();
        assertThat(Touched.between(site, wider.site()).attributes()).containsExactly(Attribute.DIAMETER);
    }

    /** The plan with a detail of everything in the drain that may have it changed. */
    private static Site set(SiteAnalysis analysis, Attribute<?> detail, Object value) {
        Edits edits = new Edits(analysis.site(), analysis.network());
        for (Role role : List.of(Role.PIPE, Role.INLET, Role.OUTFALL)) {
            analysis.site().features(role).forEach(feature -> setUntyped(edits, feature, detail, value));
        }
        return edits.site();
    }

    @SuppressWarnings("unchecked") // the values beside the details are of their types
    private static <T> void setUntyped(Edits edits, Feature feature, Attribute<T> detail, Object value) {
        edits.set(feature, detail, (T) value);
    }

    /** The plan with every pipe 0.3 m lower, its lower end 0.4 m, and every grate 0.1 m lower. */
    private static Site lowered(SiteAnalysis analysis) {
        Edits edits = new Edits(analysis.site(), analysis.network());
        for (PipeRun run : analysis.network().runs()) {
            edits.raise(run, new Length(-0.3), new Length(-0.4));
        }
        for (Feature inlet : analysis.site().features(Role.INLET)) {
            Optional<Elevation> rim = inlet.get(Attribute.RIM);
            rim.ifPresent(level -> edits.set(inlet, Attribute.RIM, level.minus(new Length(0.1))));
        }
        return edits.site();
    }

    private static List<String> told(SiteAnalysis analysis, RuleBook book) {
        return Reviewer.review(analysis, book, TODAY).findings().stream()
                .map(TouchedTest::told)
                .toList();
    }

    private static String told(Finding finding) {
        return Subject.of(finding) + " " + finding.outcome() + " "
                + finding.observation().measured().map(measured -> measured.value() + " " + measured.accuracy());
    }
}
