package io.github.brinewright.documents;

import io.github.brinewright.cost.ServicePrices;
import io.github.brinewright.home.PresentControl;
import io.github.brinewright.home.PresentControl.ByHardness;
import io.github.brinewright.home.PresentControl.ByVolume;
import io.github.brinewright.home.PresentSalt;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.home.Site;
import io.github.brinewright.job.QuotedHome;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Length;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Minutes;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.service.ServiceStudy;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.softener.Vessel;
import java.time.DayOfWeek;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

/** Softeners by chance in homes by chance, the same ones each time. */
final class RandomPresent {
  private final Random chance;

  private RandomPresent(long seed) {
    chance = new Random(seed);
  }

  static ServiceStudy study(int number) {
    RandomPresent random = new RandomPresent(20260701L + number);
    List<QuotedHome> homes = RandomHomes.JOB.homes();
    Site site = with(homes.get(number % homes.size()).site(), random.softener());
    ServicePrices prices = number % 3 == 0 ? ServicePrices.NONE : PresentHomes.PRICES;
    return PresentHomes.study(site, prices);
  }

  private static Site with(Site home, PresentSoftener present) {
    return Site.of(home.id(), home.water(), home.household())
        .contact(home.contact())
        .supply(home.supply())
        .target(home.target())
        .present(present)
        .build();
  }

  private PresentSoftener softener() {
    PresentSoftener.Builder builder = PresentSoftener.of(control());
    bed(builder);
    if (likely()) {
      builder.ageYears(chance.nextInt(30));
    }
    if (likely()) {
      builder.salt(salt());
    }
    if (chance.nextBoolean()) {
      builder.hour(chance.nextInt(24));
    }
    if (chance.nextInt(3) == 0) {
      builder.saltBought(Mass.ofPounds(between(0, 3000)));
    }
    if (chance.nextInt(3) == 0) {
      builder.hardnessAfter(Hardness.ofGrainsPerGallon(between(0, 10)));
    }
    if (chance.nextInt(4) == 0) {
      builder.regenerant(Regenerant.POTASSIUM_CHLORIDE);
    }
    return builder.build();
  }

  private void bed(PresentSoftener.Builder builder) {
    switch (chance.nextInt(4)) {
      case 0 -> builder.resinVolume(Volume.ofCubicFeet(between(0.4, 4)));
      case 1 ->
          builder.vessel(
              new Vessel(
                  Length.ofInches(8 + chance.nextInt(8)),
                  Length.ofInches(40 + chance.nextInt(25))));
      default -> builder.rated(HardnessAmount.ofGrains(1000 * (12 + chance.nextInt(80))));
    }
  }

  private PresentControl control() {
    return switch (chance.nextInt(5)) {
      case 0 -> PresentControl.clock(1 + chance.nextInt(14));
      case 1 -> PresentControl.clock(1 + chance.nextInt(99));
      case 2 -> PresentControl.weekdays(weekdays());
      case 3 -> new ByVolume(gallons(200, 5000), chance.nextBoolean(), reserve(), longest());
      default ->
          new ByHardness(
              Hardness.ofGrainsPerGallon(between(5, 60)),
              likely()
                  ? Optional.of(HardnessAmount.ofGrains(between(20_000, 60_000)))
                  : Optional.empty(),
              chance.nextBoolean(),
              reserve(),
              longest());
    };
  }

  private Set<DayOfWeek> weekdays() {
    Set<DayOfWeek> days = EnumSet.of(DayOfWeek.of(1 + chance.nextInt(7)));
    for (DayOfWeek day : DayOfWeek.values()) {
      if (chance.nextInt(3) == 0) {
        days.add(day);
      }
    }
    return days;
  }

  private PresentSalt salt() {
    return switch (chance.nextInt(3)) {
      case 0 -> new PresentSalt.Dosed(SaltDosage.ofPoundsPerCubicFoot(between(1.5, 25)));
      case 1 -> new PresentSalt.EachTime(Mass.ofPounds(between(1, 40)));
      default ->
          new PresentSalt.Refill(
              Minutes.toDuration(between(1, 40)),
              likely()
                  ? Optional.of(FlowRate.ofGallonsPerMinute(between(0.1, 1.5)))
                  : Optional.empty());
    };
  }

  private Optional<Volume> reserve() {
    return likely() ? Optional.empty() : Optional.of(gallons(10, 150));
  }

  private Optional<Integer> longest() {
    return likely() ? Optional.empty() : Optional.of(1 + chance.nextInt(30));
  }

  private Volume gallons(double from, double to) {
    return Volume.ofGallons(between(from, to));
  }

  /** A number with few digits, as people write them. */
  private double between(double from, double to) {
    double exact = from + chance.nextDouble() * (to - from);
    double step = to > 100 ? 10 : 0.5;
    return Math.max(from, Math.rint(exact / step) * step);
  }

  private boolean likely() {
    return chance.nextInt(3) > 0;
  }
}
