package io.github.brinewright.words;

import io.github.brinewright.quantity.Area;
import io.github.brinewright.quantity.Concentration;
import io.github.brinewright.quantity.Density;
import io.github.brinewright.quantity.Energy;
import io.github.brinewright.quantity.FlowRate;
import io.github.brinewright.quantity.FlowVelocity;
import io.github.brinewright.quantity.FoulingAllowance;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.HardnessAmount;
import io.github.brinewright.quantity.Length;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Power;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.quantity.Quantity;
import io.github.brinewright.quantity.ResinCapacity;
import io.github.brinewright.quantity.SaltDosage;
import io.github.brinewright.quantity.SaltEfficiency;
import io.github.brinewright.quantity.Viscosity;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.quantity.WaterEfficiency;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * How one kind of quantity is written: its unit, and the decimals that its accuracy deserves.
 *
 * @param key of the unit in the message bundle
 * @param number reads the quantity in that unit
 * @param decimals usual number of decimals
 */
record UnitStyle(String key, ToDoubleFunction<Quantity<?>> number, int decimals) {
  private static final Map<Class<?>, UnitStyle> US = new LinkedHashMap<>();
  private static final Map<Class<?>, UnitStyle> METRIC = new LinkedHashMap<>();

  static {
    us(Hardness.class, "gpg", Hardness::grainsPerGallon, 1);
    metric(Hardness.class, "mgPerL", Hardness::milligramsPerLitre, 0);
    both(Concentration.class, "mgPerL", Concentration::milligramsPerLitre, 2);
    us(Volume.class, "gal", Volume::gallons, 0);
    metric(Volume.class, "L", Volume::litres, 0);
    us(HardnessAmount.class, "grains", HardnessAmount::grains, 0);
    metric(HardnessAmount.class, "g", HardnessAmount::grams, 0);
    us(Mass.class, "lb", Mass::pounds, 2);
    metric(Mass.class, "kg", Mass::kilograms, 2);
    us(SaltDosage.class, "lbPerFt3", SaltDosage::poundsPerCubicFoot, 1);
    metric(SaltDosage.class, "gPerL", SaltDosage::gramsPerLitre, 0);
    us(ResinCapacity.class, "grainsPerFt3", ResinCapacity::grainsPerCubicFoot, 0);
    metric(ResinCapacity.class, "eqPerL", ResinCapacity::equivalentsPerLitre, 2);
    us(FlowRate.class, "gpm", FlowRate::gallonsPerMinute, 1);
    metric(FlowRate.class, "LPerMin", FlowRate::litresPerMinute, 0);
    us(Pressure.class, "psi", Pressure::psi, 0);
    metric(Pressure.class, "bar", Pressure::bar, 1);
    us(Length.class, "in", Length::inches, 0);
    metric(Length.class, "mm", Length::millimetres, 0);
    us(SaltEfficiency.class, "grainsPerLb", SaltEfficiency::grainsPerPound, 0);
    metric(SaltEfficiency.class, "gPerKg", SaltEfficiency::gramsPerKilogram, 0);
    us(WaterEfficiency.class, "galPerKgr", WaterEfficiency::gallonsPerThousandGrains, 1);
    metric(WaterEfficiency.class, "LPerKg", UnitStyle::litresPerKilogram, 0);
    us(
        FoulingAllowance.class,
        "gpgPerMgL",
        FoulingAllowance::grainsPerGallonPerMilligramPerLitre,
        1);
    metric(FoulingAllowance.class, "mgPerLPerMgL", UnitStyle::milligramsPerMilligram, 0);
    both(Power.class, "W", Power::watts, 1);
    both(Energy.class, "kWh", Energy::kilowattHours, 0);
    us(FlowVelocity.class, "gpmPerFt2", FlowVelocity::gallonsPerMinutePerSquareFoot, 2);
    metric(FlowVelocity.class, "mmPerS", v -> v.metresPerSecond() * 1000, 2);
    us(Area.class, "ft2", Area::squareFeet, 3);
    metric(Area.class, "m2", Area::squareMetres, 4);
    both(Density.class, "kgPerM3", Density::kilogramsPerCubicMetre, 1);
    both(Viscosity.class, "mPas", Viscosity::millipascalSeconds, 3);
  }

  private static double litresPerKilogram(WaterEfficiency water) {
    double litres = Volume.ofGallons(water.gallonsPerThousandGrains()).litres();
    return 1000 * litres / HardnessAmount.ofGrains(1000).grams();
  }

  private static double milligramsPerMilligram(FoulingAllowance allowance) {
    return Hardness.ofGrainsPerGallon(allowance.grainsPerGallonPerMilligramPerLitre())
        .milligramsPerLitre();
  }

  private static <Q extends Quantity<Q>> void us(
      Class<Q> kind, String key, ToDoubleFunction<Q> number, int decimals) {
    US.put(kind, style(kind, key, number, decimals));
  }

  private static <Q extends Quantity<Q>> void metric(
      Class<Q> kind, String key, ToDoubleFunction<Q> number, int decimals) {
    METRIC.put(kind, style(kind, key, number, decimals));
  }

  private static <Q extends Quantity<Q>> void both(
      Class<Q> kind, String key, ToDoubleFunction<Q> number, int decimals) {
    us(kind, key, number, decimals);
    metric(kind, key, number, decimals);
  }

  private static <Q extends Quantity<Q>> UnitStyle style(
      Class<Q> kind, String key, ToDoubleFunction<Q> number, int decimals) {
    return new UnitStyle(key, quantity -> number.applyAsDouble(kind.cast(quantity)), decimals);
  }

  /** The kinds that can be written, with how. */
  static Map<Class<?>, UnitStyle> all(UnitSystem system) {
    return Collections.unmodifiableMap(system == UnitSystem.US ? US : METRIC);
  }

  static UnitStyle of(Quantity<?> quantity, UnitSystem system) {
    UnitStyle style = all(system).get(quantity.getClass());
    if (style == null) {
      throw new IllegalStateException("no way to write a " + quantity.getClass());
    }
    return style;
  }
}
