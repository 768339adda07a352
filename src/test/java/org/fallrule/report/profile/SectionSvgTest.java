package org.fallrule.report.profile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.fallrule.report.Report;
import org.fallrule.report.SamplePlan;
import org.fallrule.report.map.TextWidth;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class SectionSvgTest {
    private static List<Section> sections(Report report) {
        return Stream.of(SectionForm.WIDE, SectionForm.NARROW)
                .flatMap(form -> SectionDrawing.lines(report).stream()
                        .flatMap(line -> SectionDrawing.of(report, line, form).stream()))
                .toList();
    }

    private static Document parsed(String svg) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        return factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }

    private static List<Element> texts(Document svg) {
        NodeList all = svg.getElementsByTagName("text");
        List<Element> texts = new ArrayList<>();
        for (int i = 0; i < all.getLength(); i++) {
            texts.add((Element) all.item(i));
        }
        return texts;
    }

    @Test
    void itHasATitleAndADescription() throws Exception {
        for (Section section : sections(SamplePlan.report())) {
            Document svg = parsed(SectionSvg.inline(section, "s"));
            assertThat(svg.getDocumentElement().getAttribute("aria-labelledby")).isEqualTo("s-title s-desc");
            assertThat(svg.getElementsByTagName("title").item(0).getTextContent())
                    .startsWith("Long section ");
            assertThat(svg.getElementsByTagName("desc").item(0).getTextContent())
                    .contains("Structures:", "Pipes:");
        }
    }

    @Test
    void noWordReachesOverTheSheet() throws Exception {
        for (Section section : sections(SamplePlan.report())) {
            for (Element text : texts(parsed(SectionSvg.inline(section, "s")))) {
                double x = Double.parseDouble(text.getAttribute("x"));
                double width = TextWidth.of(text.getTextContent(), 11.5);
                String anchor = text.getAttribute("text-anchor");
                double left = anchor.equals("end") ? x - width : anchor.equals("middle") ? x - width / 2 : x;
                assertThat(left).as(text.getTextContent()).isGreaterThan(-1);
                assertThat(left + width)
                        .as(text.getTextContent())
                        .isLessThan(section.form().width() + 1);
            }
        }
    }

    @Test
    void noFlagLiesOnAnotherOrOnAPole() {
        for (Section section : sections(SamplePlan.report())) {
            List<Flags.Flag> flags =
                    new Flags(section.stands(), x -> x * section.scale().pxPerMetre()).all();
            for (Flags.Flag flag : flags) {
                double right = flag.x() + Flags.width(flag.stand());
                assertThat(flags)
                        .filteredOn(other -> other.x() > flag.x() && other.x() < right)
                        .allSatisfy(other -> assertThat(other.top()).isLessThan(flag.bottom()));
            }
        }
    }

    @Test
    void hostileNamesAreText() throws Exception {
        Report report = SamplePlan.report(name -> name + "<script>\"&\u202E");
        for (Section section : sections(report)) {
            Document svg = parsed(SectionSvg.inline(section, "s"));
            assertThat(svg.getElementsByTagName("script").getLength()).isZero();
            assertThat(svg.getDocumentElement().getTextContent()).doesNotContain("\u202E");
        }
    }

    @Test
    void theSameReportGivesTheSameFile() throws Exception {
        String first = SectionSvg.standalone(sections(SamplePlan.report()));
        assertThat(first).isEqualTo(SectionSvg.standalone(sections(SamplePlan.report())));
        assertThat(parsed(first).getElementsByTagName("svg").getLength()).isGreaterThan(2);
    }
}
