package io.github.brinewright.service;

import static io.github.brinewright.service.Found.clock;
import static io.github.brinewright.service.Found.dosed;
import static io.github.brinewright.service.Found.each;
import static io.github.brinewright.service.Found.meter;
import static io.github.brinewright.service.Found.refill;
import static io.github.brinewright.service.Found.told;
import static io.github.brinewright.service.Found.weekdays;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.home.Bill;
import io.github.brinewright.home.PresentControl;
import io.github.brinewright.home.PresentSoftener;
import io.github.brinewright.home.Substance;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Temperature;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.softener.Regenerant;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each fault speaks where it should, beside a softener like it where it should not. */
class FaultsTest {
  private static final Set<FaultKind> NONE = EnumSet.noneOf(FaultKind.class);

  /** A softener at a home, and all that is wrong with it. */
  private record Case(
      String name, Visit visit, PresentSoftener.Builder present, Set<FaultKind> faults) {
    @Override
    public String toString() {
      return name + " " + faults;
    }
  }

  private final List<Case> cases = new ArrayList<>();

  private void wrong(FaultKind kind, String name, Visit visit, PresentSoftener.Builder present) {
    cases.add(new Case(name, visit, present, EnumSet.of(kind)));
  }

  private void right(String name, Visit visit, PresentSoftener.Builder present) {
    cases.add(new Case(name, visit, present, NONE));
  }

  static Stream<Case> cases() {
    FaultsTest test = new FaultsTest();
    test.bed();
    test.rating();
    test.hardness();
    test.lateStart();
    test.earlyStart();
    test.salt();
    test.elsewhere();
    return test.cases.stream();
  }

  private void bed() {
    wrong(
        FaultKind.BED_TOO_SMALL,
        "half a foot for six people",
        Visit.to(60, 6),
        clock(1, 16_000).salt(each(5)));
    right("one foot for two", Visit.to(18, 2), clock(5, 32_000).salt(each(6)));
  }

  /** 4 people: 5,400 grains a day, so 5.9 days of the rating and 3.3 of what 6 lb restore. */
  private void rating() {
    Visit four = Visit.to(18, 4);
    FaultKind kind = FaultKind.RATING_AS_CAPACITY;
    wrong(kind, "days of the rating", four, clock(5, 32_000).salt(each(9)));
    wrong(kind, "days of the rating, rounded up", four, clock(6, 32_000).salt(each(9)));
    right("days of what the salt restores", four, clock(3, 32_000).salt(each(6)));
    wrong(kind, "volume of the rating", four, meter(1_778, 0, 32_000).salt(each(6)));
    wrong(kind, "volume of the rating less a day", four, meter(1_478, 0, 32_000).salt(each(6)));
    right("volume of what the salt restores", four, meter(688, 0, 32_000).salt(each(6)));
    wrong(kind, "the rating told to a meter", four, told(18, 32_000, 32_000).salt(each(6)));
    right("what the salt restores, less a day", four, told(18, 12_400, 32_000).salt(each(6)));
    wrong(
        kind,
        "weekdays of the rating",
        Visit.to(22, 5),
        weekdays(32_000, DayOfWeek.MONDAY, DayOfWeek.THURSDAY).salt(each(10)));
    ratingByHand();
  }

  /** By hand the days are made from 75 gal a person, whatever the bill says, and without iron. */
  private void ratingByHand() {
    Bill bill = new Bill(Volume.ofGallons(20_000), 61);
    wrong(
        FaultKind.RATING_AS_CAPACITY,
        "days of the rating by the allowance, where a bill says more",
        Visit.to(18, 4).people(home -> home.bill(bill)),
        clock(5, 32_000).salt(each(9)));
    wrong(
        FaultKind.RATING_AS_CAPACITY,
        "days of the rating without iron",
        Visit.to(18, 4).with(Substance.IRON, 1.9),
        clock(6, 32_000).salt(each(9)));
  }

  /** 16 gpg and iron for 4.8 gpg more; the bed softens 1,282 gal. */
  private void hardness() {
    Visit iron = Visit.to(16, 4).with(Substance.IRON, 1.2);
    FaultKind without = FaultKind.HARDNESS_WITHOUT_IRON;
    wrong(without, "16 gpg told", iron, told(16, 20_000, 48_000).salt(each(9)));
    right("21 gpg told", iron, told(21, 20_400, 48_000).salt(each(9)));
    wrong(
        without,
        "16 gpg told, and a capacity that nobody read",
        iron,
        hardnessAlone(16).salt(each(9)));
    right("21 gpg told, and a capacity that nobody read", iron, hardnessAlone(21).salt(each(9)));
    right(
        "16 gpg told, and a capacity that makes up", iron, told(16, 15_300, 48_000).salt(each(9)));
    wrong(
        FaultKind.HARDNESS_SET_TOO_LOW,
        "11 gpg told",
        iron,
        told(11, 20_000, 48_000).salt(each(9)));
    Visit two = Visit.to(20, 2);
    wrong(
        FaultKind.HARDNESS_SET_TOO_HIGH,
        "32 gpg told",
        two,
        told(32, 24_000, 48_000).salt(each(9)));
    right("21 gpg told, of 20", two, told(21, 24_000, 48_000).salt(each(9)));
    right("23 gpg told, which is its reserve", two, told(23, 26_600, 48_000).salt(each(9)));
    Visit soft = Visit.to(5.8, 3);
    right("5 gpg told, of 5.8", soft, told(5, 13_000, 32_000).salt(each(5)));
  }

