package io.github.brinewright.internal.document;

import java.io.IOException;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceRGB;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationWidget;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceCharacteristicsDictionary;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceDictionary;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDBorderStyleDictionary;

/** Draws what a field looks like before anybody has filled it. */
final class FieldLook {
  private static final COSName VARIABLE_TEXT = COSName.getPDFName("Tx");
  private static final Ink EDGE = Ink.QUIET;
  private static final float EDGE_WIDTH = 0.8f;

  /** Programs clip a field at its box; an edge too near to it would vanish on a coarse screen. */
  private static final float EDGE_ROOM = 1.2f;

  private static final float INSET = 4;

  /** What is typed, and what a field begins with. */
  static final TextStyle TYPED = TextStyle.BODY;

  private final PDDocument document;
  private final PDFont font;

  FieldLook(PDDocument document, PDFont font) {
    this.document = document;
    this.font = font;
  }

  private interface Drawing {
    void on(PDPageContentStream out, float width, float height) throws IOException;
  }

  /** Gives the widget its appearance and says how a reader's program is to draw it anew. */
  void give(PDAnnotationWidget widget, Field field) throws IOException {
    PDAppearanceDictionary appearance = new PDAppearanceDictionary();
    if (field.shared()) {
      Drawing on = field.kind() == Field.Kind.TICK ? FieldLook::tick : FieldLook::dot;
      COSDictionary states = new COSDictionary();
      states.setItem(COSName.getPDFName(field.state()), stream(widget, on));
      states.setItem(COSName.Off, stream(widget, (out, width, height) -> {}));
      appearance.getCOSObject().setItem(COSName.N, states);
      widget.setAppearanceState(COSName.Off.getName());
    } else {
      appearance.setNormalAppearance(stream(widget, (out, w, h) -> text(out, field, w, h)));
    }
    widget.setAppearance(appearance);
    boolean boxed = field.look() == Field.Look.BOXED;
    if (boxed) {
      PDAppearanceCharacteristicsDictionary edge =
          new PDAppearanceCharacteristicsDictionary(new COSDictionary());
      edge.setBorderColour(
          new PDColor(new float[] {EDGE.red(), EDGE.green(), EDGE.blue()}, PDDeviceRGB.INSTANCE));
      widget.setAppearanceCharacteristics(edge);
    }
    PDBorderStyleDictionary border = new PDBorderStyleDictionary();
    border.setWidth(boxed ? EDGE_WIDTH : 0);
    widget.setBorderStyle(border);
  }

  private PDAppearanceStream stream(PDAnnotationWidget widget, Drawing drawing) throws IOException {
    PDRectangle box = widget.getRectangle();
    PDAppearanceStream stream = new PDAppearanceStream(document);
    stream.setBBox(new PDRectangle(box.getWidth(), box.getHeight()));
    stream.setResources(new PDResources());
    try (PDPageContentStream out = new PDPageContentStream(document, stream)) {
      drawing.on(out, box.getWidth(), box.getHeight());
    }
    return stream;
  }

  private static void edge(PDPageContentStream out, float width, float height) throws IOException {
    out.setStrokingColor(EDGE.red(), EDGE.green(), EDGE.blue());
    out.setLineWidth(EDGE_WIDTH);
    out.addRect(EDGE_ROOM, EDGE_ROOM, width - 2 * EDGE_ROOM, height - 2 * EDGE_ROOM);
    out.stroke();
  }

  private static void tick(PDPageContentStream out, float width, float height) throws IOException {
    out.setStrokingColor(Ink.TEXT.red(), Ink.TEXT.green(), Ink.TEXT.blue());
    out.setLineWidth(1.4f);
    out.moveTo(width * 0.2f, height * 0.5f);
    out.lineTo(width * 0.42f, height * 0.25f);
    out.lineTo(width * 0.82f, height * 0.8f);
    out.stroke();
  }

  /** A filled circle, of four curves. */
  private static void dot(PDPageContentStream out, float width, float height) throws IOException {
    float r = Math.min(width, height) * 0.28f;
    float k = r * 0.5523f;
    float x = width / 2;
    float y = height / 2;
    out.setNonStrokingColor(Ink.TEXT.red(), Ink.TEXT.green(), Ink.TEXT.blue());
    out.moveTo(x + r, y);
    out.curveTo(x + r, y + k, x + k, y + r, x, y + r);
    out.curveTo(x - k, y + r, x - r, y + k, x - r, y);
    out.curveTo(x - r, y - k, x - k, y - r, x, y - r);
    out.curveTo(x + k, y - r, x + r, y - k, x + r, y);
    out.fill();
  }

  private void text(PDPageContentStream out, Field field, float width, float height)
      throws IOException {
    if (field.look() == Field.Look.BOXED) {
      edge(out, width, height);
    }
    String shown = TYPED.fitting(field.shown(), width - 2 * INSET);
    if (field.kind() == Field.Kind.SIGNATURE || shown.isEmpty()) {
      return;
    }
    out.beginMarkedContent(VARIABLE_TEXT);
    out.beginText();
    out.setFont(font, (float) TYPED.size());
    out.setNonStrokingColor(TYPED.ink().red(), TYPED.ink().green(), TYPED.ink().blue());
    out.newLineAtOffset(INSET, (height - 0.66f * (float) TYPED.size()) / 2);
    out.showText(shown);
    out.endText();
    out.endMarkedContent();
  }
}
