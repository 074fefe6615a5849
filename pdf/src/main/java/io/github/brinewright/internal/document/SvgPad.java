package io.github.brinewright.internal.document;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Base64;
import java.util.List;
import java.util.Map;

/**
 * Draws a picture as Scalable Vector Graphics. Each colour is written as an attribute and named as
 * a class, so that a style sheet may choose others.
 */
public final class SvgPad implements Pad {
  private static final Map<Ink, String> NAMES =
      Map.of(
          Ink.TEXT, "ink",
          Ink.QUIET, "quiet",
          Ink.HAIRLINE, "hairline",
          Ink.PAPER, "paper",
          Ink.MIDDLE, "middle");
  private static final String OTHER = "accent";

  private final StringBuilder out = new StringBuilder();

  @Override
  public void text(double x, double baseline, String text, TextStyle style) {
    if (text.isEmpty()) {
      return;
    }
    boolean bold = style.weight() == Typeface.Weight.BOLD;
    out.append("<text x=\"").append(number(x)).append("\" y=\"").append(number(baseline));
    out.append("\" font-size=\"").append(number(style.size()));
    out.append(bold ? "\" font-weight=\"600" : "").append('"');
    out.append(paint("fill", style.ink())).append('>').append(escaped(text)).append("</text>");
  }

  @Override
  public void path(List<Canvas.Point> points, double width, Ink ink, Canvas.Stroke stroke) {
    out.append("<path fill=\"none\" stroke-width=\"").append(number(width)).append("\" d=\"");
    char command = 'M';
    for (Canvas.Point point : points) {
      out.append(command).append(number(point.x())).append(' ').append(number(point.y()));
      command = 'L';
    }
    out.append('"').append(stroke.dashes());
    out.append(paint("stroke", ink)).append("/>");
  }

  @Override
  public void fill(double x, double top, double width, double tall, Ink ink) {
    out.append("<rect").append(box(x, top, width, tall)).append(paint("fill", ink)).append("/>");
  }

  @Override
  public void picture(byte[] content, double x, double top, double width, double tall) {
    boolean png = content.length > 0 && content[0] == (byte) 0x89;
    out.append("<image").append(box(x, top, width, tall)).append(" href=\"data:image/");
    out.append(png ? "png" : "jpeg").append(";base64,");
    out.append(Base64.getEncoder().encodeToString(content)).append("\"/>");
  }

  /**
   * The whole picture.
   *
   * @param width of it
   * @param height of it
   * @param name what it says, for those who do not see it
   */
  public String svg(double width, double height, String name) {
    return "<svg role=\"img\" aria-label=\""
        + escaped(name)
        + "\" viewBox=\"0 0 "
        + number(width)
        + " "
        + number(height)
        + "\" xmlns=\"http://www.w3.org/2000/svg\">"
        + out
        + "</svg>";
  }

  private static String box(double x, double top, double width, double tall) {
    return " x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\""
        .formatted(number(x), number(top), number(width), number(tall));
  }

  private static String paint(String what, Ink ink) {
    String name = NAMES.getOrDefault(ink, OTHER);
    return " %s=\"%s\" class=\"%s-%s\"".formatted(what, ink.hex(), what, name);
  }

  private static String number(double value) {
    return BigDecimal.valueOf(value)
        .setScale(2, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
