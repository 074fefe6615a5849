package io.github.brinewright.chart;

/** Round steps of an axis. */
final class Ticks {
  private Ticks() {}

  /**
   * A step of 1, 2, 2.5 or 5 times a power of ten that divides a height into about {@code parts}.
   */
  static double step(double height, int parts) {
    double rough = Math.max(height, 1e-9) / parts;
    double power = Math.pow(10, Math.floor(Math.log10(rough)));
    for (double factor : new double[] {1, 2, 2.5, 5}) {
      if (factor * power >= rough) {
        return factor * power;
      }
    }
    return 10 * power;
  }
}
