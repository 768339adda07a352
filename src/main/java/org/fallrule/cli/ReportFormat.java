package org.fallrule.cli;

import java.nio.charset.StandardCharsets;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.fallrule.report.Report;
import org.fallrule.report.data.FindingsCsv;
import org.fallrule.report.data.FindingsGeoJson;
import org.fallrule.report.data.FindingsJson;
import org.fallrule.report.html.HtmlReport;
import org.fallrule.report.map.PlanDrawing;
import org.fallrule.report.map.Sheet;
import org.fallrule.report.map.SvgWriter;
import org.fallrule.report.pdf.PrintSettings;
import org.fallrule.report.pdf.ReportPdf;
import org.fallrule.report.profile.SectionDrawing;
import org.fallrule.report.profile.SectionForm;
import org.fallrule.report.profile.SectionSvg;
import org.fallrule.report.text.Ink;
import org.fallrule.report.text.TextReport;

/** The forms that a report is written in, each with its file's name. The names are what a person types. */
enum ReportFormat {
    text("report.txt", report -> TextReport.write(report, Ink.PLAIN)),
    json("findings.json", (report, settings) -> FindingsJson.bytes(report)),
    geojson("findings.geojson", FindingsGeoJson::write),
    csv("findings.csv", FindingsCsv::write),
    html("report.html", HtmlReport::write),
    svg(
            "plan.svg",
            report -> PlanDrawing.of(report, 0.6, 1.0)
                    .map(drawing -> SvgWriter.standalone(drawing, Sheet.WIDE))
                    .orElse("")),
    sections("sections.svg", ReportFormat::sections),
    pdf("report.pdf", ReportPdf::write);

    private final String file;

    @SuppressWarnings("ImmutableEnumChecker") // a method without state
    private final BiFunction<Report, PrintSettings, byte[]> writer;

    ReportFormat(String file, Function<Report, String> writer) {
        this(file, (report, settings) -> writer.apply(report).getBytes(StandardCharsets.UTF_8));
    }

    ReportFormat(String file, BiFunction<Report, PrintSettings, byte[]> writer) {
        this.file = file;
        this.writer = writer;
    }

    private static String sections(Report report) {
        return SectionSvg.standalone(SectionDrawing.lines(report).stream()
                .flatMap(line -> SectionDrawing.of(report, line, SectionForm.WIDE).stream())
                .toList());
    }

    String file() {
        return file;
    }

    /** The file's bytes; text is UTF-8. */
    byte[] write(Report report, PrintSettings settings) {
        return writer.apply(report, settings);
    }
}
