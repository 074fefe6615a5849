package io.github.brinewright.cost;

import io.github.brinewright.quantity.Require;
import java.math.BigDecimal;
import java.util.Optional;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * How a dealer sells and how costs are compared. Rates are fractions.
 *
 * <pre>{@code
 * Terms terms =
 *     Terms.builder().taxRate(new BigDecimal("0.0625")).financing(new Credit(rate, 36)).build();
 * }</pre>
 *
 * <p>Immutable; equal terms are equal.
 */
public final class Terms {
  /** No tax, no deposit, no credit; ten years at 3 %. */
  public static final Terms USUAL = builder().build();

  private final Values values;

  private Terms(Values values) {
    this.values = values;
  }

  /**
   * The usual terms, to be changed.
   *
   * @return a builder that begins with them
   */
  public static Builder builder() {
    return new Builder();
  }

  /**
   * These terms, to be changed.
   *
   * @return a builder that begins with all that this has
   */
  public Builder toBuilder() {
    Builder builder =
        new Builder()
            .taxRate(taxRate())
            .taxOnInstallation(taxOnInstallation())
            .depositShare(depositShare())
            .years(years())
            .discountRate(discountRate());
    financing().ifPresent(builder::financing);
    return builder;
  }

  /** {@return the rate of the sales tax; a fraction} */
  public BigDecimal taxRate() {
    return values.taxRate;
  }

  /** {@return whether the installation is taxed too} */
  public boolean taxOnInstallation() {
    return values.taxOnInstallation;
  }

  /** {@return the share of the total due with the signature} */
  public BigDecimal depositShare() {
    return values.depositShare;
  }

  /** {@return the credit offered; empty when there is none} */
  public Optional<Credit> financing() {
    return Optional.ofNullable(values.financing);
  }

  /**
   * {@return the credit offered as a way to pay, with the deposit of these terms; empty when there
   * is none}
   *
   * @param nothing zero in the currency of the price list
   */
  public Optional<PaymentWay> creditWay(Money nothing) {
    return financing()
        .map(
            credit ->
                PaymentWay.of("credit", PaymentKind.CREDIT, nothing)
                    .depositShare(depositShare())
                    .yearlyRate(credit.yearlyRate())
                    .months(credit.months())
                    .build());
  }

  /** {@return over how many years costs are compared} */
  public int years() {
    return values.years;
  }

  /** {@return the yearly discount rate of money itself; a fraction} */
  public double discountRate() {
    return values.discountRate;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Terms terms && values.equals(terms.values);
  }

  @Override
  public int hashCode() {
    return values.hashCode();
  }

  @Override
  public String toString() {
    return values.toString().replaceFirst("Values", "Terms");
  }

  private record Values(
      BigDecimal taxRate,
      boolean taxOnInstallation,
      BigDecimal depositShare,
      @Nullable Credit financing,
      int years,
      double discountRate) {}

  /** Collects terms. */
  public static final class Builder {
    private BigDecimal taxRate = BigDecimal.ZERO;
    private boolean taxOnInstallation;
    private BigDecimal depositShare = BigDecimal.ZERO;
    private @Nullable Credit financing;
    private int years = 10;
    private double discountRate = 0.03;

    private Builder() {}

    /**
     * Sales tax; none unless set.
     *
     * @param fraction 0 to 0.5, with at most 8 decimals
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder taxRate(BigDecimal fraction) {
      taxRate = Prices.rate("tax rate", fraction, "0.5");
      return this;
    }

    /**
     * Whether the installation is taxed too; not unless set.
     *
     * @param taxed true to tax it
     * @return this builder
     */
    public Builder taxOnInstallation(boolean taxed) {
      taxOnInstallation = taxed;
      return this;
    }

    /**
     * Share of the total due with the signature; none unless set.
     *
     * @param fraction 0 to 1, with at most 8 decimals
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder depositShare(BigDecimal fraction) {
      depositShare = Prices.rate("deposit share", fraction, "1");
      return this;
    }

    /**
     * The credit offered; none unless set.
     *
     * @param credit offered for the balance
     * @return this builder
     */
    public Builder financing(Credit credit) {
      financing = credit;
      return this;
    }

    /**
     * No credit is offered.
     *
     * @return this builder
     */
    public Builder withoutFinancing() {
      financing = null;
      return this;
    }

    /**
     * Years over which costs are compared; 10 unless set.
     *
     * @param count 1 to {@value LifeCost#MOST_YEARS}
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder years(int count) {
      years = Require.between("years", count, 1, LifeCost.MOST_YEARS);
      return this;
    }

    /**
     * Yearly discount rate; 0.03 unless set.
     *
     * @param fraction −0.05 to 0.2
     * @return this builder
     * @throws IllegalArgumentException outside that range
     */
    public Builder discountRate(double fraction) {
      discountRate = Require.between("discount rate", fraction, -0.05, 0.2);
      return this;
    }

    /** {@return the finished terms; later calls of this builder do not change them} */
    public Terms build() {
      return new Terms(
          new Values(taxRate, taxOnInstallation, depositShare, financing, years, discountRate));
    }
  }
}
