package io.github.brinewright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import javax.measure.Quantity;
import javax.measure.Unit;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** Conversions against a units library, and round trips. */
class UnitConversionTest {
  /** Both sides use exact definitions; only floating point differs. */
  private static final double FLOATING_POINT = 1e-12;

  private static final Unit<javax.measure.quantity.Length> METRE = Units.METRE;
  private static final Unit<javax.measure.quantity.Length> INCH = METRE.multiply(0.0254);
  private static final Unit<javax.measure.quantity.Volume> LITRE = Units.LITRE;
  private static final Unit<javax.measure.quantity.Volume> CUBIC_INCH =
      INCH.pow(3).asType(javax.measure.quantity.Volume.class);

  private static <Q extends Quantity<Q>> double convert(double value, Unit<Q> from, Unit<Q> to) {
    return Quantities.getQuantity(value, from).to(to).getValue().doubleValue();
  }

  @Test
  void volumesAgreeWithAUnitsLibrary() {
    Unit<javax.measure.quantity.Volume> gallon = CUBIC_INCH.multiply(231);
    Unit<javax.measure.quantity.Volume> cubicFoot = CUBIC_INCH.multiply(1728);
    close(Volume.ofGallons(7).litres(), convert(7, gallon, LITRE));
    close(Volume.ofCubicFeet(3).gallons(), convert(3, cubicFoot, gallon));
    close(Volume.ofCubicMetres(2).gallons(), convert(2000, LITRE, gallon));
  }

  @Test
  void lengthsMassesAndTemperaturesAgreeWithAUnitsLibrary() {
    Unit<javax.measure.quantity.Mass> pound = Units.KILOGRAM.multiply(0.45359237);
    close(Length.ofFeet(4).metres(), convert(48, INCH, METRE));
    close(Length.ofMillimetres(0.6).inches(), convert(0.0006, METRE, INCH));
    close(Mass.ofPounds(40).kilograms(), convert(40, pound, Units.KILOGRAM));
    close(
        Temperature.ofFahrenheit(50).celsius() + 273.15, convert(10, Units.CELSIUS, Units.KELVIN));
  }

  @Test
  void pressureAndFlowAgreeWithAUnitsLibrary() {
    double newtonPerPoundForce = 0.45359237 * 9.80665;
    double pascals = newtonPerPoundForce / (0.0254 * 0.0254);
    assertThat(Pressure.ofPsi(1).pascals()).isCloseTo(pascals, within(1e-6));
    close(FlowRate.ofGallonsPerMinute(1).cubicMetresPerHour(), 60 * 3.785411784 / 1000);
    close(
        FlowVelocity.ofGallonsPerMinutePerSquareFoot(10).metresPerSecond(),
        10 * 3.785411784e-3 / 60 / (0.3048 * 0.3048));
  }

  private static void close(double actual, double expected) {
    assertThat(actual).isCloseTo(expected, within(Math.abs(expected) * FLOATING_POINT));
  }

  @Property
  void everyUnitComesBackAsItWent(@ForAll @DoubleRange(min = 0.01, max = 1e6) double value) {
    roundTrip(value, Hardness::ofMilligramsPerLitre, Hardness::milligramsPerLitre);
    roundTrip(value, Hardness::ofGermanDegrees, Hardness::germanDegrees);
    roundTrip(value, Hardness::ofEnglishDegrees, Hardness::englishDegrees);
    roundTrip(value, Hardness::ofFrenchDegrees, Hardness::frenchDegrees);
    roundTrip(value, Hardness::ofMillimolesPerLitre, Hardness::millimolesPerLitre);
    roundTrip(value, HardnessAmount::ofEquivalents, HardnessAmount::equivalents);
    roundTrip(value, HardnessAmount::ofGrams, HardnessAmount::grams);
    roundTrip(value, ResinCapacity::ofEquivalentsPerLitre, ResinCapacity::equivalentsPerLitre);
    roundTrip(value, SaltDosage::ofGramsPerLitre, SaltDosage::gramsPerLitre);
    roundTrip(value, SaltEfficiency::ofGramsPerKilogram, SaltEfficiency::gramsPerKilogram);
    roundTrip(value, Pressure::ofBar, Pressure::bar);
    roundTrip(value, Area::ofSquareMetres, Area::squareMetres);
    roundTrip(value, FlowRate::ofLitresPerMinute, FlowRate::litresPerMinute);
  }

  private static <Q> void roundTrip(
      double value, DoubleFunction<Q> there, ToDoubleFunction<Q> back) {
    close(back.applyAsDouble(there.apply(value)), value);
  }

  @Test
  void aQuantityIsFiniteAndComparable() {
    assertThatThrownBy(() -> Hardness.ofGrainsPerGallon(Double.NaN))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("Hardness");
    assertThat(Mass.ofPounds(0)).isEqualTo(Mass.ofPounds(-0.0));
    assertThat(Mass.ofPounds(2)).isGreaterThan(Mass.ofPounds(1)).hasToString("2.0 lb");
    assertThat(Mass.ofPounds(2)).isNotEqualTo(Volume.ofGallons(2));
  }

  @Test
  void minutesKeepTheirFraction() {
    assertThat(Minutes.toDuration(5.12)).isEqualTo(Duration.ofMillis(307_200));
    assertThat(Minutes.of(Duration.ofSeconds(90))).isEqualTo(1.5);
  }
}
