package io.github.brinewright.documents;

import io.github.brinewright.internal.document.Ink;
import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;

/** The colours that a document paints with: of text, and of what figures draw. */
final class PaintedColours {
  private static final Set<String> TEXT = Set.of("Tj", "TJ");
  private static final Set<String> FILL = Set.of("f", "f*");
  private static final Set<String> STROKE = Set.of("S", "s");

  private final Set<Ink> text = new HashSet<>();
  private final Set<Ink> figures = new HashSet<>();
  private Ink filling = Ink.TEXT;
  private Ink stroking = Ink.TEXT;
  private boolean inFigure;

  static PaintedColours of(byte[] pdf) throws IOException {
    PaintedColours colours = new PaintedColours();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      for (PDPage page : document.getPages()) {
        colours.read(new PDFStreamParser(page).parse());
      }
    }
    return colours;
  }

  private void read(List<Object> tokens) {
    int begin = 0;
    for (int i = 0; i < tokens.size(); i++) {
      if (tokens.get(i) instanceof Operator operator) {
        carryOut(operator.getName(), tokens.subList(begin, i));
        begin = i + 1;
      }
    }
  }

  private void carryOut(String operator, List<Object> operands) {
    if (operator.equals("rg")) {
      filling = ink(operands);
    } else if (operator.equals("RG")) {
      stroking = ink(operands);
    } else if (operator.equals("BDC") || operator.equals("BMC")) {
      inFigure = operands.get(0) instanceof COSName tag && tag.getName().equals("Figure");
    } else if (operator.equals("EMC")) {
      inFigure = false;
    } else if (TEXT.contains(operator)) {
      text.add(filling);
    } else if (inFigure && FILL.contains(operator)) {
      figures.add(filling);
    } else if (inFigure && STROKE.contains(operator)) {
      figures.add(stroking);
    }
  }

  private static Ink ink(List<Object> operands) {
    float[] parts = new float[3];
    for (int i = 0; i < 3; i++) {
      parts[i] = ((COSNumber) (COSBase) operands.get(i)).floatValue();
    }
    return new Ink(parts[0], parts[1], parts[2]);
  }

  Set<Ink> text() {
    return text;
  }

  Set<Ink> figures() {
    return figures;
  }
}
