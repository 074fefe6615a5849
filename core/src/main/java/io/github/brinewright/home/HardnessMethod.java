package io.github.brinewright.home;

import io.github.brinewright.quantity.Hardness;
import java.util.function.UnaryOperator;

/** How the hardness is known. */
public enum HardnessMethod {
  /** A laboratory's analysis: 5 %, common practice. */
  LABORATORY(hardness -> hardness.times(0.05)),

  /** A drop test at the visit, which counts whole grains: 1 gpg, common practice. */
  DROP_TEST(hardness -> Hardness.ofGrainsPerGallon(1)),

  /** A test strip: 20 %, common practice. */
  STRIP(hardness -> hardness.times(0.2)),

  /** What the water utility states; nobody measured at the home: 15 %, common practice. */
  UTILITY_AVERAGE(hardness -> hardness.times(0.15));

  private final UnaryOperator<Hardness> deviation;

  HardnessMethod(UnaryOperator<Hardness> deviation) {
    this.deviation = deviation;
  }

  /**
   * {@return the standard deviation of the true hardness around the one stated}
   *
   * @param stated hardness as it was stated
   */
  public Hardness standardDeviation(Hardness stated) {
    return deviation.apply(stated);
  }

  /** {@return whether somebody measured at the home} */
  public boolean measured() {
    return this != UTILITY_AVERAGE;
  }
}
