package org.fallrule.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.fallrule.reader.SiteReader;
import org.fallrule.rulebook.RuleLibrary;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The schemas are written from the code, are what JSON Schema 2020-12 calls one, and every shipped file keeps to them. */
class SchemaTest {
    private static final Path FOLDER = Path.of("docs/schema");
    private static final Map<String, Supplier<String>> SCHEMAS = Map.of(
            "layer-profile.schema.json", ProfileSchema::write,
            "rule-book.schema.json", BookSchema::write,
            "site.schema.json", SiteSchema::write,
            "sites.schema.json", SitesSchema::write);
    private static final ObjectMapper YAML = new YAMLMapper();

    private static Set<ValidationMessage> faults(String schema, String yaml) throws IOException {
        JsonSchema held =
                JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(schema);
        return held.validate(YAML.readTree(yaml));
    }

    @TestFactory
    Stream<DynamicTest> theSchemasAreFresh() {
        return SCHEMAS.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(schema -> DynamicTest.dynamicTest(schema.getKey(), () -> {
                    Path file = FOLDER.resolve(schema.getKey());
                    String written = schema.getValue().get();
                    if (Boolean.getBoolean("fallrule.renew")) {
                        Files.createDirectories(FOLDER);
                        Files.writeString(file, written);
                    }
                    assertThat(file)
                            .as(
                                    "%s is written from the code; renew it: mvn test -Dtest=SchemaTest -Dfallrule.renew=true",
                                    file)
                            .hasContent(written);
                }));
    }

    @TestFactory
    Stream<DynamicTest> everyShippedFileKeepsToItsSchema() throws IOException {
        try (Stream<Path> rules = Files.walk(Path.of("rules"));
                Stream<Path> sites = Files.walk(Path.of("sample-sites"))) {
            Stream<Path> books = rules.filter(path ->
                    path.toString().endsWith(".yaml") && !path.toString().endsWith(".examples.yaml"));
            Stream<Path> plans = sites.filter(path -> path.endsWith("site.yaml"));
            return Stream.concat(
                    books.map(book -> keeps(book, BookSchema.write())),
                    plans.map(plan -> keeps(plan, SiteSchema.write())))
                    .toList()
                    .stream();
        }
    }

    private static DynamicTest keeps(Path file, String schema) {
        return DynamicTest.dynamicTest(
                file.toString(),
                () -> assertThat(faults(schema, Files.readString(file))).isEmpty());
    }

    /** A key that the reader knows and the schema does not would be marked wrong by every editor. */
    @Test
    void theSchemaKnowsTheKeysAtTheTopThatTheReaderKnows(@TempDir Path folder) throws IOException {
        Files.createDirectories(folder.resolve("counties"));
        Files.writeString(folder.resolve("counties/c.yaml"), "title: x\nno_such_key: x\n");
        assertThatThrownBy(() -> new RuleLibrary(folder, "rules").load("c", Optional.empty()))
                .satisfies(refused -> assertThat(known(refused)).isSubsetOf(keys(BookSchema.write())));

        Files.writeString(folder.resolve("site.yaml"), "no_such_key: x\n");
        assertThatThrownBy(() -> SiteReader.read(folder))
                .satisfies(refused -> assertThat(known(refused)).isEqualTo(keys(SiteSchema.write())));

        Files.writeString(folder.resolve("site.yaml"), "layers_from: ours.yaml\n");
        Files.writeString(folder.resolve("ours.yaml"), "no_such_key: x\n");
        assertThatThrownBy(() -> SiteReader.read(folder))
                .satisfies(refused -> assertThat(known(refused)).isEqualTo(keys(ProfileSchema.write())));
    }

    private static Set<String> known(Throwable refused) {
        String message = String.valueOf(refused.getMessage());
        String listed = message.substring(message.indexOf("Known: ") + "Known: ".length());
        return new TreeSet<>(List.of(listed.lines().findFirst().orElse("").split(", ", -1)));
    }

