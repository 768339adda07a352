package org.fallrule.report.docket;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.fallrule.document.JsonTree;
import org.fallrule.document.JsonWriter;
import org.fallrule.finding.Outcome;
import org.fallrule.finding.Weight;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DocketTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    private static RuleStanding standing(String rule, Weight weight, Outcome outcome, int findings) {
        return new RuleStanding(rule, "Title of " + rule, weight, outcome, findings);
    }

    private static DocketEntry entry(String name, RuleStanding... standings) {
        return Dockets.entry(name, List.of(standings), Optional.empty());
    }

    @Test
    void aPlanNeedsTheMostUrgentThing() {
        RuleStanding binding = standing("a", Weight.MUST, Outcome.FAILS, 1);
        RuleStanding borderline = standing("b", Weight.SHOULD, Outcome.BORDERLINE, 1);
        RuleStanding advice = standing("c", Weight.SHOULD, Outcome.FAILS, 3);
        RuleStanding note = standing("d", Weight.NOTE, Outcome.FAILS, 1);
        RuleStanding met = standing("e", Weight.MUST, Outcome.MEETS, 9);

        assertThat(entry("x", borderline, binding, advice).need()).isEqualTo(Need.BINDING_FAILS);
        assertThat(entry("x", advice, borderline, met).need()).isEqualTo(Need.OPEN);
        assertThat(entry("x", advice, met).need()).isEqualTo(Need.ADVICE_FAILS);
        assertThat(entry("x", note, met).need()).isEqualTo(Need.CLEAN);
        assertThat(DocketEntry.broken("x", "x", "x", List.of("torn")).need()).isEqualTo(Need.BROKEN);
    }

    @Test
    void plansStandByWhatTheyNeedThenByHowMuchThenAsTheyCame() {
        Docket docket = new Docket(
                List.of(
                        entry("clean"),
                        DocketEntry.broken("torn", "torn", "torn", List.of("torn")),
                        entry("one", standing("a", Weight.MUST, Outcome.FAILS, 1)),
                        entry("two", standing("a", Weight.MUST, Outcome.FAILS, 2)),
                        entry("one more", standing("a", Weight.MUST, Outcome.FAILS, 1)),
                        entry("open", standing("a", Weight.MUST, Outcome.CANNOT_TELL, 7))),
                List.of(),
                "2026-06-01");

        assertThat(docket.byNeed())
                .extracting(DocketEntry::name)
                .containsExactly("two", "one", "one more", "open", "torn", "clean");
        assertThat(docket.needs().values()).containsExactly(3L, 1L, 0L, 1L, 1L);
    }

    @Test
    void rulesThatFailInTheMostPlansComeFirstAndNotesNever() {
        Docket docket = new Docket(
                List.of(
                        entry(
                                "x",
                                standing("seldom", Weight.MUST, Outcome.FAILS, 9),
                                standing("often", Weight.SHOULD, Outcome.FAILS, 1),
                                standing("noted", Weight.NOTE, Outcome.FAILS, 1)),
                        entry("y", standing("often", Weight.SHOULD, Outcome.FAILS, 1))),
                List.of(),
                "2026-06-01");

        assertThat(docket.mostFailing()).extracting(RuleTally::rule).containsExactly("often", "seldom");
        assertThat(docket.rules()).extracting(RuleTally::rule).containsExactly("seldom", "often", "noted");
    }

    @Test
    void anEntryOfAReportComesBackFromItsTree(@TempDir Path folder) throws IOException {
        for (DocketEntry entry : Dockets.ofSamples().entries().subList(0, 5)) {
            Path file = Files.writeString(folder.resolve("entry.json"), JsonWriter.write(EntryTree.of(entry)));

            DocketEntry back = EntryTree.read(JsonTree.read(file, "entry.json"), entry.path(), entry.folder());

            assertThat(back).usingRecursiveComparison().ignoringFields("lot").isEqualTo(entry);
            assertThat(back.lot().orElseThrow().equalsExact(entry.lot().orElseThrow()))
                    .isTrue();
        }
    }

    @Test
    void theIndexFileKeepsToItsSchema() throws IOException {
        JsonSchema schema = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                .getSchema(Files.readString(Path.of("docs/schema/docket.schema.json")));
        JsonNode file = JSON.readTree(DocketJson.write(Dockets.ofSamples()));

        assertThat(schema.validate(file)).isEmpty();
        ((ObjectNode) file.get("sites").get(0)).put("colour", "red");
        assertThat(schema.validate(file)).isNotEmpty();
    }

    @Test
    void theTableHasARowForEachPlanAndAColumnForEachRule() {
        List<String> lines = DocketCsv.write(Dockets.ofMany(6)).lines().toList();

        assertThat(lines.get(0)).endsWith("verdict,causes,first-rule,second-rule");
        assertThat(lines).hasSize(7);
        assertThat(lines.get(1))
                .isEqualTo("stack/plan-0,plan-0,plan-0,saltmeadow,binding_fails,1,0,2,Verdict.,,fails,fails");
    }

    @Test
    void theMapHasEveryPlanAndAScaleThatIsTrue() {
        String map = DocketMap.of(Dockets.ofMany(6).byNeed()).orElseThrow();

        assertThat(map.split("class=\"mark ", -1)).hasSize(7);
        // 0.0055 degrees at 35 degrees north are 502 m (from memory: a degree is 111.32 km times the cosine of 35
        // degrees), on 492 px
        assertThat(map).contains("100 m</text>").contains("H114.");
    }

    @Test
    void withoutAPlaceThereIsNoMap() {
        assertThat(DocketMap.of(List.of(entry("x")))).isEmpty();
    }
}
