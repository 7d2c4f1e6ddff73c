package railtrim.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDNumberTreeNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDParentTreeValue;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;

/** What each piece of a page is (heading, paragraph, table cell), for programs that read a page aloud (ISO 32000-1, 14.7 and 14.8). */
final class Structure {
    private final PDStructureTreeRoot root = new PDStructureTreeRoot();
    private final PDStructureElement whole = new PDStructureElement("Document", root);
    private final List<COSArray> owners = new ArrayList<>();

    Structure() {
        root.appendKid(whole);
    }

    PDStructureElement whole() {
        return whole;
    }

    PDStructureElement in(PDStructureNode parent, String type) {
        PDStructureElement element = new PDStructureElement(type, parent);
        parent.appendKid(element);
        return element;
    }

    void page(PDPage page) {
        page.setStructParents(owners.size());
        page.getCOSObject().setItem(COSName.getPDFName("Tabs"), COSName.S);
        owners.add(new COSArray());
    }

    /** @return the number under which the page's next piece belongs to this element */
    int next(PDStructureElement element, PDPage page) {
        COSArray onPage = owners.get(page.getStructParents());
        int number = onPage.size();
        onPage.add(element);
        PDMarkedContentReference reference = new PDMarkedContentReference();
        reference.setPage(page);
        reference.setMCID(number);
        element.appendKid(reference);
        return number;
    }

    void into(PDDocument document) {
        Map<Integer, PDParentTreeValue> numbers = new TreeMap<>();
        for (int i = 0; i < owners.size(); i++) {
            numbers.put(i, new PDParentTreeValue(owners.get(i)));
        }
        PDNumberTreeNode tree = new PDNumberTreeNode(PDParentTreeValue.class);
        tree.setNumbers(numbers);
        root.setParentTree(tree);
        root.setParentTreeNextKey(owners.size());
        document.getDocumentCatalog().setStructureTreeRoot(root);
        PDMarkInfo marked = new PDMarkInfo();
        marked.setMarked(true);
        document.getDocumentCatalog().setMarkInfo(marked);
    }
}
