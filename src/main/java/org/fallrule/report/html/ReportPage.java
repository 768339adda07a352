package org.fallrule.report.html;

import java.util.List;
import java.util.Optional;
import org.fallrule.report.BillOfQuantities;
import org.fallrule.report.Fact;

/**
 * All that the page states, in the words that stand on it.
 *
 * @param text style and script
 * @param site the site's name
 * @param verdict whether the plan passes
 * @param passes whether nothing binding fails and nothing is open; decides the verdict's sign
 * @param fails whether a binding rule fails
 * @param about facts about the plan
 * @param standing where an outfall or a basin may stand
 * @param takes what a proposal takes to build; empty where the report is of none
 * @param counts how many findings there are of each outcome
 * @param failing the binding rules that fail
 * @param choices what the findings can be chosen by
 * @param plans the overview; empty when nothing lies anywhere
 * @param sections the long sections
 * @param open findings that fail, are borderline or cannot be told
 * @param settled all other findings
 * @param problems what is wrong with the input, each with its place
 * @param pipes the pipes
 * @param structures the inlets, cleanouts and outfalls
 * @param storm the rain that was designed for, or what is missing of it
 * @param water the tables of the water
 * @param crossings where utilities cross them
 * @param checklist what a submittal is looked over for; empty when the books ask nothing
 * @param checklistSummary how many items stand how
 * @param books the rule books
 * @param cautions what every report warns of
 */
public record ReportPage(
        PageText text,
        String site,
        String verdict,
        boolean passes,
        boolean fails,
        List<Fact> about,
        List<String> standing,
        List<Fact> takes,
        List<Count> counts,
        List<FailingRule> failing,
        FilterChoices choices,
        Optional<Plans> plans,
        List<SectionView> sections,
        List<FindingView> open,
        List<FindingView> settled,
        List<Fact> problems,
        List<PipeRow> pipes,
        List<StructureRow> structures,
        String storm,
        List<WaterView> water,
        List<CrossingView> crossings,
        List<ChecklistRow> checklist,
        String checklistSummary,
        List<Book> books,
        List<String> cautions) {

    /** How many findings have an outcome. */
    public record Count(OutcomeSign outcome, long number) {}

    /** The overview as SVG, for two widths of screen and for paper. */
    public record Plans(String wide, String narrow, String paper) {}

    /** A rule book and the beginning of its file's digest. */
    public record Book(String title, String file, String digest) {}

    /** What has to be said with {@link #takes}. */
    public String takesLead() {
        return BillOfQuantities.LEAD;
    }

    /** How many findings there are. */
    public int total() {
        return open.size() + settled.size();
    }
}
