package io.github.brinewright.internal.document;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.function.ObjDoubleConsumer;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.jspecify.annotations.Nullable;

/** Draws on one page. Points, from the top left corner, downwards. */
public final class Canvas implements Pad {
  /** How a line is drawn: told apart without colour. */
  public enum Stroke {
    SOLID(new float[0]),
    DASHED(new float[] {6, 3}),
    DOTTED(new float[] {1.2f, 2.4f});

    private final float[] pattern;

    Stroke(float[] pattern) {
      this.pattern = pattern;
    }

    /** The pattern as attributes of a path in Scalable Vector Graphics. */
    String dashes() {
      if (this == SOLID) {
        return "";
      }
      String cap = this == DOTTED ? " stroke-linecap=\"round\"" : "";
      return " stroke-dasharray=\"" + pattern[0] + " " + pattern[1] + "\"" + cap;
    }
  }

  /** The page it draws on and what the page belongs to. */
  record Sheet(int number, PDPage page, Form form, ObjDoubleConsumer<String> bookmarks) {}

  /** A point of the page. */
  public record Point(double x, double y) {}

  private final PDDocument document;
  private final PDPageContentStream out;
  private final Map<Typeface.Weight, PDFont> fonts;
  private final double height;
  private final Sheet sheet;
  private int nextRun;
  private @Nullable Tag open;

  Canvas(
      PDDocument document,
      PDPageContentStream out,
      Map<Typeface.Weight, PDFont> fonts,
      Sheet sheet) {
    this.document = document;
    this.out = out;
    this.fonts = fonts;
    this.sheet = sheet;
    height = sheet.page().getMediaBox().getHeight();
  }

  /** Adds a bookmark to a place of this page. */
  public void bookmark(String text, double top) {
    sheet.bookmarks().accept(text, height - top);
  }

  /**
   * Puts a field on the page.
   *
   * @param tag it belongs to, of the role of a form
   */
  public void field(Tag tag, Field field, double x, double top, double width, double tall) {
    PDRectangle box =
        new PDRectangle((float) x, (float) (height - top - tall), (float) width, (float) tall);
    draw(() -> tag.add(new Tag.Widget(sheet.number(), sheet.form().add(field, sheet.page(), box))));
  }

  private interface Drawing {
    void run() throws IOException;
  }

  private void draw(Drawing drawing) {
    try {
      drawing.run();
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  /** What is drawn belongs to the tag. Must not be nested. */
  public void tagged(Tag tag, Runnable drawing) {
    int run = nextRun++;
    tag.add(new Tag.Run(sheet.number(), run));
    marked(tag, drawing, () -> out.beginMarkedContent(COSName.getPDFName(tag.role().type()), run));
  }

  /** What is drawn is ornament: a page number, a repeated header, a rule. Must not be nested. */
  public void ornament(Runnable drawing) {
    marked(null, drawing, () -> out.beginMarkedContent(COSName.ARTIFACT));
  }

  private void marked(@Nullable Tag tag, Runnable drawing, Drawing begin) {
    if (open != null) {
      throw new IllegalStateException("tagged content must not be nested");
    }
    draw(begin);
    open = tag;
    drawing.run();
    open = null;
    draw(out::endMarkedContent);
  }

  @Override
  public void text(double x, double baseline, String text, TextStyle style) {
    if (text.isEmpty()) {
      return;
    }
    draw(
        () -> {
          out.beginText();
          out.setFont(fonts.get(style.weight()), (float) style.size());
          out.setNonStrokingColor(style.ink().red(), style.ink().green(), style.ink().blue());
          out.newLineAtOffset((float) x, (float) (height - baseline));
          out.showText(text);
          out.endText();
        });
  }

  @Override
  public void path(List<Point> points, double width, Ink ink, Stroke stroke) {
    draw(
        () -> {
          out.setStrokingColor(ink.red(), ink.green(), ink.blue());
          out.setLineWidth((float) width);
          out.setLineDashPattern(stroke.pattern, 0);
          out.setLineJoinStyle(1);
          out.setLineCapStyle(stroke == Stroke.DOTTED ? 1 : 0);
          out.moveTo((float) points.get(0).x(), (float) (height - points.get(0).y()));
          for (Point point : points.subList(1, points.size())) {
            out.lineTo((float) point.x(), (float) (height - point.y()));
          }
          out.stroke();
        });
  }

  /** What is drawn shows within a rectangle alone. */
  public void within(double x, double top, double width, double tall, Runnable drawing) {
    draw(
        () -> {
          out.saveGraphicsState();
          out.addRect((float) x, (float) (height - top - tall), (float) width, (float) tall);
          out.clip();
        });
    drawing.run();
    draw(out::restoreGraphicsState);
  }

  @Override
  public void fill(double x, double top, double width, double tall, Ink ink) {
    draw(
        () -> {
          out.setNonStrokingColor(ink.red(), ink.green(), ink.blue());
          out.addRect((float) x, (float) (height - top - tall), (float) width, (float) tall);
          out.fill();
        });
  }

  @Override
  public void picture(byte[] content, double x, double top, double width, double tall) {
    draw(
        () ->
            out.drawImage(
                Picture.of(content, document),
                (float) x,
                (float) (height - top - tall),
                (float) width,
                (float) tall));
  }

  void close() {
    draw(out::close);
  }
}
