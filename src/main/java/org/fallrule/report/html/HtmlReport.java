package org.fallrule.report.html;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import org.fallrule.report.Report;

/** The report as one HTML page that stands alone. */
public final class HtmlReport {
    private static final TemplateEngine TEMPLATES = TemplateEngine.createPrecompiled(
            null, ContentType.Html, HtmlReport.class.getClassLoader(), "org.fallrule.report.html.page");

    private HtmlReport() {}

    /** The page's text, to be stored as UTF-8. The same report gives the same text. */
    public static String write(Report report) {
        return rendered("report.jte", new PageBuilder(report).page());
    }

    /** The same page, which shows a newer one that was written in its place whenever nobody is using it. */
    public static String writeWatched(Report report) {
        return write(report).replaceFirst("<html lang=\"en\">", "<html lang=\"en\" data-watched>");
    }

    static String rendered(String template, Object page) {
        StringOutput text = new StringOutput();
        TEMPLATES.render(template, page, text);
        return text.toString();
    }
}
