package org.fallrule.report.pdf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;

/** What each piece of a document is, for whoever has it read aloud: headings, paragraphs, tables (ISO 32000-1, 14.7 and 14.8). */
final class Tags {
    private final PDDocument document;
    private final PDStructureTreeRoot root = new PDStructureTreeRoot();
    private final PDStructureElement whole;
    /** For each page the elements that its marked pieces belong to, in the order of their numbers. */
    private final List<COSArray> pages = new ArrayList<>();
    /** The elements that annotations belong to, in the order of the document. */
    private final Map<PDAnnotation, PDStructureElement> held = new LinkedHashMap<>();

    Tags(PDDocument document) {
        this.document = document;
        this.whole = new PDStructureElement("Document", root);
        root.appendKid(whole);
        PDMarkInfo marked = new PDMarkInfo();
        marked.setMarked(true);
        document.getDocumentCatalog().setMarkInfo(marked);
        document.getDocumentCatalog().setStructureTreeRoot(root);
        document.getDocumentCatalog().setLanguage("en-US");
    }

    PDStructureElement whole() {
        return whole;
    }

    /** A new element under another, such as a table or its row. */
    PDStructureElement under(PDStructureNode parent, String type) {
        PDStructureElement element = new PDStructureElement(type, parent);
        parent.appendKid(element);
        return element;
    }

    /** What a reader hears in place of a drawing. */
    void alternative(PDStructureElement element, String words, PDRectangle box) {
        element.setAlternateDescription(words);
        COSDictionary layout = attribute(element, "Layout");
        layout.setItem(COSName.BBOX, box.getCOSArray());
        layout.setItem(COSName.getPDFName("Placement"), COSName.getPDFName("Block"));
    }

    /** Says of a heading cell whether it is that of a column or of a row. */
    void heads(PDStructureElement cell, String scope) {
        attribute(cell, "Table").setItem(COSName.getPDFName("Scope"), COSName.getPDFName(scope));
    }

    private static COSDictionary attribute(PDStructureElement element, String owner) {
        COSDictionary attribute = new COSDictionary();
        attribute.setItem(COSName.O, COSName.getPDFName(owner));
        element.getCOSObject().setItem(COSName.A, attribute);
        return attribute;
    }

    void begin(PDPage page) {
        page.setStructParents(pages.size());
        page.getCOSObject().setName("Tabs", "S");
        pages.add(new COSArray());
    }

    /** Joins the next piece of the last page to an element, and gives the piece's number. */
    int mark(PDStructureElement element, PDPage page) {
        COSArray pieces = pages.get(pages.size() - 1);
        int number = pieces.size();
        pieces.add(element.getCOSObject());
        COSDictionary reference = new COSDictionary();
        reference.setItem(COSName.TYPE, COSName.getPDFName("MCR"));
        reference.setItem(COSName.PG, page);
        reference.setInt(COSName.MCID, number);
        kids(element).add(reference);
        return number;
    }

    /** Joins an annotation of a page to the element that it belongs to. */
    void holds(PDStructureElement element, PDAnnotation annotation, PDPage page) {
        COSDictionary reference = new COSDictionary();
        reference.setItem(COSName.TYPE, COSName.getPDFName("OBJR"));
        reference.setItem(COSName.OBJ, annotation);
        reference.setItem(COSName.PG, page);
        kids(element).add(reference);
        held.put(annotation, element);
    }

    private static COSArray kids(PDStructureElement element) {
        COSDictionary dictionary = element.getCOSObject();
        if (!(dictionary.getDictionaryObject(COSName.K) instanceof COSArray)) {
            dictionary.setItem(COSName.K, new COSArray());
        }
        return (COSArray) dictionary.getDictionaryObject(COSName.K);
    }

    /** Writes which page's pieces belong to what. */
    void close() {
        COSArray numbers = new COSArray();
        for (int i = 0; i < pages.size(); i++) {
            numbers.add(COSInteger.get(i));
            numbers.add(pages.get(i));
        }
        int next = pages.size();
        for (Map.Entry<PDAnnotation, PDStructureElement> each : held.entrySet()) {
            each.getKey().setStructParent(next);
            numbers.add(COSInteger.get(next));
            numbers.add(each.getValue().getCOSObject());
            next++;
        }
        COSDictionary tree = new COSDictionary();
        tree.setItem(COSName.NUMS, numbers);
        root.getCOSObject().setItem(COSName.PARENT_TREE, tree);
        root.setParentTreeNextKey(next);
        document.getDocumentCatalog().setStructureTreeRoot(root);
    }
}
