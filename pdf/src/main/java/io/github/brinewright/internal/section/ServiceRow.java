package io.github.brinewright.internal.section;

import io.github.brinewright.model.Phrase;
import io.github.brinewright.model.Table;
import io.github.brinewright.quantity.Mass;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.service.Payback;
import io.github.brinewright.service.ServiceOption;
import io.github.brinewright.service.ServiceOption.Kind;
import io.github.brinewright.simulation.BedSettings;
import io.github.brinewright.simulation.Spread;
import io.github.brinewright.softener.Control;
import io.github.brinewright.trace.Figure;
import java.math.RoundingMode;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import org.joda.money.Money;

/** What the ways to go on are compared by: a line of a table, with its cell for each. */
enum ServiceRow {
  SETTING("service.row.setting", option -> FoundSetting.of(option.bed())),
  HOUR("service.row.hour", option -> hour(option.bed())),
  DAYS("service.row.days", option -> Phrase.of(days(option))),
  EACH("service.row.each", option -> Phrase.of(Figure.of(option.saltPerRegeneration(), 1))),
  SALT("service.row.salt", ServiceRow::salt),
  WATER("service.row.water", option -> gallons(option.waterGallons())),
  OUT("service.row.out", option -> ranged(option.runOutDays(), Figure::roughDays)),
  HARD("service.row.hard", option -> gallons(option.hardGallons())),
  COST("service.row.cost", ServiceRow::cost),
  PRICE("service.row.price", ServiceRow::price),
  PAYBACK("service.row.payback", option -> returned(option.payback())),
  PAYBACK_FOUND("service.row.paybackFound", option -> returned(option.paybackAgainstFound()));

  /** A range narrower than this share of its middle is not told. */
  static final Phrase NONE = Phrase.plain("–");

  private final String key;
  private final Function<ServiceOption, Phrase> cell;

  ServiceRow(String key, Function<ServiceOption, Phrase> cell) {
    this.key = key;
    this.cell = cell;
  }

  Table.Line line(List<ServiceOption> options) {
    return Table.Line.of(key, options.stream().map(cell).toList());
  }

  /** None of its own where a meter does not wait for one. */
  private static Phrase hour(BedSettings bed) {
    return bed.control() == Control.METERED_AT_ONCE
        ? NONE
        : Phrase.of(Figure.of(LocalTime.of(bed.hour(), 0)));
  }

  static Figure days(ServiceOption option) {
    return Figure.roughDays(option.daysBetweenRegenerations());
  }

  private static Phrase salt(ServiceOption option) {
    return ranged(option.saltPounds(), pounds -> Figure.roughly(Mass.ofPounds(pounds)));
  }

  private static Phrase gallons(Spread spread) {
    return ranged(spread, gallons -> Figure.roughly(Volume.ofGallons(gallons)));
  }

  private static Phrase cost(ServiceOption option) {
    Money stated = option.cost();
    return ranged(
        option.costs(),
        units -> Figure.about(Money.of(stated.getCurrencyUnit(), units, RoundingMode.HALF_UP)));
  }

  /** With its range, where that is worth a thought. */
  private static Phrase ranged(Spread spread, DoubleFunction<Figure> figure) {
    if (spread.isNarrow()) {
      return Phrase.of(figure.apply(spread.mean()));
    }
    return new Phrase.Ranged(
        figure.apply(spread.mean()), figure.apply(spread.low()), figure.apply(spread.high()));
  }

  private static Phrase price(ServiceOption option) {
    if (option.kind() == Kind.AS_FOUND) {
      return NONE;
    }
    return option
        .price()
        .map(price -> Phrase.of(Figure.of(price)))
        .orElseGet(() -> Phrase.text("service.unpriced"));
  }

  private static Phrase returned(Optional<Payback> payback) {
    return payback.<Phrase>map(Phrase.Returned::new).orElse(NONE);
  }
}
