package io.github.brinewright.job;

import io.github.brinewright.comparison.Margins;
import io.github.brinewright.comparison.PriceList;
import io.github.brinewright.cost.Credit;
import io.github.brinewright.cost.Terms;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.words.UnitSystem;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.joda.money.Money;

/** The keys of dealer.properties: name, look, terms, tax, credit and limits. */
public final class DealerColumns {
  /** What the file is written from. */
  record Source(Dealer dealer, PriceList prices) {}

  /** Key of the price of a meter on a softener that is there. */
  static final String METER = "meter_retrofit_price";

  /** Key of the price of a visit. */
  static final String VISIT = "service_visit_price";

  private static final List<String> CONTACT = List.of("street", "town", "phone", "email", "web");

  /** All of them. */
  static final Columns<DealerDraft, Source> COLUMNS =
      limits(
          PageColumns.add(
              service(
                  signing(
                      terms(
                          look(
                              offered(
                                  name(
                                      new Columns<DealerDraft, Source>("dealer.properties")))))))));

  private DealerColumns() {}

  /** {@return all keys} */
  public static List<Column> all() {
    return COLUMNS.all();
  }

  private static Columns<DealerDraft, Source> name(Columns<DealerDraft, Source> columns) {
    columns.always(
        Typed.text("name").usual(Dealer.UNNAMED.name()),
        (draft, name) -> draft.dealer.name(name),
        of(Dealer::name));
    for (int i = 0; i < CONTACT.size(); i++) {
      int line = i;
      columns.add(
          Typed.text(CONTACT.get(line)),
          (draft, text) -> draft.contact.add(text),
          source -> source.dealer().contact().stream().skip(line).findFirst());
    }
    columns
        .add(
            Typed.text("license"),
            (draft, numbers) -> draft.dealer.license(numbers),
            filled(Dealer::license))
        .add(
            Typed.text("terms"),
            (draft, text) -> draft.dealer.terms(text),
            filled(Dealer::anyTerms));
    for (String code : Languages.CODES) {
      columns.add(
          Typed.text("terms_" + code),
          (draft, text) -> draft.dealer.terms(Locale.forLanguageTag(code), text),
          source -> Optional.ofNullable(source.dealer().termsByLanguage().get(code)));
    }
    return columns;
  }

  /** What is said of every offer, each in any language and in each of ours. */
  private static Columns<DealerDraft, Source> offered(Columns<DealerDraft, Source> columns) {
    for (OfferText kind : OfferText.values()) {
      String key = Formats.word(kind);
      columns.add(
          Typed.text(key),
          (draft, text) -> draft.offerText(kind, "", text),
          filled(dealer -> dealer.offerTexts(kind).usual()));
      for (String code : Languages.CODES) {
        columns.add(
            Typed.text(key + "_" + code),
            (draft, text) -> draft.offerText(kind, code, text),
            source -> Optional.ofNullable(source.dealer().offerTexts(kind).byLanguage().get(code)));
      }
    }
    return columns;
  }

  private static Columns<DealerDraft, Source> look(Columns<DealerDraft, Source> columns) {
    Dealer usual = Dealer.UNNAMED;
    return columns
        .always(
            Typed.colour("accent").usual(usual.accent()),
            (draft, colour) -> draft.dealer.accent(colour),
            of(Dealer::accent))
        .add(
            Typed.picture("logo"),
            (draft, file) -> draft.logo = file,
            source -> source.dealer().logo().map(Logo::file))
        .always(
            Typed.whole("valid_days", 1, 365).unit("days").usual(usual.validDays()),
            (draft, days) -> draft.dealer.validDays(days),
            of(Dealer::validDays))
        .always(
            Typed.currency("currency").usual(usual.currency()),
            (draft, currency) -> draft.dealer.currency(currency),
            of(Dealer::currency))
        .always(
            Typed.locale("locale").usual(usual.locale()),
            (draft, locale) -> draft.dealer.locale(locale),
            of(Dealer::locale))
        .always(
            Typed.place("place").usual(usual.place()),
            (draft, place) -> draft.dealer.place(place),
            of(Dealer::place))
        .always(
            Typed.choice("paper", Dealer.Paper.class).usual(usual.paper()),
            (draft, paper) -> draft.dealer.paper(paper),
            of(Dealer::paper))
        .always(
            Typed.choice("units", UnitSystem.class).usual(usual.units()),
            (draft, units) -> draft.dealer.units(units),
            of(Dealer::units))
        .always(
            Typed.yesNo("appendix").usual(usual.appendix()),
            (draft, yes) -> draft.dealer.appendix(yes),
            of(Dealer::appendix));
  }

