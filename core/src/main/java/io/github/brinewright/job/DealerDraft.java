package io.github.brinewright.job;

import io.github.brinewright.comparison.Margins;
import io.github.brinewright.cost.Credit;
import io.github.brinewright.cost.LocalText;
import io.github.brinewright.cost.ServicePrices;
import io.github.brinewright.cost.Terms;
import io.github.brinewright.finding.Limits;
import io.github.brinewright.quantity.Pressure;
import io.github.brinewright.sale.HomeSale;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/** What dealer.properties says, key by key. */
final class DealerDraft {
  final Dealer.Builder dealer = Dealer.UNNAMED.change();
  final List<String> contact = new ArrayList<>();
  String logo = "";
  BigDecimal tax = BigDecimal.ZERO;
  boolean taxOnInstallation;
  BigDecimal deposit = BigDecimal.ZERO;
  BigDecimal creditRate = BigDecimal.ZERO;
  int creditMonths;
  int years;
  double discount;
  double shortestDays;
  @Nullable Pressure lowestPressure;
  double reserveRisk;
  @Nullable Double designUse;
  @Nullable BigDecimal meterRetrofit;
  @Nullable BigDecimal serviceVisit;
  boolean atHome = true;
  boolean formsAttached;
  LocalText statement = LocalText.NONE;
  final List<PageDraft> pages = Stream.generate(PageDraft::new).limit(OwnPage.MOST).toList();

  /** Says something of every offer in one more language, or in those that have no text. */
  void offerText(OfferText kind, String language, String text) {
    LocalText now = dealer.build().offerTexts(kind);
    dealer.offerText(
        kind,
        language.isEmpty() ? new LocalText(text, now.byLanguage()) : now.with(language, text));
  }

  CurrencyUnit currency() {
    return dealer.build().currency();
  }

  Dealer builtDealer() {
    ServicePrices prices = new ServicePrices(money(meterRetrofit), money(serviceVisit));
    return dealer
        .contact(contact)
        .pages(pages.stream().flatMap(page -> page.build().stream()).toList())
        .servicePrices(prices)
        .homeSale(new HomeSale(atHome, formsAttached, statement))
        .build();
  }

  private Optional<Money> money(@Nullable BigDecimal amount) {
    return Optional.ofNullable(amount)
        .map(price -> Money.of(currency(), price, RoundingMode.HALF_EVEN));
  }

  Terms builtTerms() {
    Terms.Builder terms =
        Terms.builder()
            .taxRate(tax)
            .taxOnInstallation(taxOnInstallation)
            .depositShare(deposit)
            .years(years)
            .discountRate(discount);
    return (creditMonths == 0 ? terms : terms.financing(new Credit(creditRate, creditMonths)))
        .build();
  }

  Limits builtLimits() {
    Limits.Builder limits = Limits.builder().reserveRisk(reserveRisk);
    return (designUse == null ? limits : limits.designUse(designUse)).build();
  }

  Margins builtMargins() {
    return Margins.builder()
        .designDays(shortestDays)
        .pressureLeft(Objects.requireNonNull(lowestPressure))
        .build();
  }
}
