package org.fallrule.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Books that want to mislead or to keep waiting are refused in words, at once. */
class HostileBooksTest {
    @TempDir
    Path folder;

    private List<String> faults(String county) {
        return Assertions.assertTimeout(
                Duration.ofSeconds(10),
                () -> new Books(folder).with("counties/c.yaml", county).faultsOfCounty());
    }

    @Test
    void aliasesThatMultiplyAreRefused() {
        StringBuilder bomb = new StringBuilder("a: &a [x, x, x, x]\n");
        for (char each = 'b'; each < 'z'; each++) {
            char before = (char) (each - 1);
            bomb.append(each)
                    .append(": &")
                    .append(each)
                    .append(" [*")
                    .append(before)
                    .append(", *")
                    .append(before)
                    .append("]\n");
        }

        assertThat(faults(bomb.toString())).singleElement().asString().contains("anchors (&) and aliases (*)");
    }

    @Test
    void endlessDepthIsRefused() {
        assertThat(faults("rules: " + "[".repeat(5000) + "\n"))
                .singleElement()
                .asString()
                .containsIgnoringCase("nest");
    }

    @Test
    void aBookOfAbsurdSizeIsRefused() {
        assertThat(faults("# " + "x".repeat(1 << 20) + "\n"))
                .singleElement()
                .asString()
                .contains("the file is larger than");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "title: again | the key title stands already in line 1; keep one of them",
                "'rules: {a: {}, a: {}}' | the key a stands already in line 2; keep one of them",
                "'climate: &c {freezing: true}' | anchors (&) and aliases (*) are not read",
            })
    void whatYamlLetsPassAndMisleadsIsRefused(String book, String says) {
        assertThat(faults(book + "\n")).singleElement().asString().contains(says);
    }

    @Test
    void tabsAreRefusedWithTheWayOut() {
        assertThat(faults("climate:\n\tfreezing: true\n"))
                .singleElement()
                .asString()
                .contains("indent with spaces, not tabs");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "slope | at_least: 5 in | \"in\" is not a unit of slope",
                "slope | at_most: 1/8 ft | \"ft\" is not a unit of slope",
                "cover | at_least: 5 % | \"%\" is not a unit of length",
                "cover | at_least: 5 in/ft | \"in/ft\" is not a unit of length",
                "cover | at_least: -1 in | is negative; give zero or more",
                "cover | 'at_least: [{when: \"above =\", is: 1 in}]' | above =",
                "cover | 'at_least: [{when: \"above = drive\", is: 1 in}]' | single quotes",
                "cover | 'at_least: [{when: \"abov = ''drive''\", is: 1 in}]' | did you mean above?",
                "slope | 'at_least: [{when: \"diameter_inch <= 4\", is: 1 %}]' | did you mean diameter_in?",
                "slope | 'at_least: [{when: \"colour = ''red''\", is: 1 %}]' | unknown attribute colour",
            })
    void aLimitOfTheWrongKindIsRefusedAndSaysWhatIsWanted(String check, String limit, String says) {
        assertThat(faults("rules:\n  r:\n    title: x\n    check: " + check + "\n    " + limit
                        + "\n    weight: must\n    basis: {kind: practice}\n"))
                .singleElement()
                .asString()
                .contains(says);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "inlet_capture | at_most: 2 in | clogged: 1.5 | \"1.5\" is too much; give 0 to 1",
                "inlet_capture | at_most: 2 in | clogged: -0.5 | \"-0.5\" is negative; give 0 to 1",
                "capacity | table: HEC-22 | at_most: 0 | \"0\" is too little; give more than 0 and at most 1",
                "flotation | at_least: 1 | at_least: 0.9 | \"0.9\" is too little; give 1 or more",
                "crossing_angle | from: utility | at_least: 91 deg | \"91 deg\" is too much; give 0 deg to 90 deg",
                "bend_cleanout | within: 2 ft | bend_at_most: 200 deg | \"200 deg\" is too much; give 0 deg to 180 deg",
                "ground_fall | over: 10 ft | spacing: 0.001 in | \"0.001 in\" is too little; give 1 in or more",
                "cleanout_spacing | within: 2 ft | at_most: 0 ft | \"0 ft\" is too little; give more than zero",
                "slope | at_least: 1 % | at_least: 120 % | \"120 %\" is too much; give 0 % to 100 %",
                "hand_dig | zone: 2 ft | size_if_unknown: 0 in | \"0 in\" is too little; give more than zero",
            })
    void anAmountThatMakesNoSenseIsRefusedWithItsLine(String check, String other, String amount, String says) {
        String book =
                "rules:\n  r:\n    title: x\n    check: " + check + "\n    weight: must\n    basis: {kind: practice}\n";
        String key = amount.substring(0, amount.indexOf(':') + 1);

        assertThat(faults(book + (other.startsWith(key) ? "" : "    " + other + "\n") + "    " + amount + "\n"))
                .filteredOn(fault -> fault.contains("give ")
                        && fault.contains("\"" + amount.substring(key.length()).strip()))
                .singleElement()
                .asString()
                .startsWith("rules/counties/c.yaml:" + (other.startsWith(key) ? 8 : 9) + ":")
                .endsWith(says);
    }

    @Test
    void aRoughnessAboveOneIsAMistakenPoint() {
        assertThat(faults("storm: {basis: {kind: practice}, overland: {by: kinematic_wave, roughness: 24}}\n"))
                .containsExactly("rules/counties/c.yaml:2:76: \"24\" does not make sense here;"
                        + " give more than 0 and at most 1");
    }
}
