package io.github.brinewright.service;

import io.github.brinewright.home.Bill;
import io.github.brinewright.home.PresentControl;
import io.github.brinewright.home.PresentSalt;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.home.Substance;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Length;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Minutes;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.Regenerant;
import io.github.brinewright.softener.ShippedResins;
import io.github.brinewright.softener.Vessel;
import java.time.DayOfWeek;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

/** A home and the softener in it, drawn at random: what a visit may find, and may not. */
final class RandomVisit {
  private final Random random;

  RandomVisit(long seed) {
    random = new Random(seed);
  }

  ServiceStudy study() {
    return home().finds(present());
  }

  private double between(double low, double high) {
    return low * Math.pow(high / low, random.nextDouble());
  }

  private boolean known() {
    return random.nextBoolean();
  }

  private <T> Optional<T> maybe(java.util.function.Supplier<T> found) {
    return known() ? Optional.of(found.get()) : Optional.empty();
  }

  private Visit home() {
    int people = 1 + random.nextInt(10);
    Visit visit = Visit.to(between(1, 100), people);
    if (known()) {
      visit.with(Substance.IRON, between(0.05, 6));
    }
    if (known()) {
      double gallons = people * between(15, 150) * 60;
      visit.people(home -> home.bill(new Bill(Volume.ofGallons(gallons), 60)));
    }
    if (random.nextInt(4) == 0) {
      visit.people(home -> home.away(random.nextInt(60)).guests(2, random.nextInt(40)));
    }
    return visit;
  }

  private PresentSoftener.Builder present() {
    PresentSoftener.Builder present = PresentSoftener.of(control());
    boolean rated = known();
    boolean measured = known();
    if (rated) {
      present.rated(HardnessAmount.ofGrains(between(3_200, 300_000)));
    }
    if (measured) {
      present.resinVolume(Volume.ofCubicFeet(between(0.1, 10)));
    }
    if (!rated && !measured || random.nextInt(4) == 0) {
      present.vessel(vessel());
    }
    maybe(() -> random.nextInt(61)).ifPresent(present::ageYears);
    maybe(this::salt).ifPresent(present::salt);
    maybe(() -> random.nextInt(24)).ifPresent(present::hour);
    return more(present);
  }

  private PresentSoftener.Builder more(PresentSoftener.Builder present) {
    maybe(() -> ShippedResins.FINE_MESH).ifPresent(present::resin);
    maybe(() -> Mass.ofPounds(random.nextInt(5) == 0 ? 0 : between(10, 20_000)))
        .ifPresent(present::saltBought);
    maybe(() -> Hardness.ofGrainsPerGallon(between(0.1, 100))).ifPresent(present::hardnessAfter);
    if (random.nextInt(4) == 0) {
      present.regenerant(Regenerant.POTASSIUM_CHLORIDE);
    }
    return present;
  }

  private Vessel vessel() {
    return new Vessel(Length.ofInches(between(7, 24)), Length.ofInches(between(36, 72)));
  }

  private PresentControl control() {
    return switch (random.nextInt(4)) {
      case 0 -> PresentControl.clock(1 + random.nextInt(random.nextBoolean() ? 14 : 99));
      case 1 -> PresentControl.weekdays(weekdays());
      case 2 -> byVolume();
      default -> byHardness();
    };
  }

  private Set<DayOfWeek> weekdays() {
    Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
    for (int i = random.nextInt(4); i >= 0; i--) {
      days.add(DayOfWeek.of(1 + random.nextInt(7)));
    }
    return days;
  }

  private PresentControl byVolume() {
    double set = between(10, 10_000);
    return new PresentControl.ByVolume(
        Volume.ofGallons(set),
        random.nextBoolean(),
        maybe(() -> reserve(0.9 * set * random.nextDouble())),
        maybe(() -> 1 + random.nextInt(99)));
  }

  private PresentControl byHardness() {
    double gpg = between(1, 100);
    Optional<HardnessAmount> capacity =
        maybe(() -> HardnessAmount.ofGrains(between(1_000, 200_000)));
    double held = capacity.map(HardnessAmount::grains).orElse(10_000.0) / gpg;
    return new PresentControl.ByHardness(
        Hardness.ofGrainsPerGallon(gpg),
        capacity,
        random.nextBoolean(),
        maybe(() -> reserve(0.9 * held * random.nextDouble())),
        maybe(() -> 1 + random.nextInt(99)));
  }

  private PresentSalt salt() {
    return switch (random.nextInt(3)) {
      case 0 -> new PresentSalt.Dosed(SaltDosage.ofPoundsPerCubicFoot(between(1, 30)));
      case 1 -> new PresentSalt.EachTime(Mass.ofPounds(between(0.2, 60)));
      default ->
          new PresentSalt.Refill(
              Minutes.toDuration(between(0.1, 60)),
              maybe(() -> FlowRate.ofGallonsPerMinute(between(0.05, 5))));
    };
  }

  private static Volume reserve(double gallons) {
    return PresentControl.RESERVE.nearest(Volume.ofGallons(gallons));
  }
}
