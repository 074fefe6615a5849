package io.github.brinewright.trace;

import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Quantity;
import io.github.brinewright.quantity.Temperature;
import io.github.brinewright.quantity.Volume;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalTime;
import java.util.Set;
import org.joda.money.BigMoney;
import org.joda.money.BigMoneyProvider;
import org.joda.money.Money;

/**
 * One value inside a step or a finding, still unformatted: the words package writes it for a locale
 * and a system of units.
 */
public sealed interface Figure {
  /** Decimals are left to the words: to the kind of the value, or to the step that it stands in. */
  int USUAL = -1;

  /** As precise as a forecast is sure: rounded by its size as {@link Rough} says. */
  int ROUGH = -2;

  /** A physical quantity. */
  record Physical(Quantity<?> value, int decimals) implements Figure {}

  /** A temperature. */
  record Heat(Temperature value) implements Figure {}

  /** A dimensionless number. */
  record Number(double value, int decimals) implements Figure {}

  /** A share, written in per cent. */
  record Share(double fraction, int decimals) implements Figure {}

  /** A bed of resin, written in the unit that beds are sold by. */
  record Bed(Volume value) implements Figure {}

  /** A time of day, written as a clock shows it. */
  record Clock(LocalTime value) implements Figure {}

  /** A number of days. */
  record Days(double days, int decimals) implements Figure {}

  /** A time within a cycle, written in minutes. */
  record Time(Duration value, int decimals) implements Figure {}

  /** An amount of money; a price for each unit keeps all its digits. */
  record Amount(BigMoney value) implements Figure {}

  /** An amount of money as sure as a forecast is, rounded already, written to the whole unit. */
  record Estimate(Money value) implements Figure {}

  /** A price of a mass, written for the pound with all its digits or for the kilogram. */
  record PriceOfMass(BigMoney perPound) implements Figure {}

  /** A mass of salt as a number of usual bags: to the bag, and not less than one. */
  record Bags(Mass salt) implements Figure {}

  /** What a usual bag of salt weighs. */
  record UsualBag() implements Figure {}

  /** A name that a person entered or that a publication uses. */
  record Name(String text) implements Figure {}

  /** A word of the trade that each language has its own name for. */
  record Term(Enum<?> value) implements Figure {}

  /** Some days of the week, written in their order. */
  record Weekdays(Set<DayOfWeek> days) implements Figure {}

  /**
   * {@return a quantity with the usual decimals of its kind}
   *
   * @param value what is shown
   */
  static Figure of(Quantity<?> value) {
    return new Physical(value, USUAL);
  }

  /**
   * {@return a quantity with the given number of decimals}
   *
   * @param value what is shown
   * @param decimals digits after the decimal point; zero or more
   */
  static Figure of(Quantity<?> value, int decimals) {
    return new Physical(value, decimals);
  }

  /**
   * {@return a quantity as precise as a forecast is sure}
   *
   * @param value what is shown
   */
  static Figure roughly(Quantity<?> value) {
    return new Physical(value, ROUGH);
  }

  /**
   * {@return a bed of resin}
   *
   * @param volume of the resin
   */
  static Figure bed(Volume volume) {
    return new Bed(volume);
  }

  /**
   * {@return a time of day}
   *
   * @param value what is shown, to the minute
   */
  static Figure of(LocalTime value) {
    return new Clock(value);
  }

  /**
   * {@return a temperature}
   *
   * @param value what is shown
   */
  static Figure of(Temperature value) {
    return new Heat(value);
  }

  /**
   * {@return a number; its decimals are left to the words}
   *
   * @param value what is shown
   */
  static Figure of(double value) {
    return new Number(value, USUAL);
  }

  /**
   * {@return a number with the given number of decimals}
   *
   * @param value what is shown
   * @param decimals digits after the decimal point; zero or more
   */
  static Figure of(double value, int decimals) {
    return new Number(value, decimals);
  }

  /**
   * {@return a whole number}
   *
   * @param value what is shown
   */
  static Figure of(int value) {
    return new Number(value, 0);
  }

  /**
   * {@return a share in whole per cent}
   *
   * @param fraction 1 for 100 %; dimensionless
   */
  static Figure percent(double fraction) {
    return new Share(fraction, 0);
  }

  /**
   * {@return a number of days; its decimals are left to the words}
   *
   * @param days number of days; zero or more
   */
  static Figure days(double days) {
    return new Days(days, USUAL);
  }

  /**
   * {@return a number of days with the given number of decimals}
   *
   * @param days number of days; zero or more
   * @param decimals digits after the decimal point; zero or more
   */
  static Figure days(double days, int decimals) {
    return new Days(days, decimals);
  }

  /**
   * {@return a number of days as precise as a forecast is sure}
   *
   * @param days number of days; zero or more
   */
  static Figure roughDays(double days) {
    return new Days(days, ROUGH);
  }

  /**
   * {@return a time in minutes; its decimals are left to the words}
   *
   * @param value what is shown
   */
  static Figure of(Duration value) {
    return new Time(value, USUAL);
  }

  /**
   * {@return a time in minutes with the given number of decimals}
   *
   * @param value what is shown
   * @param decimals digits after the decimal point; zero or more
   */
  static Figure of(Duration value, int decimals) {
    return new Time(value, decimals);
  }

  /**
   * {@return an amount of money}
   *
   * @param value what is shown
   */
  static Figure of(BigMoneyProvider value) {
    return new Amount(value.toBigMoney());
  }

  /**
   * {@return a cost of running, or a sum with one in it, as precise as a forecast is sure: rounded
   * as {@link Rough} says}
   *
   * @param value the forecast
   */
  static Figure about(Money value) {
    return new Estimate(Rough.of(value));
  }

  /**
   * {@return how far two such costs are apart as they are printed; never negative}
   *
   * @param one a forecast
   * @param other a forecast in the same currency
   */
  static Figure apart(Money one, Money other) {
    return new Estimate(Rough.apart(one, other));
  }

  /**
   * {@return a name}
   *
   * @param text the name as it is printed
   */
  static Figure of(String text) {
    return new Name(text);
  }

  /**
   * {@return a word of the trade}
   *
   * @param value what is shown
   */
  static Figure of(Enum<?> value) {
    return new Term(value);
  }

  /**
   * {@return some days of the week}
   *
   * @param days at least one
   */
  static Figure of(Set<DayOfWeek> days) {
    return new Weekdays(days);
  }
}
