package io.github.brinewright.area;

import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.simulation.BedSettings;
import io.github.brinewright.simulation.HardWaterForecast;
import io.github.brinewright.sizing.FoundUnknowns;
import java.util.function.Function;

/**
 * One setting of one bed at one home.
 *
 * @param forecast of the home
 * @param bed as it runs in a draw of what is not known
 * @param share what it holds as a multiple of that, because the water became softer
 */
record Setting(HardWaterForecast forecast, Function<FoundUnknowns, BedSettings> bed, double share) {

  /** The same when the water that it was set for becomes softer, and nobody sets it anew. */
  Setting softened(Hardness before, Hardness after) {
    return new Setting(forecast, bed, share * before.ratioTo(after));
  }

  /** The bed in a draw: harder water, or a resin that takes less, fills it sooner. */
  BedSettings in(Uncertain draw) {
    BedSettings stated = bed.apply(draw.bed());
    double holds = share * draw.capacity() / draw.hardness();
    return holds == 1 ? stated : stated.holding(stated.capacity().times(holds));
  }
}
