package io.github.brinewright.service;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.demand.HomeLoad;
import io.github.brinewright.home.PresentControl;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.home.Substance;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.regeneration.WeekdayClock;
import io.github.brinewright.sizing.FoundSoftener;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;

/** A rating that was taken for the capacity is found at any home, and no other setting is. */
class RatingAsCapacityTest {
  private static final double CLEARLY_MORE = 1.05;
  private static final int USUAL_LONGEST_DAYS = 14;

  /** A home, and the bed of a softener in it. */
  record Drawn(double gpg, double iron, int people, double rating, int years, double pounds) {
    Visit visit() {
      return Visit.to(gpg, people).with(Substance.IRON, iron);
    }

    HomeLoad home() {
      return visit().home();
    }

    PresentSoftener.Builder under(PresentControl control) {
      return PresentSoftener.of(control).rated(rated()).ageYears(years).salt(Found.dosed(pounds));
    }

    HardnessAmount rated() {
      return Found.grains(rating);
    }

    HardnessAmount usable() {
      return visit().found(under(PresentControl.clock(1))).usable();
    }
  }

  @Provide
  Arbitrary<Drawn> drawn() {
    return Combinators.combine(
            Arbitraries.doubles().between(3, 60),
            Arbitraries.doubles().between(0, 3),
            Arbitraries.integers().between(1, 8),
            Arbitraries.doubles().between(16_000, 96_000),
            Arbitraries.integers().between(0, 20),
            Arbitraries.doubles().between(2, 20))
        .as(Drawn::new);
  }

  /** How a capacity becomes a setting by hand; empty where it cannot be set so. */
  private enum Hand {
    DAYS,
    WEEKDAYS,
    VOLUME,
    VOLUME_WITHOUT_IRON,
    TOLD;

    Optional<PresentControl> control(HardnessAmount capacity, HomeLoad home) {
      double days = Math.floor(capacity.ratioTo(home.dailyLoad()));
      return Optional.ofNullable(
          switch (this) {
            case DAYS -> days < 2 || days > USUAL_LONGEST_DAYS ? null : clock(days);
            case WEEKDAYS -> days < 2 ? null : weekdays(days);
            case VOLUME -> PresentControl.metered(capacity.asWaterOf(home.compensatedHardness()));
            case VOLUME_WITHOUT_IRON ->
                PresentControl.metered(capacity.asWaterOf(home.site().softenedWater().hardness()));
            case TOLD -> PresentControl.metered(home.compensatedHardness(), capacity);
          });
    }

    private static PresentControl clock(double days) {
      return PresentControl.clock((int) days);
    }

    private static PresentControl weekdays(double days) {
      return PresentControl.weekdays(WeekdayClock.forGap((int) Math.min(7, days)).days());
    }
  }

  private static Reckoned reckoned(Drawn drawn, PresentControl control) {
    FoundSoftener found = drawn.visit().found(drawn.under(control));
    return new Reckoned(found, drawn.home());
  }

  @Property(tries = 400, shrinking = ShrinkingMode.OFF)
  void aSettingMadeFromTheRatingIsFoundWhereTheBedHoldsLess(
      @ForAll("drawn") Drawn drawn, @ForAll Hand hand) {
    HomeLoad home = drawn.home();
    Optional<PresentControl> control = hand.control(drawn.rated(), home);
    Assume.that(control.isPresent());
    Reckoned reckoned = reckoned(drawn, control.get());
    HardnessAmount asked = reckoned.capacity().orElseThrow();
    Assume.that(asked.exceeds(drawn.usable().times(CLEARLY_MORE)));

    assertThat(reckoned.isRating()).as("%s of %s, %s", control, home.dailyLoad(), asked).isTrue();
  }

  @Property(tries = 400, shrinking = ShrinkingMode.OFF)
  void aSettingMadeFromWhatTheBedHoldsIsNotBlamed(@ForAll("drawn") Drawn drawn, @ForAll Hand hand) {
    Assume.that(hand != Hand.VOLUME_WITHOUT_IRON);
    Optional<PresentControl> control = hand.control(drawn.usable(), drawn.home());
    Assume.that(control.isPresent());

    assertThat(reckoned(drawn, control.get()).isRating()).as("%s", control).isFalse();
  }

  /** The same through the whole study, where other faults might stand in the way. */
  @Property(tries = 25, shrinking = ShrinkingMode.OFF)
  void theStudyNamesIt(@ForAll("drawn") Drawn drawn, @ForAll Hand hand) {
    Optional<PresentControl> control = hand.control(drawn.rated(), drawn.home());
    Assume.that(control.isPresent());
    Assume.that(reckoned(drawn, control.get()).aboveUsable());
    ServiceStudy study = drawn.visit().finds(drawn.under(control.get()));

    assertThat(study.faults())
        .as("%s", study)
        .anySatisfy(fault -> assertThat(fault.kind()).isEqualTo(FaultKind.RATING_AS_CAPACITY));
  }

  /** 0.8 of the rating and 3 lb for 10,000 usable grains, as the trade does it by hand. */
  @Property(tries = 200, shrinking = ShrinkingMode.OFF)
  void theUsualShareOfTheRatingIsNotTheRating(@ForAll("drawn") Drawn drawn) {
    PresentControl told =
        PresentControl.metered(drawn.home().compensatedHardness(), drawn.rated().times(0.8));

    assertThat(reckoned(drawn, told).isRating()).isFalse();
    assertThat(
            SaltDosage.ofPoundsPerCubicFoot(7.68)
                .saltFor(drawn.visit().found(drawn.under(told)).resinVolume())
                .pounds())
        .isCloseTo(3 * 0.8 * drawn.rating() / 10_000, org.assertj.core.api.Assertions.within(1e-9));
  }
}
