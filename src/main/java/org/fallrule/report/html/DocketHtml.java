package org.fallrule.report.html;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import org.fallrule.report.docket.Docket;

/** The docket as one HTML page that stands alone beside the reports. */
public final class DocketHtml {
    private static final TemplateEngine TEMPLATES = TemplateEngine.createPrecompiled(
            null, ContentType.Html, DocketHtml.class.getClassLoader(), "org.fallrule.report.html.page");

    private DocketHtml() {}

    /**
     * The page's text, to be stored as UTF-8. The same docket gives the same text.
     *
     * @param report the file in each report's folder that the page leads to
     */
    public static String write(Docket docket, String report) {
        StringOutput page = new StringOutput();
        TEMPLATES.render("docket.jte", new DocketPageBuilder(docket, report).page(), page);
        return page.toString();
    }
}
