package io.github.brinewright.service;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.home.PresentControl;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.service.ServiceOption.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Plausibility, and no more: in four sewersheds of Madison, 2013-14, better settings took 27 % of
 * the chloride, and new softeners 47 % (MMSD & WQRF, Lake, Erickson, Cantor, 2015 [DIR-01]); a
 * later pilot found no lasting effect. Which softeners those were and how they were set is not
 * published, so the homes here are invented: very hard city water, households by size as in the
 * United States (from memory), half of the softeners clocks, days and volumes by guess, 8 to 15
 * lb/ft3.
 *
 * <p>These homes save 21 % by settings and 61 % by new softeners. The first is nearer to what was
 * published than the second: every new unit here is the one of least cost over the years, lean and
 * under a meter, which nobody may expect of those that were bought in Madison. The bands are as
 * wide as populations may differ; what must agree is that both save much, and new softeners more.
 */
class PublishedSavingsTest {
  private static final int HOMES = 80;
  private static final double BY_SETTINGS = 0.27;
  private static final double BY_REPLACEMENT = 0.47;
  private static final double WIDE = 0.17;

  private final Random random = new Random(2013);

  private double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  private <T> T oneOf(List<T> all) {
    return all.get(random.nextInt(all.size()));
  }

  /** 28, 35, 15, 13, 6 and 3 % of the households; from memory. */
  private int people() {
    int[] upTo = {28, 63, 78, 91, 97, 100};
    int drawn = random.nextInt(100);
    int people = 0;
    while (drawn >= upTo[people]) {
      people++;
    }
    return people + 1;
  }

  private ServiceStudy study() {
    double gpg = between(16, 26);
    double rating = oneOf(List.of(24_000.0, 32_000.0, 32_000.0, 40_000.0, 48_000.0));
    PresentControl control = random.nextBoolean() ? clock() : meter(gpg, rating);
    PresentSoftener.Builder present =
        PresentSoftener.of(control)
            .rated(HardnessAmount.ofGrains(rating))
            .ageYears(random.nextInt(16))
            .salt(Found.dosed(between(8, 15)));
    return Visit.to(gpg, people()).finds(present);
  }

  /** Every second to seventh day, whoever lives there. */
  private PresentControl clock() {
    return PresentControl.clock(2 + random.nextInt(6));
  }

  /** Told the hardness within a fifth, 0.5 to 0.8 of the rating, and one to two days held back. */
  private PresentControl meter(double gpg, double rating) {
    double told = gpg * between(0.9, 1.3);
    double capacity = rating * between(0.5, 0.8);
    double held = Math.min(between(100, 400), 0.6 * capacity / told);
    return new PresentControl.ByHardness(
        Hardness.ofGrainsPerGallon(told),
        Optional.of(HardnessAmount.ofGrains(capacity)),
        false,
        Optional.of(Volume.ofGallons(held)),
        Optional.of(14));
  }

  @Test
  void betterSettingsSaveMuchAndNewSoftenersMore() {
    List<ServiceStudy> homes = new ArrayList<>();
    for (int i = 0; i < HOMES; i++) {
      homes.add(study());
    }
    double bySettings = saved(homes, Kind.SET_RIGHT);
    double byReplacement = saved(homes, Kind.REPLACED);

    assertThat(bySettings)
        .as("chloride saved by settings; published 0.27")
        .isBetween(BY_SETTINGS - WIDE, BY_SETTINGS + WIDE);
    assertThat(byReplacement)
        .as("chloride saved by replacement; published 0.47")
        .isBetween(BY_REPLACEMENT - WIDE, BY_REPLACEMENT + WIDE);
    assertThat(byReplacement).isGreaterThan(bySettings);
  }

  /** Chloride goes with the salt; homes that no setting of their bed serves stay as they are. */
  private static double saved(List<ServiceStudy> homes, Kind kind) {
    double before = 0;
    double after = 0;
    for (ServiceStudy home : homes) {
      Mass found = home.asFound().salt();
      before += found.pounds();
      after += home.option(kind).map(ServiceOption::salt).orElse(found).pounds();
    }
    return 1 - after / before;
  }
}
