package io.github.brinewright.job;

import io.github.brinewright.comparison.Margins;
import io.github.brinewright.cost.Credit;
import io.github.brinewright.cost.Terms;
import io.github.brinewright.finding.Limits;
import io.github.brinewright.quantity.Pressure;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
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

  Dealer builtDealer() {
    return dealer.contact(contact).build();
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
