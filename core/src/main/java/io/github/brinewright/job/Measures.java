package io.github.brinewright.job;

import io.github.brinewright.quantity.Bounds;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Length;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Minutes;
import io.github.brinewright.quantity.Volume;
import java.math.BigDecimal;
import java.time.Duration;

/** Columns of money and measures that stand in several files, each with its unit. */
final class Measures {
  private static final double HIGHEST_PRICE = 1_000_000;

  private Measures() {}

  /** An amount of money in the currency of the job. */
  static Typed<BigDecimal> price(String name) {
    return Typed.amount(name, 0, HIGHEST_PRICE);
  }

  static Typed<Hardness> gpg(String name, Bounds<Hardness> range) {
    return Typed.number(name, range, Hardness::ofGrainsPerGallon, Hardness::grainsPerGallon)
        .unit("gpg");
  }

  static Typed<HardnessAmount> grains(String name, Bounds<HardnessAmount> range) {
    return Typed.number(name, range, HardnessAmount::ofGrains, HardnessAmount::grains)
        .unit("grains");
  }

  static Typed<Volume> gallons(String name, Bounds<Volume> range) {
    return Typed.number(name, range, Volume::ofGallons, Volume::gallons).unit("gal");
  }

  static Typed<Volume> cubicFeet(String name, Bounds<Volume> range) {
    return Typed.number(name, range, Volume::ofCubicFeet, Volume::cubicFeet).unit("ft³");
  }

  static Typed<FlowRate> gpm(String name, Bounds<FlowRate> range) {
    return Typed.number(name, range, FlowRate::ofGallonsPerMinute, FlowRate::gallonsPerMinute)
        .unit("gpm");
  }

  static Typed<Length> inches(String name, Bounds<Length> range) {
    return Typed.number(name, range, Length::ofInches, Length::inches).unit("in");
  }

  static Typed<Mass> pounds(String name, Bounds<Mass> range) {
    return Typed.number(name, range, Mass::ofPounds, Mass::pounds).unit("lb");
  }

  static Typed<Duration> minutes(String name, Bounds<Duration> range) {
    return Typed.<Duration>number(name, range, Minutes::toDuration, Minutes::of).unit("min");
  }
}
