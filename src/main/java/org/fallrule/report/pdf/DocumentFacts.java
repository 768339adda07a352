package org.fallrule.report.pdf;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Locale;
import java.util.TimeZone;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/** What a document says of itself: title, date, and that it can be read aloud (ISO 14289-1, 5 and 7.1). */
final class DocumentFacts {
    private static final String PACKET = """
            <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
            <x:xmpmeta xmlns:x="adobe:ns:meta/">
            <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
            <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/"
             xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">
            <dc:title><rdf:Alt><rdf:li xml:lang="x-default">TITLE</rdf:li></rdf:Alt></dc:title>
            <dc:language><rdf:Bag><rdf:li>en-US</rdf:li></rdf:Bag></dc:language>
            <pdfuaid:part>1</pdfuaid:part>
            </rdf:Description>
            </rdf:RDF>
            </x:xmpmeta>
            <?xpacket end="r"?>
            """;

    private final PDDocument document;

    DocumentFacts(PDDocument document) {
        this.document = document;
    }

    void write(String title, LocalDate day) throws IOException {
        document.setDocumentId(0L);
        document.setVersion(1.7f);
        Calendar date = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
        date.clear();
        date.set(day.getYear(), day.getMonthValue() - 1, day.getDayOfMonth());
        document.getDocumentInformation().setTitle(title);
        document.getDocumentInformation().setCreator("Fallrule");
        document.getDocumentInformation().setCreationDate(date);
        document.getDocumentInformation().setModificationDate(date);
        PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
        preferences.setDisplayDocTitle(true);
        document.getDocumentCatalog().setViewerPreferences(preferences);
        PDMetadata packet = new PDMetadata(document);
        packet.importXMPMetadata(PACKET.replace("TITLE", escaped(title)).getBytes(StandardCharsets.UTF_8));
        document.getDocumentCatalog().setMetadata(packet);
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
