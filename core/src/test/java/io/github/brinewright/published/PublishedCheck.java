package io.github.brinewright.published;

/** One published figure, as its row in published-checks.csv states it. */
record PublishedCheck(
    String id,
    String quantity,
    double expected,
    String tolerance,
    String reason,
    String source,
    String howKnown) {
  /** The tolerance in the unit of the figure. */
  double absoluteTolerance() {
    String text = tolerance.strip();
    if (text.endsWith("%")) {
      return Math.abs(expected) * Double.parseDouble(text.substring(0, text.length() - 1)) / 100;
    }
    if (text.endsWith("rel")) {
      return Math.abs(expected) * Double.parseDouble(text.substring(0, text.length() - 3).strip());
    }
    return Double.parseDouble(text);
  }

  @Override
  public String toString() {
    return id + " " + quantity;
  }
}
