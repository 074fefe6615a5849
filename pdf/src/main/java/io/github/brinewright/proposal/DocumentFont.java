package io.github.brinewright.proposal;

import io.github.brinewright.internal.document.Typeface;

/** The font that documents are set in, Source Sans 3 by the SIL Open Font License. */
public enum DocumentFont {
  /** Running text. */
  REGULAR(Typeface.Weight.REGULAR),
  /** Headings and what stands out. */
  SEMIBOLD(Typeface.Weight.BOLD);

  private final Typeface.Weight weight;

  DocumentFont(Typeface.Weight weight) {
    this.weight = weight;
  }

  /** {@return the font as a TrueType file} */
  public byte[] trueType() {
    return weight.trueType();
  }
}
