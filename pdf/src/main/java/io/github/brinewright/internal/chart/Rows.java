package io.github.brinewright.internal.chart;

import io.github.brinewright.internal.document.Pad;
import io.github.brinewright.internal.document.TextStyle;

/**
 * Names on the left of charts in rows and figures on their right, which line up from chart to
 * chart.
 */
final class Rows {
  /** Room for names, in points. */
  static final double NAMES = 118;

  /** Room for figures, in points. */
  static final double LABELS = 62;

  private static final double GAP = 8;

  private Rows() {}

  /** Bold for a row that stands out. */
  static TextStyle style(boolean marked) {
    return marked ? TextStyle.SMALL.bold() : TextStyle.SMALL;
  }

  /** Writes the name of a row, cut where it is too long. */
  static void name(Pad canvas, double x, double baseline, String name, boolean marked) {
    canvas.text(x, baseline, style(marked).fitting(name, NAMES - GAP), style(marked));
  }

  /** Writes the figure of a row after its drawing. */
  static void label(Pad canvas, double end, double baseline, String label, boolean marked) {
    canvas.text(end + 6, baseline, label, style(marked));
  }
}
