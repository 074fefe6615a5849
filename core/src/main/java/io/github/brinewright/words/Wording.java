package io.github.brinewright.words;

import io.github.brinewright.comparison.MarginCheck;
import io.github.brinewright.comparison.Reason;
import io.github.brinewright.finding.Caution;
import io.github.brinewright.finding.Finding;
import io.github.brinewright.finding.ReasonRule;
import io.github.brinewright.quantity.Hardness;
import io.github.brinewright.quantity.Minutes;
import io.github.brinewright.quantity.Quantity;
import io.github.brinewright.quantity.Require;
import io.github.brinewright.quantity.Volume;
import io.github.brinewright.service.Advice;
import io.github.brinewright.service.Fault;
import io.github.brinewright.service.Payback;
import io.github.brinewright.sizing.Assumption;
import io.github.brinewright.study.MeterSaving;
import io.github.brinewright.trace.Figure;
import io.github.brinewright.trace.Rough;
import io.github.brinewright.trace.Source;
import io.github.brinewright.trace.Step;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.text.NumberFormat;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.Currency;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Words and numbers for one locale and system of units. May be used by several threads at once.
 *
 * <p>The steps of a calculation are always in US units, in which their formulas are published and
 * hold; in metric words a result has its metric figure in brackets besides. A text with a form for
 * one and a form for more, as {@link Texts} says, is chosen by its first figure.
 */
public final class Wording {
  /** Places of the days between regenerations among the figures of a reason. */
  private static final int OWN_DAYS = 3;

  private static final int OTHER_DAYS = 4;

  private static final int MORE_PRICE_DECIMALS = 2;
  private static final Set<String> KNOWN_CURRENCIES =
      Currency.getAvailableCurrencies().stream()
          .map(Currency::getCurrencyCode)
          .collect(Collectors.toUnmodifiableSet());

  /** By definition of the pound, 0.45359237 kg; NIST Special Publication 811, appendix B. */
  private static final BigDecimal POUNDS_IN_A_KILOGRAM =
      BigDecimal.ONE.divide(new BigDecimal("0.45359237"), MathContext.DECIMAL64);

  private static final int NUMBER_DECIMALS = 2;
  private static final int DAY_DECIMALS = 0;
  private static final int MINUTE_DECIMALS = 1;

  private final Locale locale;
  private final UnitSystem system;
  private final Messages messages;
  private final NumberFormat plain;
  private final NumberFormat currency;
  private final ServiceWords service;

  private Wording(Locale locale, UnitSystem system, List<Texts> own) {
    this.locale = locale;
    this.system = system;
    messages = new Messages(locale, system, own);
    plain = NumberFormat.getNumberInstance(locale);
    currency = NumberFormat.getCurrencyInstance(locale);
    service = new ServiceWords(this, messages);
  }

  /**
   * {@return the words for a locale in the given units}
   *
   * @param locale language and country of words and numbers
   * @param system units of the figures
   * @param own texts beside the library's, of which later ones replace earlier ones; a language
   *     other than English, French and Spanish must come this way
   * @throws IllegalArgumentException when any text is missing in the locale's language, naming all
   *     that are, or when one names a figure that it is not given
   */
  public static Wording of(Locale locale, UnitSystem system, Texts... own) {
    return new Wording(locale, system, List.of(own));
  }

  /** {@return the locale} */
  public Locale locale() {
    return locale;
  }

  /**
   * {@return a text of the bundle with figures in it}
   *
   * @param key key of the text; one that the texts have
   * @param figures put in for {@code {0}}, {@code {1}} and so on
   */
  public String text(String key, Figure... figures) {
    return fill(key, Arrays.asList(figures));
  }

  private String fill(String key, List<Figure> figures) {
    String text =
        figures.stream()
            .findFirst()
            .flatMap(first -> decimal(first, system))
            .map(number -> messages.get(key, number))
            .orElseGet(() -> messages.get(key));
    return Messages.fill(text, figures.stream().map(this::figure).toList());
  }

