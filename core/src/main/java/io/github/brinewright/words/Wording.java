package io.github.brinewright.words;

import io.github.brinewright.comparison.Reason;
import io.github.brinewright.finding.Caution;
import io.github.brinewright.finding.Finding;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Minutes;
import io.github.brinewright.quantity.Quantity;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Source;
import io.github.brinewright.trace.Step;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.NumberFormat;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.joda.money.BigMoney;
import org.joda.money.Money;

/**
 * Words and numbers for one locale and system of units. Not for use by several threads at once.
 *
 * <p>The steps of a calculation are always in US units, in which their formulas hold.
 */
public final class Wording {
  private static final int MONEY_DECIMALS = 2;
  private static final int NUMBER_DECIMALS = 2;
  private static final int DAY_DECIMALS = 0;
  private static final int MINUTE_DECIMALS = 1;

  private final Locale locale;
  private final UnitSystem system;
  private final Messages messages;
  private final NumberFormat numbers;

  /**
   * Words for a locale in the given units.
   *
   * @param moreTexts names of further resource bundles to look texts up in
   */
  public Wording(Locale locale, UnitSystem system, String... moreTexts) {
    this.locale = locale;
    this.system = system;
    messages = new Messages(locale, moreTexts);
    numbers = NumberFormat.getNumberInstance(locale);
    numbers.setRoundingMode(RoundingMode.HALF_UP);
  }

  /** The locale. */
  public Locale locale() {
    return locale;
  }

  /** A text of the bundle with figures in it. */
  public String text(String key, Figure... figures) {
    return fill(key, Arrays.asList(figures));
  }

  private String fill(String key, List<Figure> figures) {
    return Messages.fill(messages.get(key), figures.stream().map(this::figure).toList());
  }

  /** A number with exactly the given decimals. */
  public String number(double value, int decimals) {
    numbers.setMinimumFractionDigits(decimals);
    numbers.setMaximumFractionDigits(decimals);
    return numbers.format(BigDecimal.valueOf(value));
  }

  /** A figure with its unit. */
  public String figure(Figure figure) {
    return figure(figure, system);
  }

  private String figure(Figure figure, UnitSystem units) {
    if (figure instanceof Figure.Physical physical) {
      return unit(UnitStyle.of(physical.value(), units).key(), bare(figure, units));
    }
    if (figure instanceof Figure.Heat) {
      return unit(units == UnitSystem.US ? "fahrenheit" : "celsius", bare(figure, units));
    }
    if (figure instanceof Figure.Time) {
      return unit("minute", bare(figure, units));
    }
    if (figure instanceof Figure.Days days) {
      String text = bare(figure, units);
      return unit(
          text.equals(number(1, decimals(days.decimals(), DAY_DECIMALS))) ? "day.one" : "day.other",
          text);
    }
    return bare(figure, units);
  }

  private String unit(String key, String number) {
    return Messages.fill(messages.get("unit." + key), List.of(number));
  }

  /** A figure without its unit. */
  private String bare(Figure figure, UnitSystem units) {
    if (figure instanceof Figure.Physical physical) {
      return physical(physical, units);
    } else if (figure instanceof Figure.Heat heat) {
      double degrees = units == UnitSystem.US ? heat.value().fahrenheit() : heat.value().celsius();
      return number(degrees, 0);
    } else if (figure instanceof Figure.Number number) {
      return number(number.value(), decimals(number.decimals(), NUMBER_DECIMALS));
    } else if (figure instanceof Figure.Share share) {
      return share(share);
    } else if (figure instanceof Figure.Days days) {
      return number(days.days(), decimals(days.decimals(), DAY_DECIMALS));
    } else if (figure instanceof Figure.Time time) {
      return number(Minutes.of(time.value()), decimals(time.decimals(), MINUTE_DECIMALS));
    } else if (figure instanceof Figure.Amount amount) {
      return money(amount.value());
    } else if (figure instanceof Figure.Estimate estimate) {
      return about(estimate.value());
    } else if (figure instanceof Figure.Name name) {
      return name.text();
    } else if (figure instanceof Figure.Term term) {
      return term(term.value());
    }
    throw new IllegalStateException("no way to write " + figure);
  }

