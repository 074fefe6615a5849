package io.github.brinewright.service;

import io.github.brinewright.quantity.Volume;
import io.github.brinewright.simulation.HardWater;
import io.github.brinewright.trace.Figure;

/**
 * Hard water of a mean year because the bed has run out, whatever passes during a regeneration
 * apart.
 *
 * @param runOutDays days on which it has; zero or more
 * @param runOut water that passes hard; zero or more
 */
record HardWaterOut(double runOutDays, Volume runOut) {
  static HardWaterOut of(HardWater hard) {
    return new HardWaterOut(hard.runOutDays(), hard.runOut());
  }

  HardWaterOut less(HardWaterOut rest) {
    return new HardWaterOut(
        Math.max(0, runOutDays - rest.runOutDays),
        runOut.minus(rest.runOut).max(Volume.ofGallons(0)));
  }

  Figure days() {
    return Figure.roughDays(runOutDays);
  }

  Figure gallons() {
    return Figure.roughly(runOut);
  }
}
