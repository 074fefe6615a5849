package io.github.brinewright.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A forecast looks no surer than it is. */
class RoughTest {
  private final Wording words = Wording.of(Locale.US, UnitSystem.US);

  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "0.2, 0",
    "0.25, 0.5",
    "3.2, 3",
    "9.74, 9.5",
    "9.76, 10",
    "12.4, 12",
    "49.6, 50",
    "52.4, 50",
    "547, 545",
    "997.6, 1000",
    "1094.9, 1090",
    "8201, 8200",
    "57626, 57600",
    "218123, 218000",
    "-12.4, -12",
    "-0.1, 0"
  })
  void itsStepsGrowWithIt(double exact, String rounded) {
    assertThat(Rough.of(exact)).isEqualTo(new BigDecimal(rounded));
  }

  @ParameterizedTest
  @CsvSource({"NaN", "Infinity"})
  void whatIsNotFiniteIsRefused(double value) {
    assertThatThrownBy(() -> Rough.of(value))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("forecast");
  }

  @Property
  void itIsOffByLessThanATwentiethAndNeverFallsAsTheFigureGrows(
      @ForAll @DoubleRange(min = 10, max = 1e7) double one,
      @ForAll @DoubleRange(min = 10, max = 1e7) double other) {
    double rough = Rough.of(one).doubleValue();

    assertThat(Math.abs(rough - one)).isLessThanOrEqualTo(one / 20);
    if (one <= other) {
      assertThat(rough).isLessThanOrEqualTo(Rough.of(other).doubleValue());
    }
  }

  @Test
  void itIsRoundedInTheUnitInWhichItIsShown() {
    Figure salt = Figure.roughly(Mass.ofPounds(1094.9));

    assertThat(words.figure(salt)).isEqualTo("1,090 lb");
    assertThat(Wording.of(Locale.US, UnitSystem.METRIC).figure(salt)).isEqualTo("495 kg");
    assertThat(words.number(salt)).isEqualTo("1,090");
  }

  @Test
  void halvesAreShownWhereThereAreSome() {
    assertThat(words.figure(Figure.roughDays(1.4))).isEqualTo("1.5 days");
    assertThat(words.figure(Figure.roughDays(1.1))).isEqualTo("1 day");
    assertThat(words.figure(Figure.roughly(Volume.ofGallons(8.4)))).isEqualTo("8.5 gal");
  }

  @Test
  void moneyIsRoundedToTheWholeUnitAtLeast() {
    assertThat(words.figure(Figure.about(Money.parse("USD 157.17")))).isEqualTo("$155");
    assertThat(words.figure(Figure.about(Money.parse("USD 0.80")))).isEqualTo("$1");
    assertThat(words.figure(Figure.about(Money.parse("USD 0.30")))).isEqualTo("$0");
  }

  @ParameterizedTest
  @CsvSource({
    "USD 2524.99, '$2,520'",
    "JPY 183456, '¥183,000'",
    "KWD 61.237, KWD60",
    "KWD 4.4, KWD4",
    "USD -12.4, -$12"
  })
  void theStepOfACostFollowsItsSizeInAnyCurrency(String exact, String printed) {
    assertThat(words.about(Money.parse(exact)).replaceAll("\\h", " ")).isEqualTo(printed);
  }

  @Test
  void costsAreAsFarApartAsTheyArePrinted() {
    Money more = Money.parse("USD 2524.99");
    Money less = Money.parse("USD 2478.10");

    assertThat(words.figure(Figure.apart(more, less))).isEqualTo("$40");
    assertThat(Figure.apart(less, more)).isEqualTo(Figure.apart(more, less));
    assertThat(Rough.alike(more, Money.parse("USD 2518"))).isTrue();
    assertThat(Rough.alike(more, less)).isFalse();
  }

  @Property
  void aDifferenceIsThatOfThePrintedSums(
      @ForAll @DoubleRange(max = 1e6) double one, @ForAll @DoubleRange(max = 1e6) double other) {
    Money first = Money.of(CurrencyUnit.USD, one, RoundingMode.HALF_UP);
    Money second = Money.of(CurrencyUnit.USD, other, RoundingMode.HALF_UP);

    assertThat(words.figure(Figure.apart(first, second)))
        .isEqualTo(words.figure(new Figure.Estimate(printed(first).minus(printed(second)).abs())));
  }

  private Money printed(Money sum) {
    return Money.of(CurrencyUnit.USD, new BigDecimal(words.about(sum).replaceAll("[$,]", "")));
  }
}
