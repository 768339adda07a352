package org.fallrule.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Checklists of books laid over each other. */
class ChecklistLayeringTest {
    @TempDir
    Path folder;

    private Books books;

    @BeforeEach
    void baseline() {
        books = new Books(folder).with("baseline.yaml", """
                        rules: {}
                        checklist:
                          trees:
                            asks: trees
                            asked: where_it_applies
                            shown_by: {role: tree, known: [trunk_diameter]}
                          seal:
                            asks: a seal
                        """);
    }

    private Books county(String items) {
        return books.with("counties/c.yaml", "builds_on: ../baseline.yaml\nchecklist:\n" + items.indent(2));
    }

    @Test
    void aCountyChangesSingleKeysAddsItemsAndDropsThem() {
        RuleBook book = county("""
                trees: {shown_by: by_hand}
                seal: {drop: true, reason: not asked here}
                street: {asks: the street, shown_by: {role: street}}
                """).county();

        assertThat(book.checklist()).extracting(ChecklistItem::id).containsExactly("trees", "street");
        ChecklistItem trees = book.checklist().get(0);
        assertThat(trees.asks()).isEqualTo("trees");
        assertThat(trees.asked()).isEqualTo(ChecklistItem.Asked.WHERE_IT_APPLIES);
        assertThat(trees.shownBy()).isEqualTo(new ShownBy.ByHand());
        assertThat(trees.setBy().fileAndLine()).isEqualTo("rules/counties/c.yaml:4");
    }

    @Test
    void anItemThatSaysNothingOfHowIsForTheHand() {
        assertThat(county("street: {asks: the street}").county().checklist())
                .filteredOn(item -> item.id().equals("street"))
                .extracting(ChecklistItem::shownBy)
                .containsExactly(new ShownBy.ByHand());
    }

    @Test
    void faultsNameTheirPlaceAndTheWayOut() {
        assertThat(county("""
                tree: {shown_by: by_hand}
                street: {asks: the street, shown_by: {role: streat}}
                soil: {asks: soil, shown_by: {role: soil, site: datum}}
                well: {asks: well, shown_by: {role: well, known: [deepness]}}
                seal: {drop: true}
                """).faultsOfCounty())
                .anyMatch(fault -> fault.contains("c.yaml:4") && fault.contains("tree is in none of the books below"))
                .anyMatch(fault -> fault.contains("c.yaml:5") && fault.contains("\"streat\""))
                .anyMatch(fault -> fault.contains("c.yaml:6") && fault.contains("found 2 ways"))
                .anyMatch(fault -> fault.contains("c.yaml:7") && fault.contains("\"deepness\""))
                .anyMatch(fault -> fault.contains("c.yaml:8") && fault.contains("reason"));
    }

    @Test
    void aHouseMayAddButNotTakeAway() {
        county("{}");
        assertThat(books.with("house/h.yaml", "checklist:\n  photo: {asks: a photograph}\n")
                        .house()
                        .checklist())
                .hasSize(3);
        assertThat(books.with("house/h.yaml", "checklist:\n  seal: {drop: true, reason: no need}\n")
                        .faultsOfHouse())
                .singleElement()
                .asString()
                .contains("item seal is the county's to ask for");
    }

    @Test
    void aKeyWithNothingAfterItIsNoReasonToTakeAway() {
        county("{}");
        String dropped = "checklist:\n  seal: {drop: true, reason: no need, loosen_because: ";

        assertThat(books.with("house/h.yaml", dropped + "}\n").faultsOfHouse())
                .singleElement()
                .asString()
                .contains("item seal is the county's to ask for");
        assertThat(books.with("house/h.yaml", dropped + "the county asks none}\n")
                        .faultsOfHouse())
                .isEmpty();
    }

    @Test
    void anItemIsShownByAFactOfTheSiteAPartOfTheReportOrBoth() {
        assertThat(county("""
                name: {asks: a name, shown_by: {site: name}}
                plan: {asks: a plan, shown_by: {report: plan}}
                both: {asks: both, shown_by: {all_of: [{site: datum}, {report: pipe_table}]}}
                either: {asks: either, shown_by: {any_of: [{site: survey_date}, by_hand]}}
                """).county().checklist())
                .extracting(ChecklistItem::shownBy)
                .endsWith(
                        new ShownBy.Stated(ShownBy.SiteFact.NAME),
                        new ShownBy.Reported(ShownBy.Part.PLAN),
                        new ShownBy.AllOf(List.of(
                                new ShownBy.Stated(ShownBy.SiteFact.DATUM),
                                new ShownBy.Reported(ShownBy.Part.PIPE_TABLE))),
                        new ShownBy.AnyOf(
                                List.of(new ShownBy.Stated(ShownBy.SiteFact.SURVEY_DATE), new ShownBy.ByHand())));
    }
}
