package io.github.brinewright.internal.document;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Calendar;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;

/**
 * A file that a document carries as its source data.
 *
 * @param name of the file
 * @param type of its content, as application/json
 * @param description for the reader
 * @param content of the file
 */
public record Attachment(String name, String type, String description, byte[] content) {
  private static final COSName RELATIONSHIP = COSName.getPDFName("AFRelationship");
  private static final COSName ASSOCIATED = COSName.getPDFName("AF");

  void attachTo(PDDocument document, Calendar date) throws IOException {
    PDEmbeddedFile file =
        new PDEmbeddedFile(document, new ByteArrayInputStream(content), COSName.FLATE_DECODE);
    file.setSubtype(type);
    file.setSize(content.length);
    file.setCreationDate(date);
    file.setModDate(date);
    PDComplexFileSpecification specification = new PDComplexFileSpecification();
    specification.setFile(name);
    specification.setFileUnicode(name);
    specification.setFileDescription(description);
    specification.setEmbeddedFile(file);
    specification.setEmbeddedFileUnicode(file);
    specification.getCOSObject().setItem(RELATIONSHIP, COSName.getPDFName("Source"));
    PDEmbeddedFilesNameTreeNode tree = new PDEmbeddedFilesNameTreeNode();
    tree.setNames(Map.of(name, specification));
    PDDocumentNameDictionary names = new PDDocumentNameDictionary(document.getDocumentCatalog());
    names.setEmbeddedFiles(tree);
    document.getDocumentCatalog().setNames(names);
    COSArray associated = new COSArray();
    associated.add(specification);
    document.getDocumentCatalog().getCOSObject().setItem(ASSOCIATED, associated);
  }
}
