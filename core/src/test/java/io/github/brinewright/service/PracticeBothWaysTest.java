package io.github.brinewright.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.brinewright.home.PresentControl;
import io.github.brinewright.home.PresentSalt;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.home.Substance;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.Minutes;
import io.github.brinewright.service.ServiceOption.Kind;
import io.github.brinewright.sizing.FoundSoftener;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * The chain of the trade's common practice both ways: settings from the home by hand, and what
 * comes of settings in the home. Every figure common practice.
 */
class PracticeBothWaysTest {
  /** 18 gpg, iron 0.8 and manganese 0.2 mg/L, 3 people: 22.4 gpg and 5,040 grains a day. */
  private static Visit home() {
    return Visit.to(18, 3).with(Substance.IRON, 0.8).with(Substance.MANGANESE, 0.2);
  }

  private static PresentSalt minutes(double set) {
    return new PresentSalt.Refill(
        Minutes.toDuration(set), Optional.of(FlowRate.ofGallonsPerMinute(0.5)));
  }

  /** 32,000 rated: 25,600 usable, 5.08 days, 7.68 lb, 5.12 minutes at 0.5 gpm. */
  private static PresentSoftener.Builder byHand() {
    return Found.clock(5, 32_000).salt(minutes(5.12)).ageYears(0);
  }

  @Test
  void theMinutesSetByHandAreReadBackAsTheSalt() {
    FoundSoftener found = home().found(byHand());

    assertThat(found.saltPerRegeneration().pounds()).isCloseTo(7.68, within(1e-9));
    assertThat(found.dosage().poundsPerCubicFoot()).isCloseTo(7.68, within(1e-9));
    assertThat(found.resinVolume().cubicFeet()).isCloseTo(1, within(1e-9));
    assertThat(found.refill().water().gallons()).isCloseTo(2.56, within(1e-9));
  }

  /** 365 ÷ 5 = 73 regenerations of 7.68 lb. */
  @Test
  void theYearFollowsFromThem() {
    ServiceOption found = home().finds(byHand()).asFound();

    assertThat(found.years().regenerations().mean()).isCloseTo(73, within(0.01));
    assertThat(found.salt().pounds()).isCloseTo(73 * 7.68, within(0.1));
  }

  /** By the curve 7.68 lb restore 22,295 grains, of which nine tenths are counted on: 20,066. */
  @Test
  void theCurveCountsOnLessThanEightTenthsOfTheRating() {
    FoundSoftener found = home().found(byHand());

    assertThat(found.usable().grains()).isCloseTo(20_066, within(1.0));
    assertThat(found.usable().grains()).isLessThan(25_600);
  }

  /** 20,066 ÷ 5,040 = 3.98: the hand's five days are a day too many, and none too little. */
  @Test
  void theRightDaysAreFewer() {
    ServiceStudy study = home().finds(byHand());
    ServiceOption right = study.option(Kind.SET_RIGHT).orElseThrow();

    assertThat(right.bed().days()).isBetween(3, 4);
    assertThat(right.hardWater().runOut().gallons())
        .isLessThan(study.asFound().hardWater().runOut().gallons());
  }

  /** Set right as a clock, read back as found: the same bed and nothing wrong. */
  @Test
  void whatIsSetRightIsRightWhenItIsFound() {
    ServiceOption right = home().finds(byHand()).option(Kind.SET_RIGHT).orElseThrow();
    PresentSoftener.Builder again =
        Found.clock(right.bed().days(), 32_000)
            .ageYears(0)
            .salt(new PresentSalt.EachTime(right.saltPerRegeneration()));
    ServiceStudy study = home().finds(again);

    assertThat(study.asFound().bed()).isEqualTo(right.bed());
    assertThat(study.asFound().years()).isEqualTo(right.years());
    assertThat(study.faults()).isEmpty();
  }

  /** The same of a meter: its volume told back with its reserve already deducted. */
  @Test
  void aMeterSetRightIsRightWhenItIsFound() {
    ServiceOption meter = home().finds(byHand()).option(Kind.METERED).orElseThrow();
    PresentControl control =
        new PresentControl.ByVolume(
            meter.bed().set(), false, Optional.empty(), Optional.of(meter.bed().days()));
    PresentSoftener.Builder again =
        PresentSoftener.of(control)
            .rated(Found.grains(32_000))
            .ageYears(0)
            .salt(new PresentSalt.EachTime(meter.saltPerRegeneration()));
    ServiceStudy study = home().finds(again);

    assertThat(study.asFound().years().regenerations()).isEqualTo(meter.years().regenerations());
    assertThat(study.faults()).isEmpty();
  }
}