  /**
   * {@return a number with exactly the given decimals}
   *
   * @param value finite
   * @param decimals digits after the decimal point; zero or more
   */
  public String number(double value, int decimals) {
    return number(rounded(value, decimals));
  }

  private String number(BigDecimal value) {
    return format(fresh(plain), value, value.scale(), value.scale());
  }

  private static BigDecimal rounded(double value, int decimals) {
    if (decimals == Figure.ROUGH) {
      return Rough.of(value);
    }
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
  }

  /** A format changes in use, so each use has its own. */
  private static NumberFormat fresh(NumberFormat like) {
    return (NumberFormat) like.clone();
  }

  private static String format(NumberFormat format, Number value, int atLeast, int atMost) {
    format.setMinimumFractionDigits(atLeast);
    format.setMaximumFractionDigits(atMost);
    format.setRoundingMode(RoundingMode.HALF_UP);
    return format.format(value);
  }

  /**
   * {@return a figure with its unit}
   *
   * @param figure what is written, in the units of this wording
   */
  public String figure(Figure figure) {
    return figure(figure, system);
  }

  private String figure(Figure figure, UnitSystem units) {
    return decimal(figure, units)
        .flatMap(number -> unit(figure, units).map(unit -> unit(unit, number)))
        .orElseGet(() -> bare(figure, units));
  }

  private static Optional<String> unit(Figure figure, UnitSystem units) {
    if (figure instanceof Figure.Physical physical) {
      return Optional.of(UnitStyle.of(physical.value(), units).key());
    } else if (figure instanceof Figure.UsualBag) {
      return Optional.of(UnitStyle.of(units.bag(), units).key());
    } else if (figure instanceof Figure.Heat) {
      return Optional.of(units == UnitSystem.US ? "fahrenheit" : "celsius");
    } else if (figure instanceof Figure.Time) {
      return Optional.of("minute");
    }
    return figure instanceof Figure.Days ? Optional.of("day") : Optional.empty();
  }

  private String unit(String unit, BigDecimal number) {
    return Messages.fill(messages.get("unit." + unit, number), List.of(number(number)));
  }

  /** What is printed of a figure that is a number. */
  private static Optional<BigDecimal> decimal(Figure figure, UnitSystem units) {
    if (figure instanceof Figure.Physical physical) {
      return Optional.of(physical(physical, units));
    } else if (figure instanceof Figure.UsualBag) {
      return Optional.of(physical(new Figure.Physical(units.bag(), 0), units));
    } else if (figure instanceof Figure.Bags bags) {
      return Optional.of(rounded(Math.max(1, bags.salt().ratioTo(units.bag())), 0));
    } else if (figure instanceof Figure.Heat heat) {
      double degrees = units == UnitSystem.US ? heat.value().fahrenheit() : heat.value().celsius();
      return Optional.of(rounded(degrees, 0));
    } else if (figure instanceof Figure.Number number) {
      return Optional.of(rounded(number.value(), decimals(number.decimals(), NUMBER_DECIMALS)));
    } else if (figure instanceof Figure.Days days) {
      return Optional.of(rounded(days.days(), decimals(days.decimals(), DAY_DECIMALS)));
    } else if (figure instanceof Figure.Time time) {
      return Optional.of(
          rounded(Minutes.of(time.value()), decimals(time.decimals(), MINUTE_DECIMALS)));
    }
    return Optional.empty();
  }

  private static BigDecimal physical(Figure.Physical physical, UnitSystem units) {
    Quantity<?> value = physical.value();
    UnitStyle style = UnitStyle.of(value, units);
    return rounded(
        style.number().applyAsDouble(value), decimals(physical.decimals(), style.decimals()));
  }

  private static int decimals(int asked, int usual) {
    return asked == Figure.USUAL ? usual : asked;
  }

  /** A figure without its unit. */
  private String bare(Figure figure, UnitSystem units) {
    return decimal(figure, units).map(this::number).orElseGet(() -> word(figure, units));
  }

