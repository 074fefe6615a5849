package io.github.brinewright.area;

import io.github.brinewright.quantity.Hardness;
import java.io.Serializable;

/**
 * What a study takes as given.
 *
 * @param sourceGpg hardness that the public supply is treated to; 1 to 30 gpg
 * @param draws of what is not known; 0 to 1,000
 * @param seed of the draws
 */
public record Assumed(double sourceGpg, int draws, long seed) implements Serializable {
  /** 7 gpg, 120 mg/L: the end of what USGS calls moderately hard. */
  public static final Assumed USUAL = new Assumed(7, 20, 20_260_901L);

  /**
   * @param sourceGpg hardness that the public supply is treated to
   * @param draws of what is not known
   * @param seed of the draws
   * @throws IllegalArgumentException outside the ranges above
   */
  public Assumed {
    if (!(sourceGpg >= 1 && sourceGpg <= 30)) {
      throw new IllegalArgumentException(
          "hardness of the treated source is " + sourceGpg + " gpg; choose 1 to 30 gpg");
    }
    if (draws < 0 || draws > 1_000) {
      throw new IllegalArgumentException("draws are " + draws + "; choose 0 to 1,000");
    }
  }

  Hardness source() {
    return Hardness.ofGrainsPerGallon(sourceGpg);
  }
}