  private static PresentSoftener.Builder hardnessAlone(double gpg) {
    return PresentSoftener.of(PresentControl.metered(Hardness.ofGrainsPerGallon(gpg), null))
        .rated(Found.grains(48_000));
  }

  /** 6,000 grains a day; the bed softens 1,334 gal, 4.4 days of full use. */
  private void lateStart() {
    Visit four = Visit.to(20, 4);
    wrong(FaultKind.INTERVAL_TOO_LONG, "ten days", four, clock(10, 48_000).salt(each(9)));
    right("four days", four, clock(4, 48_000).salt(each(8)));
    wrong(
        FaultKind.INTERVAL_TOO_LONG,
        "once a week",
        four,
        weekdays(32_000, DayOfWeek.SUNDAY).salt(each(9)));
    wrong(FaultKind.VOLUME_TOO_LARGE, "1,700 gal", four, meter(1_700, 0, 48_000).salt(each(9)));
    right("1,050 gal", four, meter(1_050, 0, 48_000).salt(each(9)));
    wrong(
        FaultKind.REFILL_TOO_SMALL,
        "four minutes of a small injector",
        four,
        clock(4, 48_000).salt(refill(4, 0.25)));
    right("ten minutes of it", four, clock(4, 48_000).salt(refill(10, 0.25)));
    wrong(
        FaultKind.REFILL_TOO_SMALL,
        "minutes of sodium chloride, with potassium in the cold",
        Visit.to(14, 4).site(site -> site.brineTankTemperature(Temperature.ofFahrenheit(40))),
        clock(5, 32_000).salt(refill(4, 0.5)).regenerant(Regenerant.POTASSIUM_CHLORIDE));
  }

  private void earlyStart() {
    Visit three = Visit.to(20, 3);
    FaultKind twice = FaultKind.RESERVE_TWICE;
    wrong(twice, "a day left, and 500 gal held back", three, meter(900, 500, 48_000).salt(each(9)));
    right("1,330 gal, and a day held back", three, meter(1_330, 225, 48_000).salt(each(9)));
    wrong(
        FaultKind.INTERVAL_TOO_SHORT,
        "three days where twelve would do",
        Visit.to(12, 2),
        clock(3, 48_000).salt(each(9)));
    wrong(FaultKind.INTERVAL_TOO_SHORT, "300 gal", three, meter(300, 0, 48_000).salt(each(9)));
  }

  private void salt() {
    Visit three = Visit.to(15, 3);
    wrong(
        FaultKind.REFILL_TOO_LARGE,
        "twelve minutes",
        three,
        clock(5, 32_000).salt(refill(12, 0.5)));
    right("four minutes", three, clock(5, 32_000).salt(refill(4, 0.5)));
    wrong(FaultKind.DOSAGE_TOO_RICH, "16 lb", three, clock(5, 32_000).salt(each(16)));
    wrong(FaultKind.DOSAGE_TOO_RICH, "16 lb/ft3", three, clock(5, 32_000).salt(dosed(16)));
    right("6 lb", three, clock(5, 32_000).salt(each(6)));
    right("a bag of salt saved by nobody", Visit.to(6, 2), clock(14, 32_000).salt(each(5)));
    Visit iron = Visit.to(12, 2).with(Substance.IRON, 2.5);
    wrong(FaultKind.DOSAGE_TOO_LEAN, "3.3 lb/ft3", iron, clock(4, 48_000).salt(each(5)));
    right("3.3 lb/ft3 without iron", Visit.to(22, 2), clock(4, 48_000).salt(each(5)));
  }

  /** 8 days of 6 lb: 274 lb a year. */
  private void elsewhere() {
    Visit two = Visit.to(12, 2);
    wrong(FaultKind.HOUR_IN_USE, "7 a.m.", two, eightDays().hour(7));
    wrong(FaultKind.HOUR_IN_USE, "6 a.m.", two, eightDays().hour(6));
    wrong(FaultKind.HOUR_IN_USE, "10 p.m.", two, eightDays().hour(22));
    wrong(FaultKind.HOUR_IN_USE, "11 p.m.", two, eightDays().hour(23));
    right("midnight", two, eightDays().hour(0));
    right("5 a.m.", two, eightDays().hour(5));
    wrong(FaultKind.SALT_BOUGHT_ABOVE, "500 lb", two, bought(500));
    wrong(FaultKind.SALT_BOUGHT_BELOW, "150 lb", two, bought(150));
    wrong(FaultKind.SALT_BOUGHT_BELOW, "none", two, bought(0));
    right("300 lb", two, bought(300));
    wrong(FaultKind.NOT_SOFT_BEHIND, "5 gpg behind", two, behind(5));
    right("1 gpg behind", two, behind(1));
  }

  private static PresentSoftener.Builder eightDays() {
    return clock(8, 32_000).salt(each(6));
  }

  private static PresentSoftener.Builder bought(double pounds) {
    return eightDays().saltBought(Mass.ofPounds(pounds));
  }

  private static PresentSoftener.Builder behind(double gpg) {
    return eightDays().hardnessAfter(Hardness.ofGrainsPerGallon(gpg));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void whatIsWrongIsFoundAndNothingElse(Case tried) {
    ServiceStudy study = tried.visit().finds(tried.present());

    assertThat(study.faults().stream().map(Fault::kind).toList())
        .as("%s", study.options())
        .containsExactlyElementsOf(tried.faults());
  }

  @Test
  void everyFaultIsTried() {
    Set<FaultKind> tried =
        cases().flatMap(each -> each.faults().stream()).collect(Collectors.toSet());

    assertThat(tried).containsExactlyInAnyOrder(FaultKind.values());
  }
}
