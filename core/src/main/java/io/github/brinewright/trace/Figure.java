package io.github.brinewright.trace;

import io.github.brinewright.quantity.Quantity;
import io.github.brinewright.quantity.Temperature;
import java.time.Duration;
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

  /** A physical quantity. */
  record Physical(Quantity<?> value, int decimals) implements Figure {}

  /** A temperature. */
  record Heat(Temperature value) implements Figure {}

  /** A dimensionless number. */
  record Number(double value, int decimals) implements Figure {}

  /** A share, written in per cent. */
  record Share(double fraction, int decimals) implements Figure {}

  /** A number of days. */
  record Days(double days, int decimals) implements Figure {}

  /** A time within a cycle, written in minutes. */
  record Time(Duration value, int decimals) implements Figure {}

  /** An amount of money; a price for each unit keeps all its digits. */
  record Amount(BigMoney value) implements Figure {}

  /** An estimated amount of money, written to the whole unit. */
  record Estimate(Money value) implements Figure {}

  /** A name that a person entered or that a publication uses. */
  record Name(String text) implements Figure {}

  /** A word of the trade that each language has its own name for. */
  record Term(Enum<?> value) implements Figure {}

  /** A quantity with the usual decimals of its kind. */
  static Figure of(Quantity<?> value) {
    return new Physical(value, USUAL);
  }

  /** A quantity with the given number of decimals. */
  static Figure of(Quantity<?> value, int decimals) {
    return new Physical(value, decimals);
  }

  /** A temperature. */
  static Figure of(Temperature value) {
    return new Heat(value);
  }

  /** A number; its decimals are left to the words. */
  static Figure of(double value) {
    return new Number(value, USUAL);
  }

  /** A number with the given number of decimals. */
  static Figure of(double value, int decimals) {
    return new Number(value, decimals);
  }

  /** A whole number. */
  static Figure of(int value) {
    return new Number(value, 0);
  }

  /** A share in whole per cent. */
  static Figure percent(double fraction) {
    return new Share(fraction, 0);
  }

  /** A number of days; its decimals are left to the words. */
  static Figure days(double days) {
    return new Days(days, USUAL);
  }

  /** A number of days with the given number of decimals. */
  static Figure days(double days, int decimals) {
    return new Days(days, decimals);
  }

  /** A time in minutes; its decimals are left to the words. */
  static Figure of(Duration value) {
    return new Time(value, USUAL);
  }

  /** A time in minutes with the given number of decimals. */
  static Figure of(Duration value, int decimals) {
    return new Time(value, decimals);
  }

  /** An amount of money. */
  static Figure of(BigMoneyProvider value) {
    return new Amount(value.toBigMoney());
  }

  /** An estimated amount of money. */
  static Figure about(Money value) {
    return new Estimate(value);
  }

  /** A name. */
  static Figure of(String text) {
    return new Name(text);
  }

  /** A word of the trade. */
  static Figure of(Enum<?> value) {
    return new Term(value);
  }
}
