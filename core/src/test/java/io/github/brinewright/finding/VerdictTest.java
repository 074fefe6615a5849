package io.github.brinewright.finding;

import static io.github.brinewright.finding.TriedHome.bare;
import static io.github.brinewright.finding.TriedHome.city;
import static io.github.brinewright.finding.TriedHome.gpg;
import static io.github.brinewright.finding.TriedHome.mg;
import static io.github.brinewright.finding.TriedHome.well;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.home.BacteriaResult;
import io.github.brinewright.home.HardnessMethod;
import io.github.brinewright.home.LabResult;
import io.github.brinewright.home.Substance;
import io.github.brinewright.home.Supply;
import io.github.brinewright.home.TapIron;
import io.github.brinewright.home.TreatedWater;
import io.github.brinewright.home.WaterSource;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.Turbidity;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Each reason on both sides of its threshold, and what the verdict makes of them. */
class VerdictTest {
  /** A reason, a home just beyond it and one just before it. */
  static Stream<Arguments> sides() {
    return Stream.of(
            wrong(), unknown(), Stream.of(sides(VerdictRule.HARDNESS_SOFT, mgHard(60), mgHard(61))))
        .flatMap(each -> each);
  }

  private static Stream<Arguments> wrong() {
    return Stream.of(
        sides(
            VerdictRule.BACTERIA_FOUND,
            well(18).water(w -> w.bacteria(BacteriaResult.FOUND)),
            well(18)),
        sides(
            VerdictRule.E_COLI_FOUND,
            well(18).water(w -> w.eColi(BacteriaResult.FOUND)),
            well(18).water(w -> w.eColi(BacteriaResult.NONE_FOUND))),
        sides(
            VerdictRule.IRON_ABOVE_BED,
            well(18).with(Substance.IRON, 5.01),
            well(18).with(Substance.IRON, 5)),
        sides(
            VerdictRule.IRON_ABOVE_BED,
            well(8).with(Substance.IRON, 4.01),
            well(8).with(Substance.IRON, 4)),
        sides(VerdictRule.IRON_PARTICLES, particles(1, 0.69), particles(1, 0.7)),
        sides(VerdictRule.IRON_PARTICLES, cloudy(0.31), cloudy(0.3)),
        sides(
            VerdictRule.IRON_BACTERIA_FOUND,
            well(18).water(w -> w.ironBacteria(BacteriaResult.FOUND)),
            well(18).water(w -> w.ironBacteria(BacteriaResult.NONE_FOUND))),
        sides(
            VerdictRule.HYDROGEN_SULFIDE_IN_WATER,
            well(18).with(Substance.HYDROGEN_SULFIDE, 0.1),
            well(18).with(Substance.HYDROGEN_SULFIDE, 0.09)),
        sides(
            VerdictRule.PH_TOO_LOW,
            well(18).water(w -> w.ph(6.49)),
            well(18).water(w -> w.ph(6.5))),
        sides(VerdictRule.TURBIDITY_HIGH, turbid(5.1, 0.1), turbid(5, 0.1)),
        sides(VerdictRule.TURBIDITY_HIGH, turbid(6, 0.3), turbid(6, 0.31)),
        sides(VerdictRule.PRESSURE_BELOW_ANY, pressure(15), pressure(15.1)),
        sides(VerdictRule.PRESSURE_BELOW_ANY, flowing(40, 14), flowing(40, 16)),
        sides(VerdictRule.TREATED_WATER_STILL_UNFIT, treated(5.1, 7), treated(5, 7)),
        sides(VerdictRule.TREATED_WATER_STILL_UNFIT, treated(0.1, 6.4), treated(0.1, 6.5)));
  }

  private static Stream<Arguments> unknown() {
    return Stream.of(
        sides(
            VerdictRule.BACTERIA_NOT_TESTED,
            well(18).water(w -> w.bacteria(BacteriaResult.NOT_DONE)),
            well(18)),
        sides(VerdictRule.NITRATE_NOT_TESTED, bareWell(), well(18)),
        sides(VerdictRule.IRON_NOT_TESTED, bareWell(), well(18).with(Substance.IRON, 0)),
        sides(VerdictRule.PH_NOT_TESTED, bareWell(), well(18)),
        sides(VerdictRule.IRON_FORM_UNKNOWN, unlooked(0.31), unlooked(0.3)),
        sides(
            VerdictRule.HARDNESS_NOT_MEASURED,
            city(18).water(w -> w.hardnessBy(HardnessMethod.UTILITY_AVERAGE)),
            city(18).water(w -> w.hardnessBy(HardnessMethod.STRIP))),
        sides(
            VerdictRule.MANGANESE_NOT_TESTED,
            city(18).with(Substance.IRON, 0.31),
            city(18).with(Substance.IRON, 0.3)));
  }

