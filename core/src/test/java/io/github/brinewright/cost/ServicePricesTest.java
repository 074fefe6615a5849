package io.github.brinewright.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.brinewright.job.Dealer;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

class ServicePricesTest {
  private static final Money METER = Money.parse("USD 260.00");
  private static final Money VISIT = Money.parse("USD 85.00");

  @Test
  void areOfOneCurrency() {
    assertThat(ServicePrices.of(METER, VISIT).currency()).contains(CurrencyUnit.USD);
    assertThat(new ServicePrices(Optional.empty(), Optional.of(VISIT)).currency())
        .contains(CurrencyUnit.USD);
    assertThat(ServicePrices.NONE.currency()).isEmpty();
    assertThatThrownBy(() -> ServicePrices.of(METER, Money.parse("EUR 85.00")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("price of a visit is in EUR, but USD is wanted; use one currency throughout");
  }

  @Test
  void belongToADealerOfTheSameCurrency() {
    ServicePrices prices = ServicePrices.of(METER, VISIT);
    Dealer dealer = Dealer.named("Weir Street Water").servicePrices(prices).build();

    assertThat(dealer.servicePrices()).isEqualTo(prices);
    assertThat(dealer.meterRetrofit()).contains(METER);
    assertThat(dealer.serviceVisit()).contains(VISIT);
    assertThat(Dealer.UNNAMED.meterRetrofit()).isEmpty();
    assertThat(dealer).isNotEqualTo(Dealer.named("Weir Street Water").build());
    assertThatThrownBy(dealer.change().currency(CurrencyUnit.CAD)::build)
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("prices of service are in USD")
        .hasMessageContaining("CAD");
  }
}