  private static Columns<DealerDraft, Source> signing(Columns<DealerDraft, Source> columns) {
    columns
        .always(
            Typed.yesNo("sold_at_home").usual(true),
            (draft, yes) -> draft.atHome = yes,
            of(dealer -> dealer.homeSale().atHome()))
        .always(
            Typed.yesNo("cancellation_forms_attached").usual(false),
            (draft, yes) -> draft.formsAttached = yes,
            of(dealer -> dealer.homeSale().formsAttached()));
    for (String code : Languages.CODES) {
      columns.add(
          Typed.text("cancellation_statement_" + code),
          (draft, text) -> draft.statement = draft.statement.with(code, text),
          source ->
              Optional.ofNullable(source.dealer().homeSale().statement().byLanguage().get(code)));
    }
    return columns;
  }

  private static Columns<DealerDraft, Source> terms(Columns<DealerDraft, Source> columns) {
    return columns
        .always(
            Typed.fraction("tax_percent", 0, 50).usual(BigDecimal.ZERO),
            (draft, rate) -> draft.tax = rate,
            ofTerms(Terms::taxRate))
        .always(
            Typed.yesNo("tax_on_installation").usual(false),
            (draft, yes) -> draft.taxOnInstallation = yes,
            ofTerms(Terms::taxOnInstallation))
        .always(
            Typed.fraction("deposit_percent", 0, 100).usual(BigDecimal.ZERO),
            (draft, share) -> draft.deposit = share,
            ofTerms(Terms::depositShare))
        .add(
            Typed.fraction("credit_percent", 0, 60).usual(BigDecimal.ZERO),
            (draft, rate) -> draft.creditRate = rate,
            source -> source.prices().terms().financing().map(Credit::yearlyRate))
        .add(
            Typed.whole("credit_months", 1, 240).unit("months"),
            (draft, months) -> draft.creditMonths = months,
            source -> source.prices().terms().financing().map(Credit::months))
        .always(
            Typed.whole("years", 1, 30).unit("years").usual(Terms.USUAL.years()),
            (draft, years) -> draft.years = years,
            ofTerms(Terms::years))
        .always(
            Typed.percent("discount_percent", -5, 20).usual(Terms.USUAL.discountRate()),
            (draft, rate) -> draft.discount = rate,
            ofTerms(Terms::discountRate));
  }

  private static Columns<DealerDraft, Source> service(Columns<DealerDraft, Source> columns) {
    return columns
        .add(
            Measures.price(METER),
            (draft, price) -> draft.meterRetrofit = price,
            source -> source.dealer().meterRetrofit().map(Money::getAmount))
        .add(
            Measures.price(VISIT),
            (draft, price) -> draft.serviceVisit = price,
            source -> source.dealer().serviceVisit().map(Money::getAmount));
  }

  private static Columns<DealerDraft, Source> limits(Columns<DealerDraft, Source> columns) {
    return columns
        .always(
            Typed.number("shortest_interval_days", 1, 7)
                .unit("days")
                .usual(Margins.USUAL.designDays()),
            (draft, days) -> draft.shortestDays = days,
            ofMargins(Margins::designDays))
        .always(
            Typed.number("lowest_pressure_psi", 1, 80, Pressure::ofPsi, Pressure::psi)
                .unit("psi")
                .usual(Margins.USUAL.pressureLeft()),
            (draft, pressure) -> draft.lowestPressure = pressure,
            ofMargins(Margins::pressureLeft))
        .add(
            Typed.percent("design_use_percent", 50, 99.9),
            (draft, share) -> draft.designUse = share,
            source -> source.prices().limits().designUse().stream().boxed().findFirst())
        .add(
            Typed.percent("reserve_risk_percent", 0.01, 50),
            (draft, risk) -> draft.reserveRisk = risk,
            source -> Optional.of(source.prices().limits().reserveRisk()).filter(risk -> risk > 0));
  }

  private static <T> Function<Source, T> of(Function<Dealer, T> get) {
    return source -> get.apply(source.dealer());
  }

  private static <T> Function<Source, T> ofTerms(Function<Terms, T> get) {
    return source -> get.apply(source.prices().terms());
  }

  private static <T> Function<Source, T> ofMargins(Function<Margins, T> get) {
    return source -> get.apply(source.prices().margins());
  }

  private static Function<Source, Optional<String>> filled(Function<Dealer, String> get) {
    return source -> Optional.of(get.apply(source.dealer())).filter(text -> !text.isEmpty());
  }
}
