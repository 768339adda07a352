package org.fallrule.hydraulics.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fallrule.hydraulics.UsUnits.gpmOfRain;
import static org.fallrule.hydraulics.UsUnits.inchPerFoot;
import static org.fallrule.hydraulics.UsUnits.pipe;

import java.util.ArrayList;
import java.util.List;
import org.fallrule.hydraulics.pipe.VerticalLeader;
import org.fallrule.measure.Length;
import org.fallrule.measure.Slope;
import org.fallrule.measure.Unit;
import org.fallrule.method.Method;
import org.fallrule.method.MethodContract;
import org.fallrule.method.Published;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StormDrainTableTest implements MethodContract {
    private static final StormDrainTable IPC = StormDrainTable.ipc2018();
    private static final StormDrainTable UPC = StormDrainTable.upc();
    private static final double EIGHTH = 1 / 8.0;

    @Override
    public Method method() {
        return StormDrainTable.METHOD;
    }

    @Override
    public List<Published> published() {
        List<Published> all = new ArrayList<>();
        all.add(roof(
                "6 in, 1/8 in/ft, 3.2 in/h: roof",
                6688,
                15,
                "UPC appendix D section D3, read; from 21,400 sq ft, which is not rounded to a gpm",
                horizontal(UPC, 6, EIGHTH),
                3.2));
        all.add(roof(
                "4 in, 1/8 in/ft, 3 in/h: roof",
                2506,
                7,
                "International Plumbing Code 2012 table 1106.3 (same basis), read; from 78.2 gpm",
                horizontal(UPC, 4, EIGHTH),
                3));
        all.add(roof(
                "4 in, 1/8 in/ft, 3 in/h, later edition: roof",
                3684,
                8,
                "a page on IPC 2021, read",
                horizontal(IPC, 4, EIGHTH),
                3));
        return all;
    }

    private static Published roof(
            String given, double squareFeet, double within, String source, double gpm, double inchesPerHour) {
        return new Published(given, squareFeet, within, "sq ft", source, () -> gpm / gpmOfRain(1, inchesPerHour));
    }

    private static double horizontal(StormDrainTable table, double inches, double inchPerFoot) {
        return table.horizontal(Length.inches(inches), inchPerFoot(inchPerFoot))
                .value()
                .orElseThrow()
                .in(Unit.GALLON_PER_MINUTE);
    }

    private static double vertical(StormDrainTable table, double inches) {
        return table.vertical(Length.inches(inches)).value().orElseThrow().in(Unit.GALLON_PER_MINUTE);
    }

    @Test
    void oneFactorOfAPageIsAMisprintThatItsOwnExampleRefutes() {
        // The page prints 0.014 gpm for each sq ft and in/h, and works its example with 0.0104.
        assertThat(gpmOfRain(1, 1)).isCloseTo(0.0104, within(0.00005));
        assertThat(115 / (0.014 * 3)).isCloseTo(2738, within(1.0)).isLessThan(3684 * 0.75);
    }

    /** International Plumbing Code 2018 table 1106.2 (read in a reprint): each row doubles from 1/8 to 1/2 in/ft. */
    @ParameterizedTest
    @CsvSource({
        "2, 34, 15, 22, 31, 44",
        "3, 87, 39, 55, 79, 111",
        "4, 180, 81, 115, 163, 231",
        "5, 311, 117, 165, 234, 331",
        "6, 538, 243, 344, 487, 689",
        "8, 1117, 505, 714, 1010, 1429",
        "10, 2050, 927, 1311, 1855, 2623",
        "12, 3272, 1480, 2093, 2960, 4187",
        "15, 5543, 2508, 3546, 5016, 7093"
    })
    void theInternationalCodesTableIsKeptAsPrinted(
            double inches, double leader, double at16, double at8, double at4, double at2) {
        assertThat(vertical(IPC, inches)).isCloseTo(leader, within(1e-6));
        assertThat(horizontal(IPC, inches, 1 / 16.0)).isCloseTo(at16, within(1e-6));
        assertThat(horizontal(IPC, inches, 1 / 8.0)).isCloseTo(at8, within(1e-6));
        assertThat(horizontal(IPC, inches, 1 / 4.0)).isCloseTo(at4, within(1e-6));
        assertThat(horizontal(IPC, inches, 1 / 2.0)).isCloseTo(at2, within(1e-6));
        assertThat(at2 / at8).isBetween(2.0, 2.02);
    }

    /** Uniform Plumbing Code table 1103.2, sq ft at 1 in/h (from memory but 21,400, read) beside its gpm. */
    @ParameterizedTest
    @CsvSource({
        "3, 3288, 4640, 6576",
        "4, 7520, 10600, 15040",
        "5, 13360, 18880, 26720",
        "6, 21400, 30200, 42800",
        "8, 46000, 65200, 92000",
        "10, 82800, 116800, 165600",
        "12, 133200, 188000, 266400",
        "15, 238000, 336000, 476000"
    })
    void theUniformCodesAreasGiveItsFlowsToTheGallon(double inches, double at8, double at4, double at2) {
        assertThat(horizontal(UPC, inches, 1 / 8.0)).isCloseTo(gpmOfRain(at8, 1), within(0.6));
        assertThat(horizontal(UPC, inches, 1 / 4.0)).isCloseTo(gpmOfRain(at4, 1), within(0.6));
        assertThat(horizontal(UPC, inches, 1 / 2.0)).isCloseTo(gpmOfRain(at2, 1), within(0.6));
    }

    /** National Standard Plumbing Code 2009 appendix K (read) says that the storm table rests on n = 0.015. */
    @ParameterizedTest
    @CsvSource({"3", "4", "5", "6", "8", "10", "12", "15"})
    void theUniformCodesTableFollowsAFairlyRoughPipe(double inches) {
        double formula = pipe(inches, 0.015)
                .capacity(inchPerFoot(EIGHTH))
                .value()
                .orElseThrow()
                .in(Unit.GALLON_PER_MINUTE);

        assertThat(horizontal(UPC, inches, EIGHTH)).isCloseTo(formula, within(0.045 * formula));
    }

    @ParameterizedTest
    @CsvSource({"2", "3", "4", "5", "6", "8", "10", "12", "15"})
    void theNationalCodesLeadersFollowTheFormula(double inches) {
        double formula =
                VerticalLeader.capacity(Length.inches(inches), 7.0 / 24).in(Unit.GALLON_PER_MINUTE);

        assertThat(vertical(StormDrainTable.nspc2006(), inches)).isCloseTo(formula, within(0.55));
    }

    @Test
    void theEditionIsPartOfTheQuestion() {
        assertThat(horizontal(UPC, 4, EIGHTH)).isCloseTo(78, within(1e-6));
        assertThat(horizontal(IPC, 4, EIGHTH)).isCloseTo(115, within(1e-6));
        assertThat(IPC.document()).contains("2018");
        assertThat(UPC.known()).contains("from memory");
    }

    @Test
    void onAPrintedSlopeItsColumnCountsAndBelowItTheFlatterOne() {
        assertThat(horizontal(IPC, 4, 0.2499)).isCloseTo(163, within(1e-6)); // within the tolerance of a slope
        assertThat(horizontal(IPC, 4, 0.24)).isCloseTo(115, within(1e-6));
        assertThat(horizontal(IPC, 4, 3)).isCloseTo(231, within(1e-6));
    }

    @Test
    void flatterThanTheTableOrOfAnotherSizeThereIsNoAnswer() {
        assertThat(IPC.horizontal(Length.inches(4), new Slope(0.005)).why()).contains("this flat");
        assertThat(IPC.horizontal(Length.inches(4), new Slope(-0.02)).value()).isEmpty();
        assertThat(IPC.horizontal(Length.inches(4.5), new Slope(0.02)).why()).contains("no pipe of this size");
        assertThat(UPC.vertical(Length.inches(4)).why()).contains("no leader");
        assertThat(StormDrainTable.nspc2006()
                        .horizontal(Length.inches(4), new Slope(0.02))
                        .why())
                .contains("prints no drain");
    }
}