    private static Set<String> keys(String schema) throws IOException {
        Set<String> keys = new TreeSet<>();
        YAML.readTree(schema).get("properties").fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "titel: x",
                "{title: x, rules: {r: {at_lest: 5 ft}}}",
                "{title: x, rules: {r: {at_least: 5 furlongs}}}",
                "{title: x, rules: {r: {weight: shall}}}",
                "{title: x, rules: {r: {basis: {kind: law}}}}",
                "{title: x, rules: {r: {drop: yes please, reason: x}}}",
                "{title: x, effective: soon}",
                "{title: x, rules: {r: {title: x, check: slope, at_least: 5 ft, weight: must, basis: {kind: practice}}}}",
                "{title: x, rules: {r: {title: x, check: slope, at_least: 1 %, weight: must}}}",
            })
    void aBookWithAFaultDoesNotKeepToIt(String book) throws IOException {
        assertThat(faults(BookSchema.write(), book)).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{sites: x}",
                "{absent: [septik]}",
                "{units: {diameter: stone}}",
                "{layers: {pype: x.shp}}",
                "{layers: {pipe: {file: x.shp, fields: {rim: X}}}}",
                "{layers: {pipe: [{fields: {diameter: X}}]}}",
                "{layers: {pipe: {file: x.shp, all: {rim: X}}}}",
                "{waivers: [{rule: x}]}",
            })
    void aSiteWithAFaultDoesNotKeepToIt(String site) throws IOException {
        assertThat(faults(SiteSchema.write(), site)).isNotEmpty();
    }

    @Test
    void aSiteOfEachUsualFormKeepsToIt() throws IOException {
        assertThat(faults(SiteSchema.write(), """
                        layers_from: ../our-collector.yaml
                        layers:
                          lot: lots.shp
                          pipe: {file: drains.shp, fields: {diameter: DIA}, datum: NAVD88}
                          utility: [marks.shp, {file: gas.shp, all: {kind: gas}}]
                        """)).isEmpty();
    }

    @Test
    void aSharedFileOfEachKeyKeepsToIt() throws IOException {
        assertThat(faults(SitesSchema.write(), """
                        near: 250 ft
                        county: saltmeadow
                        crs: EPSG:2264
                        datum: NAVD88
                        units: {depth: in, elevation: ft}
                        absent: [septic]
                        shared:
                          lot: county.gpkg
                          utility: {file: marks.shp, fields: {kind: TYPE}, where: "STATUS <> 'ABD'"}
                        """)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"{near: 250}", "{layers: {lot: x.shp}}", "{shared: {lots: x.shp}}", "{survey: {}}"})
    void aSharedFileWithAFaultDoesNotKeepToIt(String sites) throws IOException {
        assertThat(faults(SitesSchema.write(), sites)).isNotEmpty();
    }

    /** The profile that the page on data shows, and every other form. */
    @Test
    void aProfileOfEachUsualFormKeepsToIt() throws IOException {
        String page = Files.readString(Path.of("docs/site-data.md"));
        String shown =
                page.substring(page.indexOf("    title: our collector"), page.indexOf("and in each `site.yaml`"));

        assertThat(faults(ProfileSchema.write(), shown.stripIndent())).isEmpty();
        assertThat(faults(ProfileSchema.write(), """
                        units: {depth: in}
                        layers:
                          spot: {unit: ft, crs: EPSG:2264, datum: NAVD88}
                          utility:
                            - {all: {quality: B}}
                            - {file: gas*.shp, table: g, all: {kind: gas}, values: {kind: {G: gas}}}
                        """)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{site: x}",
                "{layers_from: ../other.yaml}",
                "{units: {diameter: stone}}",
                "{layers: {pype: {}}}",
                "{layers: {pipe: drains.shp}}",
                "{layers: {pipe: [drains.shp]}}",
                "{layers: {pipe: {feilds: {}}}}",
                "{layers: {pipe: {fields: {rim: X}}}}",
                "{layers: {pipe: {unit: ft}}}",
            })
    void aProfileWithAFaultDoesNotKeepToIt(String profile) throws IOException {
        assertThat(faults(ProfileSchema.write(), profile)).isNotEmpty();
    }

    @Test
    void aRuleOfEachUsualFormKeepsToIt() throws IOException {
        assertThat(faults(BookSchema.write(), """
                        title: Ambermere County
                        effective: {from: "2026-07-01", until: "2027-07-01"}
                        rules:
                          a: {title: x, check: slope, at_least: 1/8 in/ft, weight: must, basis: {kind: practice}}
                          b: {title: x, check: slope, at_least: [{when: "diameter_in < 4", is: 1:48}, {is: none}],
                            weight: should, basis: {kind: practice}}
                          c: {at_least: 1 1/2 in}
                          d: {drop: true, reason: not here}
                        """)).isEmpty();
    }
}
