package org.fallrule.report.map;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import org.fallrule.finding.Finding;
import org.fallrule.report.Report;
import org.fallrule.report.SamplePlan;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class SvgWriterTest {
    private static final Report REPORT = SamplePlan.report();
    private static final Drawing PLAN = PlanDrawing.of(REPORT, 0.6, 1.0).orElseThrow();

    /** Parses XML with document types refused. */
    private static Document parsed(String svg) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        return factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }

    private static List<Element> withClass(Document svg, String style) {
        NodeList all = svg.getElementsByTagName("*");
        List<Element> found = new ArrayList<>();
        for (int i = 0; i < all.getLength(); i++) {
            if (all.item(i) instanceof Element element
                    && List.of(element.getAttribute("class").split(" ", -1)).contains(style)) {
                found.add(element);
            }
        }
        return found;
    }

    private static List<Drawing> drawings(Report report) {
        List<Drawing> drawings = new ArrayList<>();
        PlanDrawing.of(report, 0.6, 1.0).ifPresent(drawings::add);
        for (Finding finding : report.byNeed()) {
            SnippetDrawing.of(report, finding).ifPresent(drawings::add);
        }
        return drawings;
    }

    @Test
    void theScaleBarIsAsLongAsItSays() throws Exception {
        for (Sheet sheet : List.of(Sheet.WIDE, Sheet.NARROW, Sheet.SNIPPET)) {
            Document svg = parsed(SvgWriter.inline(PLAN, sheet, "map"));
            Element bar = withClass(svg, "m-bar").get(0);
            String says = ((Element) bar.getParentNode())
                    .getElementsByTagName("text")
                    .item(1)
                    .getTextContent();
            double feet = Double.parseDouble(says.replace(" ft", ""));
            double metresOfDrawing =
                    Double.parseDouble(bar.getAttribute("width")) * PLAN.view().getWidth() / sheet.mapWidth();
            assertThat(metresOfDrawing).isCloseTo(feet * 0.3048, within(0.03));
        }
    }

    @Test
    void theScaleBarsOfAllMapsAreRoundAndFit() {
        for (double pxPerMetre : new double[] {0.01, 0.7, 5, 33.3, 200}) {
            ScaleBar bar = ScaleBar.within(120, pxPerMetre, ScaleBar.GroundUnit.FEET);
            assertThat(bar.px()).isCloseTo(bar.number() * 0.3048 * pxPerMetre, within(1e-9));
            assertThat(String.valueOf(bar.number())).matches("[125]0*");
            assertThat(bar.px()).isLessThanOrEqualTo(120);
        }
    }

    @Test
    void theLegendListsWhatIsDrawnAndNothingElse() throws Exception {
        Drawing withoutWater = new Drawing(
                PLAN.title(),
                PLAN.description(),
                PLAN.view(),
                PLAN.unit(),
                PLAN.layers().stream()
                        .filter(layer -> !layer.name().equals("walk"))
                        .toList());
        assertThat(legend(PLAN)).contains("gas", "public walk", "own lot line").doesNotContain("well", "septic");
        assertThat(legend(withoutWater)).contains("gas").doesNotContain("public walk", "walk");
    }

    private static List<String> legend(Drawing drawing) throws Exception {
        return withClass(parsed(SvgWriter.inline(drawing, Sheet.WIDE, "map")), "m-legend").stream()
                .map(Element::getTextContent)
                .toList();
    }

    @Test
    void everyMapIsWellFormedAlsoAsAFileOfItsOwn() throws Exception {
        for (Drawing drawing : drawings(REPORT)) {
            parsed(SvgWriter.inline(drawing, Sheet.SNIPPET, "map"));
        }
        Document file = parsed(SvgWriter.standalone(PLAN, Sheet.WIDE));
        assertThat(file.getElementsByTagName("style").item(0).getTextContent()).contains(".m-gas{");
    }

    @Test
    void everyMapIsWellFormedWhateverTheNamesInThePlan() throws Exception {
        for (String name :
                List.of("</text><script>alert(1)</script>", "\"'&]]>", "\u0000\u0008\uD800x\uFFFE", "\u202Eevil")) {
            for (Drawing drawing : drawings(SamplePlan.report(id -> name + id))) {
                Document svg = parsed(SvgWriter.inline(drawing, Sheet.SNIPPET, "map"));
                assertThat(svg.getElementsByTagName("script").getLength()).isZero();
            }
        }
    }

    @Test
    void labelsLieOnTheSheetAndNotOnEachOther() {
        for (Drawing drawing : drawings(REPORT)) {
            for (int width : new int[] {340, 790}) {
                Viewport viewport = Viewport.of(drawing.view(), width);
                Lettering lettering = new Lettering(drawing, viewport);
                List<Envelope> boxes = new ArrayList<>();
                lettering.words().forEach(word -> boxes.add(word.box()));
                lettering.marks().forEach(mark -> boxes.add(mark.box()));
                assertThat(boxes).as(drawing.title()).isNotEmpty().allMatch(viewport.sheet()::contains);
                for (int i = 0; i < boxes.size(); i++) {
                    assertThat(boxes.subList(i + 1, boxes.size()))
                            .as(drawing.title() + " at " + width)
                            .noneMatch(boxes.get(i)::intersects);
                }
            }
        }
    }

    @Test
    void theDrawingHasItsTitleAndItsDescription() throws Exception {
        Element svg = parsed(SvgWriter.inline(PLAN, Sheet.WIDE, "plan")).getDocumentElement();
        assertThat(svg.getAttribute("aria-labelledby")).isEqualTo("plan-title plan-desc");
        assertThat(svg.getElementsByTagName("title").item(0).getTextContent()).isEqualTo("Plan of Quillfeather Lane 8");
    }
}
