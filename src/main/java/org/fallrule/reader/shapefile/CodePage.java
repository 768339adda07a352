package org.fallrule.reader.shapefile;

import java.nio.charset.Charset;
import java.util.Optional;
import org.fallrule.document.Excerpt;
import org.fallrule.reader.layer.Findings;

/** Finds the encoding of a table's texts: what the {@code .cpg} names, else what the table's language byte means, else windows-1252. */
final class CodePage {
    private static final int LONGEST_NAME = 40;
    private static final Charset LAST_RESORT = Charset.forName("windows-1252");

    private final ShownFile dbf;
    private final Findings findings;

    CodePage(ShownFile dbf, Findings findings) {
        this.dbf = dbf;
        this.findings = findings;
    }

    /**
     * The encoding, with a note when it had to be taken for granted.
     *
     * @param cpg the file that names it, when there is one
     * @param language the table's language byte, 0 for none
     */
    Charset charset(Optional<ShownFile> cpg, int language) {
        return cpg.flatMap(this::named)
                .or(() -> LanguageDriver.charset(language))
                .orElseGet(() -> lastResort(language));
    }

    private Optional<Charset> named(ShownFile cpg) {
        String name = cpg.text();
        Optional<Charset> charset = CodePageName.charset(name);
        if (charset.isEmpty()) {
            findings.note(
                    cpg.place(),
                    "names the encoding " + AsciiText.quoted(Excerpt.of(name, LONGEST_NAME))
                            + ", which is not known; wanted a name such as UTF-8 or 1252; the table's own mark was used; "
                            + "write the right name into it");
        }
        return charset;
    }

    private Charset lastResort(int language) {
        String found = language == 0 ? "says nothing of its encoding" : "has the unknown language byte " + language;
        findings.note(
                dbf.place(),
                found
                        + "; its texts were read as windows-1252; put the encoding's name, such as UTF-8, into a .cpg beside it");
        return LAST_RESORT;
    }
}
