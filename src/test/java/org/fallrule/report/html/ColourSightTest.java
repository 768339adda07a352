package org.fallrule.report.html;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fallrule.finding.Outcome;
import org.fallrule.report.map.Look;
import org.fallrule.report.map.MapStyle;
import org.fallrule.report.map.Sight;
import org.fallrule.report.map.Tone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The colours of page and drawings as they are seen without one kind of cone, and on a grey print. */
class ColourSightTest {
    private static final String STYLE = PageText.load().style();
    private static final List<String> OUTCOMES = List.of("bad", "open", "ask", "good", "calm");

    /** The page's colours by name, on a light ground and on a dark one. */
    private static final Map<String, Tone> PAGE = tones();

    /** Under this colours may be taken for one another; common practice. */
    private static final double ALIKE = 10;

    private static Map<String, Tone> tones() {
        List<String> roots = Pattern.compile(":root\\{([^}]*)}")
                .matcher(STYLE)
                .results()
                .map(found -> found.group(1))
                .toList();
        Map<String, String> light = colours(roots.get(0));
        Map<String, String> dark = colours(roots.get(1));
        Map<String, Tone> tones = new HashMap<>();
        light.forEach((name, colour) -> tones.put(name, new Tone(colour, dark.getOrDefault(name, colour))));
        return tones;
    }

    private static Map<String, String> colours(String root) {
        Map<String, String> colours = new HashMap<>();
        Matcher found = Pattern.compile("--(\\w+):(#\\w+)").matcher(root);
        while (found.find()) {
            String hex = found.group(2);
            colours.put(
                    found.group(1),
                    hex.length() == 4 ? hex.replaceAll("#?(\\w)", "$1$1").replaceFirst("", "#") : hex);
        }
        return colours;
    }

    private static final List<Function<Tone, String>> GROUNDS = List.of(Tone::light, Tone::dark);

    /** Full severity leaves greys as they are (Machado and others, 2009): every row of a matrix adds up to 1. */
    @ParameterizedTest
    @EnumSource(Sight.class)
    void greysAreSeenAsTheyAre(Sight sight) {
        assertThat(sight.contrast("#777777", "#ffffff")).isCloseTo(4.48, within(0.01));
        assertThat(sight.difference("#777777", "#777777")).isZero();
    }

    @Test
    void redAndGreenOfOneBrightnessAreNearlyOneWithoutGreenCones() {
        assertThat(Sight.USUAL.difference("#a3140c", "#4a5a00")).isGreaterThan(60);
        assertThat(Sight.DEUTERANOPIA.difference("#a3140c", "#4a5a00")).isLessThan(25);
    }

    /** Web Content Accessibility Guidelines 2.2, 1.4.3: 4.5 to 1. */
    @ParameterizedTest
    @EnumSource(Sight.class)
    void theWordsOfEveryOutcomeCanBeRead(Sight sight) {
        for (Function<Tone, String> ground : GROUNDS) {
            for (String name : OUTCOMES) {
                assertThat(sight.contrast(ground.apply(PAGE.get(name)), ground.apply(PAGE.get("paper"))))
                        .as(name)
                        .isGreaterThanOrEqualTo(4.5);
            }
        }
    }

    @Test
    void noOutcomeIsToldByColourAlone() {
        List<OutcomeSign> signs =
                Arrays.stream(Outcome.values()).map(OutcomeSign::of).toList();
        assertThat(signs).extracting(OutcomeSign::sign).doesNotHaveDuplicates().doesNotContain("");
        assertThat(signs).extracting(OutcomeSign::spoken).doesNotHaveDuplicates();
        List<String> edges = signs.stream()
                .map(sign -> rule(".chip." + sign.word()).replaceAll("(^|[{;])color:[^;}]*", "$1"))
                .toList();
        assertThat(edges).doesNotHaveDuplicates();
    }

    private static String rule(String selector) {
        int start = STYLE.indexOf("\n" + selector + "{") + 1 + selector.length();
        return STYLE.substring(start, STYLE.indexOf('}', start));
    }

    /** A filled disc against an open diamond: one dark, the other as light as the ground, whatever the hue. */
    @ParameterizedTest
    @EnumSource(Sight.class)
    void whatFailsIsADarkDiscAmongLightDiamonds(Sight sight) {
        for (Function<Tone, String> ground : GROUNDS) {
            String paper = ground.apply(PAGE.get("paper"));
            assertThat(sight.contrast(ground.apply(MapStyle.FAILS), paper)).isGreaterThanOrEqualTo(4.5);
            assertThat(sight.contrast(ground.apply(MapStyle.WORDS), paper)).isGreaterThanOrEqualTo(7);
        }
    }

    /** Web Content Accessibility Guidelines 2.2, 1.4.11: 3 to 1 for graphics. */
    @ParameterizedTest
    @EnumSource(Sight.class)
    void whatIsMeasuredAndWhatIsAskedStandOutFromTheGround(Sight sight) {
        for (Function<Tone, String> ground : GROUNDS) {
            String paper = ground.apply(PAGE.get("paper"));
            assertThat(sight.contrast(ground.apply(MapStyle.VALUE), paper)).isGreaterThanOrEqualTo(4.5);
            for (Look look : List.of(Look.LIMIT, Look.LEVEL_LIMIT, Look.COVER_LIMIT, Look.MEASURED_PLACE)) {
                assertThat(sight.contrast(ground.apply(look.ink().stroke()), paper))
                        .as("%s", look)
                        .isGreaterThanOrEqualTo(3);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Sight.class)
    void everyUtilityStandsOutFromTheGround(Sight sight) {
        for (Function<Tone, String> ground : GROUNDS) {
            for (Look look : utilities()) {
                String paper = ground.apply(PAGE.get("paper"));
                double line = sight.contrast(ground.apply(look.ink().stroke()), paper);
                double casing = look.ink().casing().isNone()
                        ? 0
                        : sight.contrast(ground.apply(look.ink().casing()), paper);
                assertThat(Math.max(line, casing)).as("%s", look).isGreaterThanOrEqualTo(3);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Sight.class)
    void utilitiesWhoseColoursLookAlikeHaveDashesThatDoNot(Sight sight) {
        for (Function<Tone, String> ground : GROUNDS) {
            for (Look one : utilities()) {
                for (Look other : utilities()) {
                    boolean alike = sight.difference(
                                    ground.apply(one.ink().stroke()),
                                    ground.apply(other.ink().stroke()))
                            < ALIKE;
                    if (one.compareTo(other) < 0 && alike) {
                        assertThat(dashesDiffer(one, other))
                                .as("%s and %s", one, other)
                                .isTrue();
                    }
                }
            }
        }
    }

    private static List<Look> utilities() {
        return Arrays.stream(Look.values())
                .filter(look -> !look.ink().code().isEmpty())
                .toList();
    }

    /** Another number of strokes, or one period at least a quarter longer than the other. */
    private static boolean dashesDiffer(Look one, Look other) {
        double[] a = dash(one);
        double[] b = dash(other);
        double first = Arrays.stream(a).sum();
        double second = Arrays.stream(b).sum();
        return a.length != b.length || Math.max(first, second) / Math.min(first, second) >= 1.25;
    }

    private static double[] dash(Look look) {
        return Arrays.stream(look.ink().dash().split(" ", -1))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }
}