  private static Arguments sides(VerdictRule rule, TriedHome beyond, TriedHome before) {
    return Arguments.of(rule, beyond, before);
  }

  private static TriedHome particles(double iron, double dissolved) {
    return well(18).with(Substance.IRON, iron).with(Substance.DISSOLVED_IRON, dissolved);
  }

  private static TriedHome cloudy(double iron) {
    return well(18).with(Substance.IRON, iron).water(w -> w.ironAtTap(TapIron.CLOUDY));
  }

  private static TriedHome turbid(double ntu, double iron) {
    return well(18).with(Substance.IRON, iron).water(w -> w.turbidity(Turbidity.ofNtu(ntu)));
  }

  private static TriedHome pressure(double psi) {
    return city(18).site(s -> s.supply(Supply.NOT_MEASURED.withPressure(Pressure.ofPsi(psi))));
  }

  private static TriedHome flowing(double psi, double flowing) {
    Supply supply = Supply.NOT_MEASURED.withPressure(Pressure.ofPsi(psi));
    return city(18).site(s -> s.supply(supply.withFlowingPressure(Pressure.ofPsi(flowing))));
  }

  private static TriedHome treated(double iron, double ph) {
    TreatedWater treated =
        TreatedWater.ofHardness(gpg(18)).withIron(LabResult.measured(mg(iron))).withPh(ph);
    return well(18).with(Substance.IRON, 9).water(w -> w.ph(6)).site(site -> site.treated(treated));
  }

  private static TriedHome bareWell() {
    return bare(18).water(w -> w.from(WaterSource.PRIVATE_WELL));
  }

  /** A supply whose iron nobody looked at. */
  private static TriedHome unlooked(double iron) {
    return city(18).with(Substance.IRON, iron).with(Substance.MANGANESE, 0);
  }

  private static TriedHome mgHard(double perLitre) {
    return city(Hardness.ofMilligramsPerLitre(perLitre).grainsPerGallon());
  }

  @ParameterizedTest
  @MethodSource("sides")
  void aReasonHoldsBeyondItsThresholdAndNotBefore(
      VerdictRule rule, TriedHome beyond, TriedHome before) {
    assertThat(beyond.verdict().reason(rule)).isPresent();
    assertThat(beyond.verdict().kind()).isLessThanOrEqualTo(rule.kind());
    assertThat(before.verdict().reason(rule)).isEmpty();
  }

  @Test
  void everyReasonIsTried() {
    assertThat(sides().map(each -> each.get()[0]))
        .containsAll(Arrays.asList((Object[]) VerdictRule.values()));
  }

  @Test
  void aHomeWithoutTroubleIsReady() {
    for (TriedHome home : new TriedHome[] {city(18), well(18)}) {
      Verdict verdict = home.verdict();
      assertThat(verdict.kind()).isEqualTo(VerdictKind.READY);
      assertThat(verdict.reasons()).isEmpty();
      assertThat(verdict.permitsRecommendation()).isTrue();
      assertThat(verdict.permitsSignature()).isTrue();
      assertThat(verdict.isConditional()).isFalse();
    }
  }

  @Test
  void allReasonsAreListedTheGravestFirst() {
    Verdict verdict =
        bareWell()
            .with(Substance.IRON, 8)
            .water(w -> w.ironAtTap(TapIron.CLOUDY).ironBacteria(BacteriaResult.FOUND).ph(5.2))
            .verdict();

    assertThat(verdict.kind()).isEqualTo(VerdictKind.TREAT_FIRST);
    assertThat(verdict.reasons())
        .extracting(Finding::code)
        .containsExactly(
            "iron-above-bed",
            "iron-particles",
            "iron-bacteria-found",
            "ph-too-low",
            "bacteria-not-tested",
            "nitrate-not-tested",
            "manganese-not-tested");
    assertThat(verdict.permitsRecommendation()).isFalse();
    assertThat(verdict.isProvisional()).isTrue();
  }

