package io.github.brinewright.internal.document;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;

/** Writes tags as the structure tree of a document, with the way back from content to tag. */
final class StructureTree {
  private static final COSName TABLE = COSName.getPDFName("Table");
  private static final COSName SCOPE = COSName.getPDFName("Scope");

  private final PDDocument document;
  private final List<PDPage> pages;
  private final Map<Integer, List<COSDictionary>> parents = new HashMap<>();
  private final List<COSDictionary> widgetParents = new ArrayList<>();

  StructureTree(PDDocument document, List<PDPage> pages) {
    this.document = document;
    this.pages = pages;
  }

  void write(Tag root) {
    PDStructureTreeRoot tree = new PDStructureTreeRoot();
    tree.appendKid(element(root, tree));
    tree.getCOSObject().setItem(COSName.PARENT_TREE, parentTree());
    tree.setParentTreeNextKey(pages.size() + widgetParents.size());
    document.getDocumentCatalog().setStructureTreeRoot(tree);
  }

  private PDStructureElement element(Tag tag, PDStructureNode parent) {
    PDStructureElement element = new PDStructureElement(tag.role().type(), parent);
    if (tag.alternative() != null) {
      element.setAlternateDescription(tag.alternative());
    }
    if (tag.language() != null) {
      element.setLanguage(tag.language());
    }
    if (tag.scope() != null) {
      element.getCOSObject().setItem(COSName.A, scope(tag.scope()));
    }
    COSArray kids = new COSArray();
    for (Object kid : tag.kids()) {
      if (kid instanceof Tag child) {
        kids.add(element(child, element).getCOSObject());
      } else if (kid instanceof Tag.Run run) {
        kids.add(reference(run, element.getCOSObject()));
      } else if (kid instanceof Tag.Widget widget) {
        kids.add(reference(widget, element.getCOSObject()));
      }
    }
    element.getCOSObject().setItem(COSName.K, kids);
    return element;
  }

  private static COSDictionary scope(Tag.Scope scope) {
    COSDictionary attributes = new COSDictionary();
    attributes.setItem(COSName.O, TABLE);
    attributes.setName(SCOPE, scope.value());
    return attributes;
  }

  private COSDictionary reference(Tag.Run run, COSDictionary element) {
    COSDictionary reference = new COSDictionary();
    reference.setItem(COSName.TYPE, COSName.getPDFName("MCR"));
    reference.setItem(COSName.PG, pages.get(run.page()));
    reference.setInt(COSName.MCID, run.id());
    remember(run, element);
    return reference;
  }

  private COSDictionary reference(Tag.Widget widget, COSDictionary element) {
    widget.annotation().setStructParent(pages.size() + widgetParents.size());
    widgetParents.add(element);
    COSDictionary reference = new COSDictionary();
    reference.setItem(COSName.TYPE, COSName.getPDFName("OBJR"));
    reference.setItem(COSName.PG, pages.get(widget.page()));
    reference.setItem(COSName.OBJ, widget.annotation());
    return reference;
  }

  private void remember(Tag.Run run, COSDictionary element) {
    List<COSDictionary> byId = parents.computeIfAbsent(run.page(), page -> new ArrayList<>());
    while (byId.size() <= run.id()) {
      byId.add(element);
    }
    byId.set(run.id(), element);
  }

  private COSDictionary parentTree() {
    COSArray numbers = new COSArray();
    for (int page = 0; page < pages.size(); page++) {
      COSArray elements = new COSArray();
      parents.getOrDefault(page, List.of()).forEach(elements::add);
      numbers.add(COSInteger.get(page));
      numbers.add(elements);
      pages.get(page).setStructParents(page);
    }
    for (int widget = 0; widget < widgetParents.size(); widget++) {
      numbers.add(COSInteger.get(pages.size() + widget));
      numbers.add(widgetParents.get(widget));
    }
    COSDictionary tree = new COSDictionary();
    tree.setItem(COSName.NUMS, numbers);
    return tree;
  }
}
