package org.fallrule.report.map;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import org.fallrule.document.Place;
import org.fallrule.site.Attribute;
import org.fallrule.site.Attributes;
import org.fallrule.site.Feature;
import org.fallrule.site.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.GeometryFactory;

class LookTest {
    private static final String ON_WHITE = "#fbfbf8";
    private static final String ON_DARK = "#14181c";

    private static Look of(Role role, Attributes attributes) {
        return Look.of(
                new Feature(role, "F-1", new GeometryFactory().createPoint(), attributes, Place.of("plan.geojson")));
    }

    private static Look ofUtility(String kind) {
        return of(Role.UTILITY, Attributes.none().with(Attribute.KIND, kind));
    }

    private static List<Look> utilities() {
        return Arrays.stream(Look.values())
                .filter(look -> !look.ink().code().isEmpty())
                .toList();
    }

    /** Uniform Color Code for temporary marking, American Public Works Association; hues in degrees of the colour circle. */
    @ParameterizedTest
    @CsvSource({
        "electric, red, 0",
        "gas, yellow, 50",
        "communication, orange, 28",
        "water_main, blue, 210",
        "water_service, blue, 210",
        "reclaimed, purple, 282",
        "irrigation, purple, 282",
        "lighting, red, 0",
        "propane, yellow, 50",
        "sanitary, green, 137",
        "storm, green, 137",
    })
    void utilitiesHaveTheColoursOfTheUniformCode(String kind, String colour, double hue) {
        Ink ink = ofUtility(kind).ink();

        assertThat(hue(ink.stroke().light())).as(colour).isCloseTo(hue, within(10.0));
        assertThat(hue(ink.stroke().dark())).as(colour).isCloseTo(hue, within(12.0));
    }

    @Test
    void whatIsProposedIsWhiteAndADrainThatExistsIsGreen() {
        Look proposed = of(Role.PIPE, Attributes.none());
        Look existing = of(Role.PIPE, Attributes.none().with(Attribute.STATUS, "existing"));

        assertThat(proposed.ink().stroke().light()).isEqualTo("#ffffff");
        assertThat(hue(existing.ink().stroke().light())).isCloseTo(137, within(10.0));
        assertThat(proposed.isDrain() && existing.isDrain()).isTrue();
    }

    /** Web Content Accessibility Guidelines 2.2, 1.4.11: graphics stand out from what is beside them by 3 to 1. */
    @Test
    void everyLineStandsOutFromTheGroundByItselfOrByItsCasing() {
        for (Look look : List.of(Look.PIPE, Look.EXISTING_PIPE, Look.OWN_LOT)) {
            assertStandsOut(look);
        }
        utilities().forEach(LookTest::assertStandsOut);
    }

    private static void assertStandsOut(Look look) {
        assertThat(best(look.ink(), Tone::light, ON_WHITE))
                .as("%s on paper", look)
                .isGreaterThanOrEqualTo(3);
        assertThat(best(look.ink(), Tone::dark, ON_DARK)).as("%s on dark", look).isGreaterThanOrEqualTo(3);
    }

    /** Web Content Accessibility Guidelines 2.2, 1.4.3: words stand out by 3 to 1 when bold and large, here when bold. */
    @Test
    void theLettersAlongALineCanBeReadOnEitherGround() {
        for (Look look : utilities()) {
            Tone letters = look.ink().letters();
            assertThat(contrast(letters.light(), ON_WHITE))
                    .as("%s on paper", look)
                    .isGreaterThanOrEqualTo(3);
            assertThat(contrast(letters.dark(), ON_DARK)).as("%s on dark", look).isGreaterThanOrEqualTo(3);
        }
    }

    @Test
    void withoutColourEachUtilityIsToldByItsDashAndItsLetters() {
        assertThat(utilities())
                .extracting(look -> look.ink().dash())
                .doesNotHaveDuplicates()
                .doesNotContain("");
        assertThat(utilities()).extracting(look -> look.ink().code()).doesNotHaveDuplicates();
    }

    private static double best(Ink ink, Function<Tone, String> side, String ground) {
        double line = contrast(side.apply(ink.stroke()), ground);
        return ink.casing().isNone() ? line : Math.max(line, contrast(side.apply(ink.casing()), ground));
    }

    private static double hue(String css) {
        Color colour = Color.decode(css);
        float turn = Color.RGBtoHSB(colour.getRed(), colour.getGreen(), colour.getBlue(), null)[0];
        return turn > 0.95 ? (turn - 1) * 360 : turn * 360;
    }

    /** Contrast ratio after WCAG 2.2. */
    private static double contrast(String one, String other) {
        double a = luminance(Color.decode(one));
        double b = luminance(Color.decode(other));
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(int channel) {
        double value = channel / 255.0;
        return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
    }
}