  private String word(Figure figure, UnitSystem units) {
    if (figure instanceof Figure.Share share) {
      return share(share);
    } else if (figure instanceof Figure.Amount amount) {
      return money(amount.value());
    } else if (figure instanceof Figure.PriceOfMass price) {
      return price(price.perPound(), units);
    } else if (figure instanceof Figure.Estimate estimate) {
      return whole(estimate.value());
    } else if (figure instanceof Figure.Name name) {
      return name.text();
    } else if (figure instanceof Figure.Term term) {
      return term(term.value());
    } else if (figure instanceof Figure.Weekdays weekdays) {
      return weekdays(weekdays.days());
    } else if (figure instanceof Figure.Bed bed) {
      return resin(bed.value());
    } else if (figure instanceof Figure.Clock clock) {
      return service.clock(clock.value());
    }
    throw new IllegalStateException("no way to write " + figure);
  }

  private String share(Figure.Share share) {
    return unit("percent", percent(share));
  }

  private static BigDecimal percent(Figure.Share share) {
    return BigDecimal.valueOf(share.fraction())
        .movePointRight(2)
        .setScale(share.decimals(), RoundingMode.HALF_UP);
  }

  /** Whether a figure is printed as zero. */
  boolean isZero(Figure figure) {
    return (figure instanceof Figure.Share share
            ? Optional.of(percent(share))
            : decimal(figure, system))
        .filter(number -> number.signum() == 0)
        .isPresent();
  }

  /**
   * {@return a figure without its unit, for the first of a pair}
   *
   * @param figure what is written, in the units of this wording
   */
  public String number(Figure figure) {
    return bare(figure, system);
  }

  /**
   * {@return a hardness in the unit that this wording does not use: mg/L for gpg and the other way}
   *
   * @param hardness a hardness as CaCO3
   */
  public String hardnessInOtherUnit(Hardness hardness) {
    UnitSystem other = system == UnitSystem.US ? UnitSystem.METRIC : UnitSystem.US;
    return figure(Figure.of(hardness), other);
  }

  /**
   * {@return a figure with its unit and, where this wording is metric, the same in US units in
   * brackets}
   *
   * @param figure what is written
   */
  public String figureInUsUnitsToo(Figure figure) {
    return system == UnitSystem.US
        ? figure(figure)
        : figure(figure) + " (" + figure(figure, UnitSystem.US) + ")";
  }

  /**
   * {@return the volume of a bed: cubic feet or liters}
   *
   * @param volume volume of the resin
   */
  public String resin(Volume volume) {
    return system == UnitSystem.US
        ? unit("ft3", rounded(volume.cubicFeet(), 2))
        : unit("L", rounded(volume.litres(), 0));
  }

  /**
   * {@return money to the smallest unit of its currency, or a price for each unit with up to two
   * decimals more}
   *
   * @param amount amount or price, in any currency
   */
  public String money(BigMoney amount) {
    int decimals = amount.getCurrencyUnit().getDecimalPlaces();
    return money(amount, decimals, decimals + MORE_PRICE_DECIMALS);
  }

  /**
   * {@return a cost of running, or a sum with one in it, as precise as a forecast is sure: rounded
   * as {@link Rough} says}
   *
   * @param amount a forecast, in any currency
   */
  public String about(Money amount) {
    return whole(Rough.of(amount));
  }

  private String price(BigMoney perPound, UnitSystem units) {
    return units == UnitSystem.US
        ? Messages.fill(messages.get("unit.price.lb"), List.of(money(perPound)))
        : Messages.fill(messages.get("unit.price.kg"), List.of(perKilogram(perPound)));
  }

  /** To the smallest unit: more digits than the price of a pound has would be made up. */
  private String perKilogram(BigMoney perPound) {
    int decimals = perPound.getCurrencyUnit().getDecimalPlaces();
    return money(perPound.multipliedBy(POUNDS_IN_A_KILOGRAM), decimals, decimals);
  }

  private String whole(Money amount) {
    return money(amount.toBigMoney(), 0, 0);
  }

