package org.fallrule.report.pdf;

import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** The sizes of paper. The names are what a person types. */
public enum Paper {
    letter(PDRectangle.LETTER),
    a4(PDRectangle.A4);

    @SuppressWarnings("ImmutableEnumChecker") // never changed
    private final PDRectangle size;

    Paper(PDRectangle size) {
        this.size = size;
    }

    PDRectangle size() {
        return size;
    }
}
