package io.github.brinewright.words;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.service.Advice;
import io.github.brinewright.service.Fault;
import io.github.brinewright.service.FaultKind;
import io.github.brinewright.service.Payback;
import io.github.brinewright.sizing.Assumption;
import io.github.brinewright.sizing.AssumptionKind;
import io.github.brinewright.trace.Figure;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is said of a softener that is in the house already. */
class ServiceWordsTest {
  private static final Wording ENGLISH = words("en-US");

  private static Wording words(String tag) {
    UnitSystem system = tag.startsWith("fr") ? UnitSystem.METRIC : UnitSystem.US;
    return Wording.of(Locale.forLanguageTag(tag), system);
  }

  private static String fault(FaultKind kind, Figure... figures) {
    return ENGLISH.fault(new Fault(kind, List.of(figures)));
  }

  private static String rating(double days, double gallons, double pounds) {
    return fault(
        FaultKind.RATING_AS_CAPACITY,
        Figure.roughly(HardnessAmount.ofGrains(34_560)),
        Figure.roughly(HardnessAmount.ofGrains(17_940)),
        Figure.roughDays(days),
        Figure.roughly(Volume.ofGallons(gallons)),
        Figure.roughly(Mass.ofPounds(pounds)));
  }

  @Test
  void aFaultNamesItsConsequences() {
    assertThat(rating(63.4, 8200, 110))
        .isEqualTo(
            "The setting takes the rating for what the bed really holds: it counts on 34,600"
                + " grains, but the salt it is given restores only 17,900 grains. So soft water"
                + " runs out on about 65 days a year, and about 8,200 gal of hard water a year"
                + " reach the taps. About 110 lb of salt a year go for nothing.");
  }

  @Test
  void aConsequenceThatIsNoneIsNotNamed() {
    assertThat(rating(63.4, 8200, 0.2)).contains("65 days").doesNotContain("salt a year");
    assertThat(rating(0.2, 12, 110)).contains("110 lb of salt").doesNotContain("days", "12 gal");
  }

  @Test
  void whereThereIsNoConsequenceItSaysWhenThereWouldBe() {
    assertThat(rating(0, 0, 0))
        .endsWith("with guests, or in a week of heavy use, soft water runs out.")
        .doesNotContain(" 0 ");
  }

  @Test
  void anHourIsAClockTimeAndNightHasAFigureOrNone() {
    Figure seven = Figure.of(LocalTime.of(7, 0));
    Figure much = Figure.roughly(Volume.ofGallons(1364));

    assertThat(fault(FaultKind.HOUR_IN_USE, seven, much, Figure.roughly(Volume.ofGallons(126))))
        .contains("at 7:00 a.m., when", "about 1,360 gal", "At 2 a.m. it would be 125 gal.");
    assertThat(fault(FaultKind.HOUR_IN_USE, seven, much, Figure.roughly(Volume.ofGallons(0))))
        .endsWith("At 2 a.m. it would be hardly any.");
  }

  @ParameterizedTest
  @CsvSource({
    "en-US, 00:00, midnight",
    "en-US, 00:30, 12:30 a.m.",
    "en-US, 02:00, 2:00 a.m.",
    "en-US, 12:00, noon",
    "en-US, 13:05, 1:05 p.m.",
    "es-US, 23:45, 11:45 p. m.",
    "fr-CA, 00:05, 0 h 05",
    "fr-CA, 12:00, midi",
    "fr-CA, 19:30, 19 h 30"
  })
  void aTimeOfDayIsWrittenAsItsLanguageDoes(String tag, LocalTime time, String written) {
    assertThat(words(tag).figure(Figure.of(time)).replace('\u00A0', ' ')).isEqualTo(written);
  }

  @ParameterizedTest
  @CsvSource({
    "0, The bed is new and has lost nothing.",
    "1, 'After 1 year the bed is taken to hold 97% of what it held when new; 95% to 99% is usual.'"
  })
  void aNewBedHasLostNothingAndOneYearIsOne(int years, String said) {
    Assumption age =
        new Assumption(
            AssumptionKind.AGE_LOSS,
            List.of(
                Figure.of(years),
                Figure.percent(0.97),
                Figure.percent(0.95),
                Figure.percent(0.99)));

    assertThat(ENGLISH.assumption(age)).isEqualTo(said);
  }

  @ParameterizedTest
  @CsvSource({
    "5, 3.2, 11.8, between 3 and 12 years",
    "5.3, 5.2, 5.4, about 5 years",
    "1, 0.9, 1.2, about a year",
    "0.4, 0.37, 0.56, a year at most",
    "2, 0.3, 6.4, 6 years at most",
    "0, 0, 0, at once",
    "4, 2.2, , 'about 4 years (2 at the earliest, or never)'",
    "4, 1.2, , 'about 4 years (1 at the earliest, or never)'",
    "4, 0.2, , 'about 4 years (1 at the earliest, or never)'",
    "1.2, 0.6, , 'about a year, or never'",
    "0.3, 0.2, , 'less than a year, or never'",
    "34, 12.2, , '12 years at the earliest, or never'",
    "12, 8, 45, 'about 12 years (8 at the earliest, or not within 30)'",
    "12, 0.4, 45, 'about 12 years (1 at the earliest, or not within 30)'",
    "31, 8, 45, '8 years at the earliest, or not within 30 years'",
    "46, 31, , not within 30 years",
    "40, 30.6, 60, not within 30 years",
    ", 8.1, , never as computed; 8 years at best",
    ", 0.3, , never as computed; less than a year at best",
    ", 272, , never",
    ", , , never"
  })
  void aPaybackIsARangeOrNever(
      @Nullable Double years, @Nullable Double low, @Nullable Double high, String said) {
    assertThat(ENGLISH.payback(new Payback(of(years), of(low), of(high)))).isEqualTo(said);
  }

  private static OptionalDouble of(@Nullable Double years) {
    return years == null ? OptionalDouble.empty() : OptionalDouble.of(years);
  }

  /** Figures enough for any kind; each is looked for by its own number. */
  private static List<Figure> figures() {
    return Stream.of(11.5, 13.5, 17.0, 19.0, 23.0)
        .<Figure>map(number -> Figure.of(Hardness.ofGrainsPerGallon(number), 1))
        .toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"en-US", "es-US", "fr-CA"})
  void everyFaultAssumptionAndAdviceHasWordsOfItsOwn(String tag) {
    Wording words = words(tag);
    List<String> all =
        Stream.of(
                Stream.of(FaultKind.values()).map(kind -> words.fault(new Fault(kind, figures()))),
                Stream.of(AssumptionKind.values())
                    .map(kind -> words.assumption(new Assumption(kind, figures()))),
                Stream.of(Advice.values()).map(words::advice))
            .flatMap(each -> each)
            .toList();

    assertThat(all)
        .doesNotHaveDuplicates()
        .allMatch(said -> said.endsWith(".") || said.endsWith(".\u00A0m."))
        .noneMatch(said -> said.contains("{") || said.contains("  "));
  }
}