  private String money(BigMoney amount, int atLeast, int atMost) {
    NumberFormat format = currencyFormat(amount.getCurrencyUnit());
    return format(format, amount.getAmount(), atLeast, atMost);
  }

  /**
   * With the symbol of the currency, or its code where the platform does not know it. Java 17
   * writes the dollar to Canadians who read French as if they lived abroad, later versions do not.
   */
  private NumberFormat currencyFormat(CurrencyUnit unit) {
    NumberFormat format = fresh(currency);
    boolean known = KNOWN_CURRENCIES.contains(unit.getCode());
    if (known) {
      format.setCurrency(unit.toCurrency());
    }
    boolean atHome = locale.equals(Locale.CANADA_FRENCH) && unit.equals(CurrencyUnit.CAD);
    if ((!known || atHome) && format instanceof DecimalFormat decimal) {
      DecimalFormatSymbols symbols = decimal.getDecimalFormatSymbols();
      symbols.setCurrencySymbol(atHome ? "$" : unit.getCode());
      decimal.setDecimalFormatSymbols(symbols);
    }
    return format;
  }

  /**
   * {@return days of the week in their order, or that it is every day}
   *
   * @param days at least one
   * @throws IllegalArgumentException when there is none
   */
  public String weekdays(Set<DayOfWeek> days) {
    Set<DayOfWeek> all = EnumSet.copyOf(Require.someOf("weekdays", days));
    if (all.size() == DayOfWeek.values().length) {
      return messages.get("weekdays.every");
    }
    List<String> names =
        all.stream().map(day -> day.getDisplayName(TextStyle.FULL_STANDALONE, locale)).toList();
    String first = String.join(", ", names.subList(0, Math.max(1, names.size() - 1)));
    return names.size() == 1
        ? first
        : Messages.fill(messages.get("weekdays.last"), List.of(first, names.get(names.size() - 1)));
  }

  /**
   * {@return the name of a word of the trade}
   *
   * @param value a constant that has a name in the texts
   */
  public String term(Enum<?> value) {
    return messages.get("term." + value.getDeclaringClass().getSimpleName() + "." + value.name());
  }

  /**
   * {@return a finding as a sentence or two: in its rule's own words, or else in those of the
   * texts}
   *
   * @param finding what a rule found
   */
  public String finding(Finding finding) {
    String words =
        finding.rule().words(locale).orElseGet(() -> messages.get("finding." + finding.code()));
    return Messages.fill(words, finding.figures().stream().map(this::figure).toList());
  }

  /**
   * {@return what would change a reason of a verdict, as a sentence or two: in its rule's own
   * words, or else in those of the texts}
   *
   * @param reason finding of a rule for a verdict
   * @throws IllegalArgumentException when the finding is not of a {@link ReasonRule}
   */
  public String change(Finding reason) {
    if (!(reason.rule() instanceof ReasonRule rule)) {
      throw new IllegalArgumentException(reason.code() + " is no reason of a verdict");
    }
    String key = "finding." + reason.code() + ".change";
    String words = rule.change(locale).orElseGet(() -> messages.get(key));
    return Messages.fill(words, reason.figures().stream().map(this::figure).toList());
  }

  /**
   * {@return a reason as a sentence or two}
   *
   * @param reason why a candidate stands where it does
   */
  public String reason(Reason reason) {
    String key = reasonKey(reason);
    return reason
        .because()
        .map(this::finding)
        .or(() -> reason.margin().map(this::margin))
        .map(cause -> Messages.fill(messages.get(key), with(cause, reason.figures())))
        .orElseGet(() -> fill(key, reason.figures()));
  }

  /**
   * Where both are printed as costing the same, or would regenerate as often as printed, a text
   * that does not set the two apart.
   */
  private String reasonKey(Reason reason) {
    String key = "reason." + reason.kind().name();
    List<Figure> figures = reason.figures();
    if (messages.has(key + ".level") && figures.stream().anyMatch(Wording::isNothing)) {
      return key + ".level";
    }
    boolean alike =
        messages.has(key + ".same")
            && figures.size() > OTHER_DAYS
            && figure(figures.get(OWN_DAYS)).equals(figure(figures.get(OTHER_DAYS)));
    return alike ? key + ".same" : key;
  }

