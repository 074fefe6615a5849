package io.github.brinewright.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.words.UnitSystem;
import io.github.brinewright.words.Wording;
import java.math.BigDecimal;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
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
    assertThat(words.figure(Figure.roughly(Money.parse("USD 157.17")))).isEqualTo("$155");
    assertThat(words.figure(Figure.roughly(Money.parse("USD 0.80")))).isEqualTo("$1");
  }
}
