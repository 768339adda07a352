package org.fallrule.report.html;

import org.fallrule.report.docket.Docket;

/** The docket as one HTML page that stands alone beside the reports. */
public final class DocketHtml {
    private DocketHtml() {}

    /**
     * The page's text, to be stored as UTF-8. The same docket gives the same text.
     *
     * @param report the file in each report's folder that the page leads to
     */
    public static String write(Docket docket, String report) {
        return HtmlReport.rendered("docket.jte", new DocketPageBuilder(docket, report).page());
    }
}