  @Test
  void aTreatmentThatIsStatedMakesARecommendationConditional() {
    Verdict verdict = treated(0.1, 7.2).verdict();

    assertThat(verdict.kind()).isEqualTo(VerdictKind.TREAT_FIRST);
    assertThat(verdict.isConditional()).isTrue();
    assertThat(verdict.permitsRecommendation()).isTrue();
    assertThat(verdict.permitsSignature()).isTrue();
    assertThat(treated(5.1, 7.2).verdict().permitsRecommendation()).isFalse();
  }

  /** What is not stated of the treated water is as in the raw water. */
  @Test
  void aTreatmentMustSayWhatItLeavesOfWhatIsWrong() {
    TriedHome acid =
        well(6).water(w -> w.ph(6.4)).site(site -> site.treated(TreatedWater.ofHardness(gpg(15))));

    assertThat(acid.verdict().reason(VerdictRule.TREATED_WATER_STILL_UNFIT)).isPresent();
  }

  @Test
  void noTreatmentOfTheWaterMendsThePressure() {
    TriedHome weak =
        pressure(10).site(site -> site.treated(TreatedWater.ofHardness(gpg(18)).withPh(7)));

    assertThat(weak.verdict().permitsRecommendation()).isFalse();
  }

  @Test
  void aMissingTestAllowsAProvisionalRecommendationWithoutSignature() {
    Verdict verdict = city(18).with(Substance.IRON, 1).verdict();

    assertThat(verdict.kind()).isEqualTo(VerdictKind.TEST_FIRST);
    assertThat(verdict.isProvisional()).isTrue();
    assertThat(verdict.permitsRecommendation()).isTrue();
    assertThat(verdict.permitsSignature()).isFalse();
  }

  @Test
  void whatTheTreatmentLeavesNeedsNoTestOfTheRawWater() {
    TriedHome home =
        bareWell()
            .with(Substance.NITRATE, 1)
            .with(Substance.MANGANESE, 0)
            .water(w -> w.bacteria(BacteriaResult.NONE_FOUND))
            .site(
                site ->
                    site.treated(
                        TreatedWater.ofHardness(gpg(18))
                            .withIron(LabResult.NOT_DETECTED)
                            .withPh(7)));

    assertThat(home.verdict().reasons()).isEmpty();
  }

  @Test
  void softWaterIsSoftenedOnlyWhenAskedFor() {
    Verdict verdict = city(3).verdict();

    assertThat(verdict.kind()).isEqualTo(VerdictKind.SOFT_ENOUGH);
    assertThat(verdict.permitsRecommendation()).isFalse();
    assertThat(city(3).site(site -> site.softerWanted(true)).verdict().kind())
        .isEqualTo(VerdictKind.READY);
  }

  /** A neutralizer makes soft water hard. */
  @Test
  void theWaterThatEntersTheSoftenerIsJudgedAsSoft() {
    TriedHome home =
        well(3)
            .water(w -> w.ph(6.4))
            .site(site -> site.treated(TreatedWater.ofHardness(gpg(12)).withPh(7.5)));

    assertThat(home.verdict().reason(VerdictRule.HARDNESS_SOFT)).isEmpty();
  }

  /** A reporting limit is not an amount: "below 0.1" is not 0.1. */
  @Test
  void lessThanALimitThatALaboratoryReportsIsAResult() {
    TriedHome home =
        well(18)
            .water(
                w ->
                    w.found(Substance.HYDROGEN_SULFIDE, LabResult.below(mg(0.1)))
                        .found(Substance.IRON, LabResult.below(mg(0.05)))
                        .found(Substance.NITRATE, LabResult.NOT_DETECTED));

    assertThat(home.verdict().reasons()).isEmpty();
    assertThat(
            well(18)
                .water(w -> w.found(Substance.HYDROGEN_SULFIDE, LabResult.below(mg(0.5))))
                .verdict()
                .reason(VerdictRule.HYDROGEN_SULFIDE_IN_WATER))
        .isPresent();
  }
}
