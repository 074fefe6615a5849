package io.github.brinewright.service;

import io.github.brinewright.home.PresentControl;
import io.github.brinewright.home.PresentSalt;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Minutes;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Volume;
import java.time.DayOfWeek;
import java.util.EnumSet;
import java.util.Optional;

/** Softeners as visits find them. */
final class Found {
  private Found() {}

  static PresentSoftener.Builder clock(int days, double rating) {
    return PresentSoftener.of(PresentControl.clock(days)).rated(grains(rating));
  }

  static PresentSoftener.Builder weekdays(double rating, DayOfWeek first, DayOfWeek... rest) {
    return PresentSoftener.of(PresentControl.weekdays(EnumSet.of(first, rest)))
        .rated(grains(rating));
  }

  /** A meter that waits for the night, set to a volume, and holding back a reserve besides. */
  static PresentSoftener.Builder meter(double gallons, double reserve, double rating) {
    Optional<Volume> held = Optional.of(Volume.ofGallons(reserve)).filter(Volume::isPositive);
    return PresentSoftener.of(
            new PresentControl.ByVolume(Volume.ofGallons(gallons), false, held, Optional.empty()))
        .rated(grains(rating));
  }

  /** A meter that waits for the night and was told hardness and capacity. */
  static PresentSoftener.Builder told(double gpg, double capacity, double rating) {
    return PresentSoftener.of(
            PresentControl.metered(Hardness.ofGrainsPerGallon(gpg), grains(capacity)))
        .rated(grains(rating));
  }

  static HardnessAmount grains(double value) {
    return HardnessAmount.ofGrains(value);
  }

  static PresentSalt each(double pounds) {
    return new PresentSalt.EachTime(Mass.ofPounds(pounds));
  }

  static PresentSalt dosed(double pounds) {
    return new PresentSalt.Dosed(SaltDosage.ofPoundsPerCubicFoot(pounds));
  }

  static PresentSalt refill(double minutes, double gpm) {
    return new PresentSalt.Refill(
        Minutes.toDuration(minutes), Optional.of(FlowRate.ofGallonsPerMinute(gpm)));
  }
}