  private String physical(Figure.Physical physical, UnitSystem units) {
    Quantity<?> value = physical.value();
    UnitStyle style = UnitStyle.of(value, units);
    return number(
        style.number().applyAsDouble(value), decimals(physical.decimals(), style.decimals()));
  }

  private static int decimals(int asked, int usual) {
    return asked == Figure.USUAL ? usual : asked;
  }

  private String share(Figure.Share share) {
    NumberFormat percent = NumberFormat.getPercentInstance(locale);
    percent.setMinimumFractionDigits(share.decimals());
    percent.setMaximumFractionDigits(share.decimals());
    percent.setRoundingMode(RoundingMode.HALF_UP);
    return percent.format(share.fraction());
  }

  /** A figure without its unit, for the first of a pair. */
  public String number(Figure figure) {
    return bare(figure, system);
  }

  /** A hardness in the unit that this wording does not use: mg/L for gpg and the other way. */
  public String hardnessInOtherUnit(Hardness hardness) {
    UnitSystem other = system == UnitSystem.US ? UnitSystem.METRIC : UnitSystem.US;
    return figure(Figure.of(hardness), other);
  }

  /** The volume of a bed: cubic feet or liters. */
  public String resin(Volume volume) {
    return system == UnitSystem.US
        ? unit("ft3", number(volume.cubicFeet(), 2))
        : unit("L", number(volume.litres(), 0));
  }

  /** Money to the cent, or a price for each unit with up to four decimals. */
  public String money(BigMoney amount) {
    return money(amount, MONEY_DECIMALS, 2 * MONEY_DECIMALS);
  }

  /** Money to the whole unit, for an estimate. */
  public String about(Money amount) {
    return money(amount.toBigMoney(), 0, 0);
  }

  private String money(BigMoney amount, int atLeast, int atMost) {
    NumberFormat format = NumberFormat.getCurrencyInstance(locale);
    format.setCurrency(amount.getCurrencyUnit().toCurrency());
    format.setMinimumFractionDigits(atLeast);
    format.setMaximumFractionDigits(atMost);
    format.setRoundingMode(RoundingMode.HALF_UP);
    return format.format(amount.getAmount());
  }

  /** The name of a word of the trade. */
  public String term(Enum<?> value) {
    return messages.get("term." + value.getDeclaringClass().getSimpleName() + "." + value.name());
  }

  /** A finding as a sentence or two. */
  public String finding(Finding finding) {
    return fill("finding." + finding.code(), finding.figures());
  }

  /** A reason as a sentence or two. */
  public String reason(Reason reason) {
    String key = "reason." + reason.kind().name();
    return reason
        .because()
        .map(broken -> Messages.fill(messages.get(key), List.of(finding(broken))))
        .orElseGet(() -> fill(key, reason.figures()));
  }

  /** A step as a reader would redo it. */
  public WorkedStep step(Step step) {
    String key = "step." + step.kind().name() + ".";
    return new WorkedStep(
        messages.get(key + "name"),
        messages.get(key + "formula"),
        StepText.fill(
            messages.get(key + "numbers"), step.inputs(), figure -> bare(figure, UnitSystem.US)),
        StepText.fill(
            messages.get(key + "result"),
            List.of(step.result()),
            figure -> figure(figure, UnitSystem.US)),
        source(step.source()));
  }

  /** A caution as a sentence or two. */
  public String caution(Caution caution) {
    return messages.get("caution." + caution.name());
  }

  /** A date in full. */
  public String date(LocalDate date) {
    return DateTimeFormatter.ofLocalizedDate(FormatStyle.LONG).withLocale(locale).format(date);
  }

  /** A source with its standing. */
  public String source(Source source) {
    return Messages.fill(
        messages.get("source.standing"), List.of(term(source.standing()), source.citation()));
  }
}
