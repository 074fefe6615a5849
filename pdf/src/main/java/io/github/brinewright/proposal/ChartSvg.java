package io.github.brinewright.proposal;

import io.github.brinewright.internal.document.Ink;
import io.github.brinewright.internal.layout.Charts;
import io.github.brinewright.model.Chart;
import io.github.brinewright.words.Wording;

/**
 * Charts of documents as pictures for a screen, in Scalable Vector Graphics: the same models, drawn
 * by the same code as in PDF. Text is meant to be set in {@link DocumentFont}. Colours are
 * attributes, and classes besides, as {@code fill-accent} or {@code stroke-quiet}, by which a style
 * sheet may replace them.
 *
 * @param words in the reader's language
 * @param accent the dealer's colour, as {@code #1F5C66}; darkened until it can be read on white
 */
public record ChartSvg(Wording words, String accent) {
  /** Narrower pictures have no room for their names and figures. */
  private static final double NARROWEST = 240;

  /**
   * {@return a chart as an {@code svg} element with its alternative text}
   *
   * @param chart what it shows
   * @param points its width, 240 or more
   * @throws IllegalArgumentException when it is narrower
   */
  public String draw(Chart chart, double points) {
    if (!(points >= NARROWEST)) {
      throw new IllegalArgumentException(
          "a chart is " + points + " points wide, but must be " + NARROWEST + " at least");
    }
    return new Charts(words, Ink.of(accent).readable()).svg(chart, points);
  }
}
