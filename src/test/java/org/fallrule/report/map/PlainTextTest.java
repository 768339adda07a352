package org.fallrule.report.map;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PlainTextTest {
    @Test
    void ordinaryTextStays() {
        assertThat(PlainText.of("P-1 (4 in) ±0.1 é 管 🚰 <b>")).isEqualTo("P-1 (4 in) ±0.1 é 管 🚰 <b>");
    }

    @Test
    void whatTurnsTheReadingDirectionIsShownByNumber() {
        assertThat(PlainText.of("P\u202E-1")).isEqualTo("P[U+202E]-1");
    }

    @Test
    void whatXmlCannotHoldIsShownByNumber() {
        assertThat(PlainText.of("a\u0000b\uD800c\uFFFE")).isEqualTo("a[U+0000]b[U+D800]c[U+FFFE]");
    }

    @Test
    void lineBreaksBecomeSpaces() {
        assertThat(PlainText.of("a\nb\tc")).isEqualTo("a b c");
    }

    @Test
    void rightToLeftLettersAreSetApart() {
        assertThat(PlainText.of("pipe צנור אב: 3 ft")).isEqualTo("pipe \u2068צנור אב\u2069: 3 ft");
    }

    @Test
    void whatIsSafeStaysTheSame() {
        String once = PlainText.of("pipe צנור\u202E אב \u2068x\u2069");
        assertThat(PlainText.of(once)).isEqualTo(once).contains("\u2068צנור\u2069", "[U+2068]x[U+2069]");
    }

    @Test
    void longTextIsClippedBetweenCharacters() {
        assertThat(PlainText.clipped("abcdef", 6)).isEqualTo("abcdef");
        assertThat(PlainText.clipped("🚰🚰🚰🚰", 3)).isEqualTo("🚰🚰…");
    }
}
