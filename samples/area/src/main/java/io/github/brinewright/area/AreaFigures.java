package io.github.brinewright.area;

import io.github.brinewright.model.Phrase;
import io.github.brinewright.simulation.Spread;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Rough;
import java.math.BigDecimal;

/**
 * Sums as they are printed: rounded as forecasts are, with their range, in units of a town.
 *
 * @param metric whether tonnes and cubic metres are printed, or tons of 2,000 lb and gallons
 */
record AreaFigures(boolean metric) {
  private static final double MILLIGRAMS_A_TONNE = 1e9;
  private static final double MILLIGRAMS_A_TON = 2_000 * 453_592.37;
  private static final double MILLILITRES_A_CUBIC_METRE = 1e6;
  private static final double MILLILITRES_A_THOUSAND_GALLONS = 3_785_411.784;

  Phrase mass(Spread milligrams) {
    return ranged(milligrams.times(1 / (metric ? MILLIGRAMS_A_TONNE : MILLIGRAMS_A_TON)));
  }

  Phrase volume(Spread millilitres) {
    return ranged(
        millilitres.times(
            1 / (metric ? MILLILITRES_A_CUBIC_METRE : MILLILITRES_A_THOUSAND_GALLONS)));
  }

  static Phrase ranged(Spread spread) {
    return new Phrase.Ranged(rough(spread.mean()), rough(spread.low()), rough(spread.high()));
  }

  static Figure rough(double value) {
    BigDecimal rounded = Rough.of(value);
    return Figure.of(rounded.doubleValue(), rounded.scale());
  }

  /** A change in whole per cent, with its sign and its range. */
  static Phrase change(Spread share) {
    Phrase middle = signed(share.mean());
    Phrase low = signed(share.low());
    Phrase high = signed(share.high());
    return low.equals(high) ? middle : Phrase.text("area.change", middle, low, high);
  }

  private static Phrase signed(double share) {
    long percent = Math.round(100 * share);
    Phrase size = Phrase.of(Figure.percent(Math.abs(percent) / 100.0));
    return percent == 0 ? size : Phrase.text(percent > 0 ? "area.more" : "area.less", size);
  }
}