  private static boolean isNothing(Figure figure) {
    return figure instanceof Figure.Estimate estimate && estimate.value().isZero();
  }

  private List<String> with(String cause, List<Figure> figures) {
    return Stream.concat(Stream.of(cause), figures.stream().map(this::figure)).toList();
  }

  /**
   * {@return how a candidate stands to a margin, as a sentence}
   *
   * @param check a margin, with value and limit
   */
  public String margin(MarginCheck check) {
    return text("margin." + check.margin().code(), check.value(), check.limit());
  }

  /**
   * {@return what a meter saves, and what drives it, as a sentence}
   *
   * @param saving a clock and a meter compared over a year
   */
  public String meterSaving(MeterSaving saving) {
    return text(
        meterKey(saving),
        Figure.apart(saving.clockCost(), saving.meterCost()),
        Figure.of(saving.setFor()),
        Figure.of(saving.used()),
        Figure.of(saving.byClock().total()),
        Figure.of(saving.byMeter().total()));
  }

  /** What is printed alike is no saving. */
  private static String meterKey(MeterSaving saving) {
    if (saving.isLevel()) {
      return "study.METER_LEVEL";
    }
    return saving.saved().isNegative() ? "study.METER_COSTS" : "study.METER_SAVES";
  }

  /**
   * {@return how sure a choice is, as a sentence}
   *
   * @param percentOfDraws of {@link io.github.brinewright.study.HowSure}; 0 to 100
   */
  public String howSure(int percentOfDraws) {
    return text("study.HOW_SURE", Figure.of(percentOfDraws));
  }

  /**
   * {@return what is wrong with a present softener and what comes of it, as a sentence or two}
   *
   * @param fault what is wrong
   */
  public String fault(Fault fault) {
    return service.fault(fault);
  }

  /**
   * {@return what is taken as so, because nobody found it, as a sentence}
   *
   * @param assumption what is taken
   */
  public String assumption(Assumption assumption) {
    return service.assumption(assumption);
  }

  /**
   * {@return what comes of a study of a present softener, as a sentence}
   *
   * @param advice what comes of it
   */
  public String advice(Advice advice) {
    return service.advice(advice);
  }

  /**
   * {@return when a price has come back, as part of a sentence: a range in whole years, beyond 30
   * years that it is not within them, or that it never does}
   *
   * @param payback of a price
   */
  public String payback(Payback payback) {
    return service.payback(payback);
  }

  /**
   * {@return a step as a reader would redo it}
   *
   * @param step formula, numbers and result
   */
  public WorkedStep step(Step step) {
    String key = "step." + step.kind().name() + ".";
    return new WorkedStep(
        messages.get(key + "name"),
        messages.get(key + "formula"),
        StepText.fill(
            messages.get(key + "numbers"), step.inputs(), figure -> bare(figure, UnitSystem.US)),
        StepText.fill(messages.get(key + "result"), List.of(step.result()), this::result),
        source(step.source()));
  }

  private String result(Figure figure) {
    String us = figure(figure, UnitSystem.US);
    String own = figure(figure, system);
    return own.equals(us) ? us : us + " (" + own + ")";
  }

  /**
   * {@return a caution as a sentence or two}
   *
   * @param caution the caution
   */
  public String caution(Caution caution) {
    return messages.get("caution." + caution.name());
  }

  /**
   * {@return a date in full}
   *
   * @param date the day
   */
  public String date(LocalDate date) {
    return DateTimeFormatter.ofLocalizedDate(FormatStyle.LONG).withLocale(locale).format(date);
  }

  /**
   * {@return a source with its standing}
   *
   * @param source where a figure or formula comes from
   */
  public String source(Source source) {
    return Messages.fill(
        messages.get("source.standing"), List.of(term(source.standing()), source.citation()));
  }
}
